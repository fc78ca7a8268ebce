import highs from "highs";
import { expect, test } from "vitest";
import { paletteDistance, type SharedColour } from "../../src/cloth/palette/paletteDistance.ts";
import { difference } from "../../src/colour/difference.ts";
import { seeded } from "./made.ts";

const CREAM = { hex: "#efe3c8", share: 0.8 };
const MADDER = { hex: "#8a3b4a", share: 0.2 };

test("equal palettes are no distance apart, in any order and at any scale", () => {
  expect(
    paletteDistance(
      [CREAM, MADDER],
      [
        { ...MADDER, share: 2 },
        { ...CREAM, share: 8 },
      ],
    ),
  ).toBeCloseTo(0, 9);
});

test("one colour to another is their difference; a share moved costs its part", () => {
  const whole = difference(CREAM.hex, MADDER.hex);
  expect(paletteDistance([CREAM], [MADDER])).toBeCloseTo(whole, 9);
  expect(paletteDistance([CREAM, MADDER], [CREAM])).toBeCloseTo(0.2 * whole, 9);
  expect(paletteDistance([CREAM], [CREAM, MADDER])).toBeCloseTo(0.2 * whole, 9);
  expect(paletteDistance([], [CREAM])).toBe(Number.POSITIVE_INFINITY);
});

test("it is the optimum that a linear-programming solver proves (highs)", async () => {
  const solver = await highs();
  const random = seeded(21);
  const some = (n: number): SharedColour[] =>
    Array.from({ length: n }, () => ({
      hex: `#${Math.floor(random() * 0x1000000)
        .toString(16)
        .padStart(6, "0")}`,
      share: 0.05 + random(),
    }));
  for (let round = 0; round < 12; round++) {
    const [a, b] = [some(2 + (round % 6)), some(2 + ((round * 3) % 7))];
    const total = (list: SharedColour[]) => list.reduce((sum, c) => sum + c.share, 0);
    const [ta, tb] = [total(a), total(b)];
    const terms = a.flatMap((x, i) =>
      b.map((y, j) => `${difference(x.hex, y.hex).toFixed(9)} f${i}_${j}`),
    );
    const from = a.map(
      (x, i) => `${b.map((_, j) => `f${i}_${j}`).join(" + ")} = ${(x.share / ta).toFixed(12)}`,
    );
    // The last of the sums follows from the others; rounding would make it contradict them.
    const to = b
      .slice(0, -1)
      .map(
        (y, j) => `${a.map((_, i) => `f${i}_${j}`).join(" + ")} = ${(y.share / tb).toFixed(12)}`,
      );
    const rows = [...from, ...to].map((row, i) => `c${i}: ${row}`).join("\n");
    const { ObjectiveValue } = solver.solve(
      `Minimize\nobj: ${terms.join(" + ")}\nSubject To\n${rows}\nEnd`,
    );
    expect(paletteDistance(a, b)).toBeCloseTo(ObjectiveValue, 5);
    expect(paletteDistance(b, a)).toBeCloseTo(paletteDistance(a, b), 9);
  }
});
