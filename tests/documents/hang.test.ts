import fc from "fast-check";
import { expect, test } from "vitest";
import { leanOf, MOST_LEAN } from "../../src/documents/board/balance.ts";
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

const limited = fc.option(
  fc.record({
    width: fc.double({ min: 12, max: 200, noNaN: true }),
    height: fc.double({ min: 12, max: 260, noNaN: true }),
  }),
  { nil: null },
);

test("no piece is larger than its photograph shows, and the rest still hang apart and inside the field", () => {
  fc.assert(
    fc.property(mixes, fc.array(limited, { minLength: 13, maxLength: 13 }), (mix, most) => {
      const pieces = mix.map((p, at) =>
        p.role === "anchor" ? p : { ...p, most: most[at] ?? null },
      );
      const hung = hang(pieces, FIELD, { width: 80, height: 49 });
      for (const h of hung) {
        const own = pieces.find((p) => p.id === h.id)?.most;
        if (own) {
          expect(h.width).toBeLessThanOrEqual(own.width + 1e-6);
          expect(h.height).toBeLessThanOrEqual(own.height + 1e-6);
        }
        expect(h.x + h.width).toBeLessThanOrEqual(FIELD.width + 0.01);
        expect(h.y + h.height).toBeLessThanOrEqual(FIELD.height + 0.01);
        for (const o of hung)
          if (o !== h)
            expect(
              o.x >= h.x + h.width + GAP_MM - 0.01 ||
                h.x >= o.x + o.width + GAP_MM - 0.01 ||
                o.y >= h.y + h.height + GAP_MM ||
                h.y >= o.y + o.height + GAP_MM,
            ).toBe(true);
      }
    }),
    RUNS,
  );
});

test("a narrow photograph of the main cloth hangs as a length, and not as a stamp", () => {
  const main = { ...piece("main", "main", 0.4), most: { width: 40, height: 240 } };
  const hung = hang(
    [main, piece("a", "plain", 0.2, "plain"), piece("b", "small-print", 0.1)],
    FIELD,
  );
  const own = hung.find((h) => h.id === "main");
  expect(own?.width).toBeCloseTo(40, 1);
  expect(own?.height).toBeGreaterThan(150);
});

test("twelve cloths and an anchor hang in few places, unevenly, none too narrow for its name", () => {
  const roles = [
    "supporting",
    "geometric",
    "small-print",
    "plain",
    "small-print",
    "plain",
    "geometric",
    "plain",
    "small-print",
    "geometric",
    "accent",
  ] as const;
  const pieces = [
    piece("anchor", "anchor", 0.19),
    piece("main", "main", 0.3),
    ...roles.map((role, at) =>
      piece(
        `c${at}`,
        role,
        0.06,
        role === "plain" ? "plain" : role === "geometric" ? "geometric" : "print",
      ),
    ),
  ];
  const hung = hang(pieces, FIELD, { width: 110, height: 27 });
  expect(hung).toHaveLength(13);
  const lower = hung.filter((h) => h.row === "lower");
  expect(new Set(lower.map((h) => h.x)).size).toBeLessThanOrEqual(6);
  for (const h of hung) expect(h.width).toBeGreaterThanOrEqual(25 - 0.01);
  const areas = lower.map((h) => h.width * h.height).sort((a, b) => b - a);
  expect((areas[0] as number) / (areas.at(-1) as number)).toBeGreaterThan(2);
  const main = hung.find((h) => h.id === "main");
  const least = hung.find((h) => h.id === "c10");
  expect(
    ((main?.width ?? 0) * (main?.height ?? 0)) / ((least?.width ?? 1) * (least?.height ?? 1)),
  ).toBeGreaterThan(6);
});

test("two cloths fill the field between them", () => {
  const hung = hang([piece("main", "main", 0.6), piece("a", "plain", 0.4, "plain")], FIELD);
  const right = Math.max(...hung.map((h) => h.x + h.width));
  expect(right).toBeGreaterThan(0.94 * FIELD.width);
});

test("a mix that leans has a row mirrored, one that does not keeps its order", () => {
  const two = (main: number, stripe: number): HangPiece[] => [
    { ...piece("main", "main", 0.4), lightness: main },
    { ...piece("a", "plain", 0.1, "stripe"), lightness: stripe },
  ];
  const leaning = two(12, 96);
  const hung = hang(leaning, FIELD);
  expect(Math.abs(leanOf(leaning, hung, FIELD))).toBeLessThanOrEqual(MOST_LEAN);
  expect(hung.find((h) => h.x === 0)?.id).toBe("a");
  expect(hang(two(60, 60), FIELD).find((h) => h.x === 0)?.id).toBe("main");
});

test("no mix of these leans by more than an eighth of the field", () => {
  let leaning = 0;
  let all = 0;
  let worst = 0;
  fc.assert(
    fc.property(mixes, (pieces) => {
      const lean = Math.abs(leanOf(pieces, hang(pieces, FIELD, { width: 80, height: 49 }), FIELD));
      all += 1;
      if (lean > MOST_LEAN) leaning += 1;
      worst = Math.max(worst, lean);
    }),
    RUNS,
  );
  expect({ leaning, of: all, worst: worst < 0.15 }).toEqual({ leaning: 0, of: all, worst: true });
});
