import { expect, test } from "vitest";
import { planCuts } from "../../src/cutplan/planCuts.ts";
import { faultsOf } from "./checkPlan.ts";
import { CM, FAMILIES, room } from "./rooms.ts";

test.each(FAMILIES)("plans of %s can be cut", (family) => {
  for (let seed = 1; seed <= 6; seed++) {
    for (const size of [7, 30]) {
      const input = { ...room(family, seed, size), options: { builds: 300 } };
      const plan = planCuts(input);
      expect(plan.ok).toBe(true);
      if (!plan.ok) continue;
      expect(faultsOf(plan, input)).toEqual([]);
      expect(plan.length).toBeLessThanOrEqual(plan.itemByItem ?? 0);
    }
  }
});

test("ten thousand identical cushions end soon, two a row", () => {
  const pieces = Array.from({ length: 10_000 }, (_, i) => ({
    id: `cushion ${i}`,
    group: "cushion",
    width: 53 * CM,
    height: 53 * CM,
    mayTurn: false,
    across: { rule: "register" as const, residue: 7.75 * CM },
    along: { rule: "register" as const, residue: 0 },
  }));
  const pattern = { horizontal: 68.5 * CM, vertical: 64 * CM, match: "straight" as const };
  const plan = planCuts({ usableWidth: 137 * CM, pattern, pieces, options: {} });
  expect(plan).toMatchObject({
    ok: true,
    length: (4999 * 64 + 53) * CM,
    lowerBound: (4999 * 64 + 53) * CM,
  });
});

// On half-drop cloth a motif's column counts from the residue as given: moving a residue by a whole repeat across moves the
// piece half a repeat along, on paper as in the plan.
test("half-drop columns count from the given residue", () => {
  const pattern = { horizontal: 60 * CM, vertical: 64 * CM, match: "half-drop" as const };
  for (const residue of [10, 70, -50, -110]) {
    const cushion = (id: string) => ({
      id,
      group: "cushion",
      width: 40 * CM,
      height: 40 * CM,
      mayTurn: false,
      across: { rule: "register" as const, residue: residue * CM },
      along: { rule: "register" as const, residue: 0 },
    });
    const options = { start: 0 };
    const pieces = [cushion("a"), cushion("b")];
    const input = { usableWidth: 110 * CM, pattern, pieces, options };
    const plan = planCuts(input);
    if (!plan.ok) throw new Error("no plan");
    expect(faultsOf(plan, input)).toEqual([]);
    const odd = Math.abs(Math.round((10 - residue) / 60)) % 2 === 1;
    const low = plan.places.find((place) => place.y === 0);
    expect(low?.x).toBe(odd ? 70 * CM : 10 * CM);
    expect(plan.length).toBe(72 * CM);
    expect(low?.register).toEqual({ x: 10 * CM, y: odd ? 32 * CM : 0 });
  }
});

test("what lies between two bands is a band too, and keeps to the longest length", () => {
  const strip = (id: string, height: number, x: number, residue: number) => ({
    id,
    group: `${height}`,
    width: 1,
    height,
    mayTurn: false,
    across: { rule: "at" as const, positions: [x] },
    along: { rule: "register" as const, residue },
  });
  const pieces = [
    ...["a", "b"].map((id) => strip(id, 2, 0, 37)),
    ...["c", "d", "e"].map((id) => strip(id, 38, 39, 0)),
  ];
  const pattern = { horizontal: 10, vertical: 60, match: "straight" as const };
  for (const maxLength of [38, 39, 88]) {
    const input = { usableWidth: 40, pattern, pieces, options: { maxLength, builds: 60 } };
    const plan = planCuts(input);
    if (!plan.ok) throw new Error("no plan");
    expect(faultsOf(plan, input)).toEqual([]);
    expect(Math.max(...plan.lengths)).toBeLessThanOrEqual(maxLength);
  }
});
