import { expect, test } from "vitest";
import type { CutPiece } from "../../src/cutplan/piece.ts";
import type { PlanResult } from "../../src/cutplan/plan.ts";
import { planCuts } from "../../src/cutplan/planCuts.ts";
import { faultsOf } from "./checkPlan.ts";
import { CM } from "./rooms.ts";

/** Cases of the trade. All three: common practice, no source (from memory). */

function lengthOf(result: PlanResult): number {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.length;
}

function drop(id: string, width: number, x: number, residue: number): CutPiece {
  return {
    id,
    group: `drop ${width} at ${x} from ${residue}`,
    width,
    height: 258 * CM,
    mayTurn: false,
    across: { rule: "at", positions: [x] },
    along: { rule: "register", residue },
  };
}

// A pair of 2 1/2 widths: cut plain 230 + 8 + 20 = 258 cm, up to whole repeats of 64 cm = 320 cm; 5 widths = 16.0 m.
// Common practice, no source. The last cut need not be rounded up: 4 x 320 + 258 = 1538 cm, and no plan can need less.
test("pair of pinch-pleat curtains, two and a half widths each", () => {
  const W = 137 * CM;
  const half = Math.floor(W / 2);
  const pieces = [
    ...[1, 2, 3, 4].map((i) => drop(`whole ${i}`, W, 0, 0)),
    drop("half left", half, 0, 0),
    drop("half right", half, W - half, 0),
  ];
  const pattern = { horizontal: 34 * CM, vertical: 64 * CM, match: "straight" } as const;
  const input = { usableWidth: W, pattern, pieces, options: {} };
  const plan = planCuts(input);
  expect(lengthOf(plan)).toBe(1538 * CM);
  if (!plan.ok) return;
  expect(faultsOf(plan, input)).toEqual([]);
  expect(plan.lowerBound).toBe(1538 * CM);
  // The last cut rounded up to whole repeats is the handbook's total.
  expect(Math.ceil(plan.length / (320 * CM)) * 320).toBe(1600);
});

// Five cuts of 258 cm, half-drop of 64 cm at the selvedge. Simple rule: 5 x 320 + 2 x 32 = 1664 cm; careful layout: 5 x 288 =
// 1440 cm, every cut an odd number of half repeats after the last. Common practice, no source.
test("five half-drop cuts: the careful layout is found", () => {
  const W = 137 * CM;
  const pieces = [0, 1, 2, 3, 4].map((i) => drop(`cut ${i}`, W, 0, (i % 2) * 32 * CM));
  const pattern = { horizontal: W, vertical: 64 * CM, match: "half-drop" } as const;
  const input = { usableWidth: W, pattern, pieces, options: {} };
  const plan = planCuts(input);
  // The fifth cut ends with its cloth, not with its spacing.
  expect(lengthOf(plan)).toBe((4 * 288 + 258) * CM);
  if (!plan.ok) return;
  expect(faultsOf(plan, input)).toEqual([]);
  expect(plan.lowerBound).toBe(plan.length);
  expect(plan.length + 30 * CM).toBe(1440 * CM);
});

// Four faces of 53 cm, two motifs 68.5 cm apart across 137 cm, repeat 64 cm: two rows, 1.28 m. Common practice, no source.
test("four centred cushions, two a row", () => {
  const pieces = [1, 2, 3, 4].map(
    (i): CutPiece => ({
      id: `face ${i}`,
      group: "face",
      width: 53 * CM,
      height: 53 * CM,
      mayTurn: false,
      across: { rule: "register", residue: (34.25 - 26.5) * CM },
      along: { rule: "register", residue: 5 * CM },
    }),
  );
  const pattern = { horizontal: 68.5 * CM, vertical: 64 * CM, match: "straight" } as const;
  const input = { usableWidth: 137 * CM, pattern, pieces, options: {} };
  const plan = planCuts(input);
  expect(lengthOf(plan)).toBe((64 + 53) * CM);
  if (!plan.ok) return;
  expect(faultsOf(plan, input)).toEqual([]);
  expect(plan.start).toBe(5 * CM);
  expect(plan.lowerBound).toBe(plan.length);
  expect(Math.ceil(plan.length / pattern.vertical) * 64).toBe(128);
});
