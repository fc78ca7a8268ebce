import fc from "fast-check";
import { expect, test } from "vitest";
import type { LengthAtHand, PlanInput } from "../../src/cutplan/plan.ts";
import { planCuts } from "../../src/cutplan/planCuts.ts";
import { problemsOf } from "../../src/cutplan/problems.ts";
import { anyInput } from "./arbitraries.ts";
import { faultsOf } from "./checkPlan.ts";
import { CM, FAMILIES, type Family, room } from "./rooms.ts";

const SOAK = Boolean(process.env.SOAK);

const anyLength = fc.record({
  length: fc.integer({ min: 1, max: 1500 }),
  start: fc.integer({ min: 0, max: 199 }),
  flaws: fc.array(
    fc.record({
      x: fc.integer({ min: 0, max: 250 }),
      y: fc.integer({ min: 0, max: 1400 }),
      width: fc.integer({ min: 1, max: 60 }),
      height: fc.integer({ min: 1, max: 100 }),
    }),
    { maxLength: 3 },
  ),
});

test(
  "on lengths at hand nothing lies on a flaw, over an end or out of the length's own register",
  () => {
    fc.assert(
      fc.property(anyInput, fc.array(anyLength, { minLength: 1, maxLength: 3 }), (given, small) => {
        // The arbitrary cloths come in several scales.
        const scale = Math.max(1, Math.floor(given.usableWidth / 300));
        const lengths = small.map((length) => scaled(length, scale));
        const input = withLengths(given, lengths);
        if (input.pieces.length === 0) return;
        const plan = planCuts(input);
        if (!plan.ok) {
          expect(plan.problems.length).toBeGreaterThan(0);
          return;
        }
        expect(faultsOf(plan, input)).toEqual([]);
        expect(plan.starts).toEqual(lengths.map((length) => length.start));
        plan.lengths.forEach((used, i) => {
          expect(used).toBeLessThanOrEqual((lengths[i] as LengthAtHand).length);
        });
        for (const { x, y, width, height, length } of plan.places) {
          for (const flaw of (lengths[length] as LengthAtHand).flaws) {
            const apart =
              x + width <= flaw.x ||
              flaw.x + flaw.width <= x ||
              y + height <= flaw.y ||
              flaw.y + flaw.height <= y;
            expect(apart).toBe(true);
          }
        }
      }),
      { seed: SOAK ? undefined : 20, numRuns: SOAK ? 5000 : 300 },
    );
  },
  SOAK ? 900_000 : 60_000,
);

function scaled({ length, start, flaws }: LengthAtHand, by: number): LengthAtHand {
  return {
    length: length * by,
    start: start * by,
    flaws: flaws.map(({ x, y, width, height }) => ({
      x: x * by,
      y: y * by,
      width: width * by,
      height: height * by,
    })),
  };
}

function withLengths(given: PlanInput, lengths: readonly LengthAtHand[]): PlanInput {
  const input = { ...given, options: { builds: 60, lengths } };
  const bad = new Set(problemsOf(input).map((problem) => problem.pieceId));
  return { ...input, pieces: input.pieces.filter((piece) => !bad.has(piece.id)) };
}

test("cloth that came as planned takes the plan; the same cloth with a flaw all across does not", () => {
  for (const family of FAMILIES) for (let seed = 1; seed <= 4; seed++) comesAsPlanned(family, seed);
});

function comesAsPlanned(family: Family, seed: number) {
  // Few builds, so that the search on the cloth that came cannot be relied on to find the plan again.
  const input = { ...room(family, seed, 20), options: { builds: 100 } };
  const plan = planCuts(input);
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  const come = { length: plan.length, start: plan.start, flaws: [] };
  const again = planCuts({ ...input, options: { builds: 100, lengths: [come] } });
  expect(again.ok).toBe(true);
  if (!again.ok) return;
  expect(faultsOf(again, input)).toEqual([]);
  expect(again.length).toBeLessThanOrEqual(plan.length);
  const flaw = { x: 0, y: Math.floor(plan.length / 2), width: input.usableWidth, height: 50 * CM };
  const flawed = planCuts({
    ...input,
    options: { builds: 100, lengths: [{ ...come, flaws: [flaw] }] },
  });
  expect(flawed.ok).toBe(false);
  if (!flawed.ok) {
    for (const problem of flawed.problems) expect(problem.reason).toBe("not-enough-cloth");
  }
}

test("two short lengths, each with its own start, take what neither takes alone", () => {
  const drop = (id: string) => ({
    id,
    group: "drop",
    width: 137 * CM,
    height: 258 * CM,
    mayTurn: false,
    across: { rule: "at" as const, positions: [0] },
    along: { rule: "register" as const, residue: 0 },
  });
  const input = {
    usableWidth: 137 * CM,
    pattern: { horizontal: 137 * CM, vertical: 64 * CM, match: "straight" as const },
    pieces: [drop("one"), drop("two")],
  };
  // 10 cm into the repeat, the next pattern point is 54 cm on: 54 + 258 = 312 cm.
  const first = { length: 312 * CM, start: 10 * CM, flaws: [] };
  const second = { length: 258 * CM, start: 0, flaws: [] };
  const both = planCuts({ ...input, options: { lengths: [first, second] } });
  expect(both.ok && both.lengths).toEqual([312 * CM, 258 * CM]);
  const short = { ...first, length: 312 * CM - 1 };
  const missing = planCuts({ ...input, options: { lengths: [short, second] } });
  expect(missing.ok).toBe(false);
  if (!missing.ok) expect(missing.problems).toHaveLength(1);
});
