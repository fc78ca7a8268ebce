import fc from "fast-check";
import { expect, test } from "vitest";
import { hang } from "../../src/documents/board/hang.ts";
import { GAP_MM, type HangPiece } from "../../src/documents/board/hangPiece.ts";
import { areaWeight } from "../../src/documents/board/weights.ts";

// The rules of the composition are the project's own (DEVELOPERS.md, "The pages").

const FIELD = { width: 258, height: 251 };

const piece = (
  id: string,
  role: HangPiece["role"],
  share: number,
  look: HangPiece["look"] = "print",
): HangPiece => ({
  id,
  role,
  share,
  ownAspect: role === "anchor" ? 1.25 : null,
  look,
  repeatOnPaperMm: look === "stripe" ? 40 : null,
  most: null,
  lightness: 30 + ((id.charCodeAt(0) * 37) % 60),
});

const others = fc.array(
  fc.tuple(
    fc.constantFrom("supporting", "geometric", "small-print", "plain", "accent"),
    fc.double({ min: 0.005, max: 0.3, noNaN: true }),
    fc.constantFrom("print", "stripe", "geometric", "plain"),
  ),
  { minLength: 1, maxLength: 11 },
);

const mixes = fc
  .tuple(fc.boolean(), others)
  .map(([anchored, rest]) => [
    ...(anchored ? [piece("anchor", "anchor", 0.19)] : []),
    piece("main", "main", 0.4),
    ...rest.map(([role, share, look], at) =>
      piece(`c${at}`, role as HangPiece["role"], share, look as HangPiece["look"]),
    ),
  ]);

const RUNS = { numRuns: process.env.SOAK ? 5000 : 200, seed: 20261125 };

test("no piece overlaps another, all stand inside the field, and neighbours keep their gap", () => {
  fc.assert(
    fc.property(mixes, (pieces) => {
      const hung = hang(pieces, FIELD, { width: 80, height: 49 });
      expect(hung.map((h) => h.id).sort()).toEqual(pieces.map((p) => p.id).sort());
      for (const h of hung) {
        expect(h.x).toBeGreaterThanOrEqual(-0.01);
        expect(h.y).toBeGreaterThanOrEqual(-0.01);
        expect(h.x + h.width).toBeLessThanOrEqual(FIELD.width + 0.01);
        expect(h.y + h.height).toBeLessThanOrEqual(FIELD.height + 0.01);
        expect(h.width).toBeGreaterThan(10);
        expect(h.height).toBeGreaterThan(10);
        for (const o of hung) {
          if (o === h) continue;
          const apart =
            o.x >= h.x + h.width + GAP_MM - 0.01 ||
            h.x >= o.x + o.width + GAP_MM - 0.01 ||
            o.y >= h.y + h.height + GAP_MM ||
            h.y >= o.y + o.height + GAP_MM;
          expect(apart).toBe(true);
        }
      }
    }),
    RUNS,
  );
});

test("the upper row stands on one line and the lower row hangs from one line", () => {
  fc.assert(
    fc.property(mixes, (pieces) => {
      const hung = hang(pieces, FIELD);
      const feet = hung.filter((h) => h.row === "upper").map((h) => h.y + h.height);
      // Of two below each other the first hangs from the line.
      const places = new Map<number, number>();
      for (const h of hung.filter((o) => o.row === "lower"))
        places.set(h.x, Math.min(h.y, places.get(h.x) ?? Number.POSITIVE_INFINITY));
      const tops = [...places.values()];
      for (const all of [feet, tops])
        for (const v of all) expect(v).toBeCloseTo(all[0] as number, 6);
    }),
    RUNS,
  );
});

test("the title's height stays free over what stands below it", () => {
  const pieces = [piece("main", "main", 0.4), piece("a", "plain", 0.2, "plain")];
  for (const h of hang(pieces, FIELD, { width: 200, height: 60 }))
    expect(h.y).toBeGreaterThanOrEqual(60 - 0.01);
});

test("the main cloth is the largest, an accent the smallest, and more is given to what is seen more", () => {
  expect(areaWeight(piece("m", "main", 0.01))).toBeGreaterThan(
    areaWeight(piece("s", "supporting", 1)),
  );
  expect(areaWeight(piece("p", "plain", 0.3))).toBeGreaterThan(
    areaWeight(piece("q", "plain", 0.05)),
  );
  expect(areaWeight(piece("x", "accent", 1))).toBeLessThan(
    areaWeight(piece("y", "small-print", 0)),
  );
});

test("the same mix hangs the same way", () => {
  const pieces = [
    piece("anchor", "anchor", 0.19),
    piece("main", "main", 0.4),
    piece("a", "plain", 0.2, "plain"),
    piece("b", "geometric", 0.1, "stripe"),
    piece("c", "accent", 0.01),
  ];
  expect(hang(pieces, FIELD)).toEqual(hang(pieces, FIELD));
});
