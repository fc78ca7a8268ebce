import { expect, test } from "vitest";
import type { PlanInput } from "../../src/cutplan/plan.ts";
import { planCuts } from "../../src/cutplan/planCuts.ts";
import { plannedBefore } from "../../src/cutplan/plannedBefore.ts";

const input = (height: number, more: Partial<PlanInput> = {}): PlanInput => ({
  usableWidth: 137 * 1600,
  pattern: { horizontal: 68.5 * 1600, vertical: 64 * 1600, match: "straight" },
  pieces: [1, 2, 3].map((n) => ({
    id: `${n}`,
    group: "face",
    width: 53 * 1600,
    height,
    mayTurn: false,
    across: { rule: "free" },
    along: { rule: "register", residue: 0 },
  })),
  options: { maxLength: null },
  ...more,
});

test("what was planned before is the same plan, and what differs in anything is planned for itself", () => {
  const one = input(53 * 1600);
  const others = [
    input(53 * 1600 + 1),
    input(53 * 1600, { usableWidth: 140 * 1600 }),
    input(53 * 1600, { pattern: null }),
    input(53 * 1600, { options: { maxLength: 100 * 1600 } }),
  ];
  const first = plannedBefore(one);
  for (const other of others) expect(plannedBefore(other)).toEqual(planCuts(other));
  expect(plannedBefore(structuredClone(one))).toBe(first);
  expect(first).toEqual(planCuts(one));
});

test("of very many plans the oldest are forgotten, and come out the same when they are asked for again", () => {
  const first = plannedBefore(input(40 * 1600));
  const { pieces } = input(40 * 1600);
  for (let n = 1; n <= 400; n++)
    plannedBefore(input(0, { usableWidth: 137 * 1600 + n, pieces: pieces.slice(0, 1) }));
  const again = plannedBefore(input(40 * 1600));
  expect(again).not.toBe(first);
  expect(again).toEqual(first);
});
