import { expect, test } from "vitest";
import { shortfallOf } from "../../src/quantities/fits/nearMiss.ts";

const CM = 1600;
const V = 40 * CM;
const face = (n: number) => ({
  id: `face/${n}`,
  group: "face",
  width: 100 * CM,
  height: 50 * CM,
  mayTurn: false,
  across: { rule: "free" as const },
  along: { rule: "register" as const, residue: 0 },
});
const input = {
  usableWidth: 140 * CM,
  pattern: { horizontal: 0, vertical: V, match: "straight" as const },
  pieces: [face(0), face(1)],
  options: {},
};
const remnant = (length: number) => ({ length: length * CM, width: 140 * CM, start: 0 });

test("two faces in register need two repeats and a face: what is missing of that is said, and the shift that would do", () => {
  // Feet at 0 and 80 cm: 130 cm. By hand: at 124 cm the second lacks 6 cm; a foot at 74 cm, 6 cm lower on the pattern, would do.
  const short = shortfallOf(input, remnant(124));
  expect(short).toMatchObject({ holds: 1, of: 2, piece: "face/1", missing: 6 * CM });
  expect(short.shift).toBeLessThanOrEqual(-6 * CM);
  expect(short.shift).toBeGreaterThanOrEqual(-7.5 * CM);
});

test("no shift is offered that would not do", () => {
  expect(shortfallOf(input, remnant(90))).toMatchObject({
    holds: 1,
    missing: 40 * CM,
    shift: null,
  });
  const plain = {
    ...input,
    pattern: null,
    pieces: input.pieces.map((p) => ({ ...p, along: { rule: "free" as const } })),
  };
  expect(shortfallOf(plain, remnant(95))).toMatchObject({ holds: 1, missing: 5 * CM, shift: null });
});
