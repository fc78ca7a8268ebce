import fc from "fast-check";
import { expect, test } from "vitest";
import { packWhole } from "../../src/quantities/together/packWhole.ts";
import { Length } from "../../src/units/length.ts";

const metres = (all: readonly number[]) => all.map((m) => Length.mm(m * 1000));
const packed = (all: readonly number[], bolt: number) =>
  packWhole(metres(all), Length.mm(bolt * 1000)).map((on) =>
    on.map(({ length }) => length.toMm() / 1000),
  );

// By hand: 4 + 4 leaves no room for a 3 on a bolt of 10, so first-fit decreasing takes three; 4 + 3 + 3 twice is two.
test("up to eight lengths take as few bolts as can be", () => {
  expect(packed([4, 4, 3, 3, 3, 3], 10)).toEqual([
    [4, 3, 3],
    [4, 3, 3],
  ]);
});

test("more than eight are packed first-fit decreasing: 4, 4 | 4, 4 | 3, 3, 3 | 3, 3, 3 | 3, 3", () => {
  const twelve = [4, 4, 3, 3, 3, 3, 4, 4, 3, 3, 3, 3];
  expect(
    packed(twelve, 10)
      .map((on) => on.reduce((a, b) => a + b, 0))
      .sort(),
  ).toEqual([6, 8, 8, 9, 9]);
});

test("what is longer than a bolt takes bolts of its own, and its rest is packed", () => {
  expect(packed([7, 1], 3)).toEqual([[3], [3], [1, 1]]);
  expect(packed([6], 3)).toEqual([[3], [3]]);
  expect(packed([], 3)).toEqual([]);
});

/** The fewest bolts, by laying each length on every bolt there is. */
function fewest(lengths: readonly number[], bolt: number, on: readonly number[] = []): number {
  const [first, ...rest] = lengths;
  if (first === undefined) return on.length;
  const joined = on.flatMap((filled, at) =>
    filled + first <= bolt ? [fewest(rest, bolt, on.with(at, filled + first))] : [],
  );
  return Math.min(...joined, fewest(rest, bolt, [...on, first]));
}

test("against every way to lay them: none is split, none overfills a bolt, and no way takes fewer", () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 20 }), { maxLength: 7 }),
      fc.integer({ min: 20, max: 40 }),
      (lengths, bolt) => {
        const found = packed(lengths, bolt);
        expect(found.flat().sort((a, b) => a - b)).toEqual([...lengths].sort((a, b) => a - b));
        for (const on of found) expect(on.reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(bolt);
        expect(found.length).toBe(fewest(lengths, bolt));
      },
    ),
    { numRuns: process.env.SOAK ? 2000 : 150, seed: 7 },
  );
});
