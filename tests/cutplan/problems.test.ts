import { expect, test } from "vitest";
import type { AcrossRule, CutPiece } from "../../src/cutplan/piece.ts";
import { planCuts } from "../../src/cutplan/planCuts.ts";
import { CM } from "./rooms.ts";

function piece(width: number, height: number, across: AcrossRule, mayTurn = false): CutPiece {
  return { id: "p", group: "p", width, height, mayTurn, across, along: { rule: "free" } };
}

const pattern = { horizontal: 100 * CM, vertical: 64 * CM, match: "straight" } as const;

function problemOf(only: CutPiece, maxLength: number | null = null) {
  const plan = planCuts({
    usableWidth: 137 * CM,
    pattern,
    pieces: [only],
    options: { maxLength },
  });
  if (plan.ok) throw new Error("it was planned");
  return plan.problems[0];
}

test("a motif too near the selvedge: the widest that would do is named, and does", () => {
  // Motifs at 30 and 130 cm: about the first 2 x 30 cm, about the second 2 x 7.
  const centred = (width: number) =>
    piece(width, 50 * CM, { rule: "register", residue: 30 * CM - width / 2 });
  expect(problemOf(centred(62 * CM))).toEqual({
    pieceId: "p",
    reason: "motif-cannot-be-centred",
    widestThatWouldDo: 60 * CM,
  });
  const pieces = [centred(60 * CM)];
  expect(planCuts({ usableWidth: 137 * CM, pattern, pieces, options: {} }).ok).toBe(true);
});

test("wider than the cloth, unless it may be turned", () => {
  expect(problemOf(piece(140 * CM, 50 * CM, { rule: "free" }))).toEqual({
    pieceId: "p",
    reason: "wider-than-cloth",
    widestThatWouldDo: 137 * CM,
  });
  const pieces = [piece(140 * CM, 50 * CM, { rule: "free" }, true)];
  const plan = planCuts({ usableWidth: 137 * CM, pattern, pieces, options: {} });
  expect(plan.ok && plan.places[0]?.turned).toBe(true);
  const at = problemOf(piece(50 * CM, 50 * CM, { rule: "at", positions: [100 * CM] }));
  expect(at?.widestThatWouldDo).toBe(37 * CM);
});

test("no size, and longer than any length", () => {
  expect(problemOf(piece(0, 50, { rule: "free" }))?.reason).toBe("zero-width");
  expect(problemOf(piece(50, -1, { rule: "free" }))?.reason).toBe("zero-height");
  const long = piece(50 * CM, 400 * CM, { rule: "free" });
  expect(problemOf(long, 399 * CM)?.reason).toBe("longer-than-length");
});

test("what no user can cause is thrown", () => {
  expect(() => problemOf(piece(50.5, 50, { rule: "free" }))).toThrow(RangeError);
  const twice = [piece(50, 50, { rule: "free" }), piece(50, 50, { rule: "free" })];
  expect(() => planCuts({ usableWidth: 100, pattern, pieces: twice, options: {} })).toThrow(
    RangeError,
  );
});

test("nothing to cut is a plan of no length", () => {
  const plan = planCuts({ usableWidth: 137 * CM, pattern, pieces: [], options: {} });
  expect(plan).toMatchObject({ ok: true, length: 0, lowerBound: 0, places: [] });
});

test("a piece may be narrower than the slab programme's grid", () => {
  const ribbons = [1, 2, 3].map((i) => ({ ...piece(1, 5 * CM, { rule: "free" }), id: `${i}` }));
  const plan = planCuts({ usableWidth: 137 * CM, pattern, pieces: ribbons, options: {} });
  expect(plan).toMatchObject({ ok: true, length: 5 * CM, lowerBound: 5 * CM });
});
