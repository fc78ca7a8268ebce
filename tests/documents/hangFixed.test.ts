import fc from "fast-check";
import { expect, test } from "vitest";
import { hang } from "../../src/documents/board/hang.ts";
import {
  crowds,
  type FixedPlace,
  hangFixed,
  onField,
} from "../../src/documents/board/hangFixed.ts";
import { CAPTION_MM, GAP_MM, type HangPiece } from "../../src/documents/board/hangPiece.ts";

// The rules of the composition are the project's own (DEVELOPERS.md, "The pages").

const FIELD = { width: 258, height: 251 };
const TITLE = { width: 110, height: 27 };
const ROLES = ["supporting", "geometric", "small-print", "plain", "accent"] as const;

const piece = (id: string, role: HangPiece["role"], share: number): HangPiece => ({
  id,
  role,
  share,
  ownAspect: role === "anchor" ? 1.25 : null,
  look: role === "geometric" ? "stripe" : "print",
  repeatOnPaperMm: role === "geometric" ? 40 : null,
  most: null,
  lightness: 30 + ((id.charCodeAt(0) * 37) % 60),
});

const MIX = [
  piece("stove", "anchor", 0.19),
  piece("main", "main", 0.4),
  piece("stripe", "geometric", 0.1),
  piece("sprig", "small-print", 0.05),
  piece("linen", "plain", 0.2),
  piece("spot", "accent", 0.01),
];

const RUNS = { numRuns: process.env.SOAK ? 5000 : 200, seed: 20261125 };

test("without fixed places the mix hangs as it does by itself", () => {
  expect(hangFixed(MIX, FIELD, TITLE, [])).toEqual({ hung: hang(MIX, FIELD, TITLE), faults: [] });
});

test("a fixed piece stands where and as large as it is asked for, and what is not in its way stays", () => {
  const computed = hang(MIX, FIELD, TITLE);
  const place = { id: "spot", x: 200, y: 30, size: { width: 40, height: 30 } };
  const { hung, faults } = hangFixed(MIX, FIELD, TITLE, [place]);
  expect(faults).toEqual([]);
  const spot = hung.find((h) => h.id === "spot");
  expect(spot).toMatchObject({ x: 200, y: 30, width: 40, height: 30 });
  for (const h of hung) {
    const before = computed.find((c) => c.id === h.id);
    if (h.id !== "spot" && before && spot && !crowds(spot, before)) expect(h).toEqual(before);
  }
});

test("a place without a size keeps the size that the piece would have had", () => {
  const own = hang(MIX, FIELD, TITLE).find((h) => h.id === "spot");
  const { hung } = hangFixed(MIX, FIELD, TITLE, [{ id: "spot", x: 200, y: 30, size: null }]);
  expect(hung.find((h) => h.id === "spot")).toMatchObject({
    x: 200,
    y: 30,
    width: own?.width,
    height: own?.height,
  });
});

test("places that leave the field, cover the title or meet are told, and the piece hangs as computed", () => {
  const computed = hang(MIX, FIELD, TITLE);
  const size = { width: 40, height: 40 };
  const at = (id: string, x: number, y: number): FixedPlace => ({ id, x, y, size });
  const of = (places: readonly FixedPlace[]) => hangFixed(MIX, FIELD, TITLE, places);
  for (const [x, y] of [
    [-1, 60],
    [219, 60],
    [100, -1],
    [100, FIELD.height - 40 - CAPTION_MM + 1],
  ] as const) {
    const { hung, faults } = of([at("sprig", x, y)]);
    expect(faults).toEqual([{ id: "sprig", fault: "leaves-the-field", other: null }]);
    expect(hung).toEqual(computed);
  }
  expect(of([at("sprig", 20, 10)]).faults[0]?.fault).toBe("meets-title");
  const met = of([at("sprig", 120, 60), at("spot", 120 + 40 + GAP_MM - 1, 60)]);
  expect(met.faults).toEqual([{ id: "spot", fault: "meets-another", other: "sprig" }]);
  expect(of([at("sprig", 120, 60), at("spot", 120 + 40 + GAP_MM, 60)]).faults).toEqual([]);
});

test("a place that leaves no room for another piece is not followed, and is told", () => {
  const { hung, faults } = hangFixed(MIX, FIELD, TITLE, [
    { id: "main", x: 0, y: 30, size: { width: 258, height: 200 } },
  ]);
  expect(faults).toMatchObject([{ id: "main", fault: "leaves-no-room" }]);
  expect(hung).toEqual(hang(MIX, FIELD, TITLE));
});

const mixes = fc
  .array(fc.tuple(fc.constantFrom(...ROLES), fc.double({ min: 0.005, max: 0.3, noNaN: true })), {
    minLength: 1,
    maxLength: 10,
  })
  .map((rest) => [
    piece("main", "main", 0.4),
    ...rest.map(([role, share], at) => piece(`c${at}`, role, share)),
  ]);
const placesOf = fc.array(
  fc.record({
    id: fc.constantFrom("main", "c0", "c1", "c2"),
    x: fc.double({ min: -20, max: 270, noNaN: true }),
    y: fc.double({ min: -20, max: 270, noNaN: true }),
    size: fc.option(
      fc.record({
        width: fc.double({ min: 15, max: 140, noNaN: true }),
        height: fc.double({ min: 15, max: 140, noNaN: true }),
      }),
    ),
  }),
  { maxLength: 3 },
);

test("whatever is fixed, nothing overlaps, all stands on the field, and every place is followed or told", () => {
  fc.assert(
    fc.property(mixes, placesOf, (pieces, all) => {
      const places = all.filter((p, at) => all.findIndex((q) => q.id === p.id) === at);
      const { hung, faults } = hangFixed(pieces, FIELD, TITLE, places);
      expect(hung.map((h) => h.id).sort()).toEqual(pieces.map((p) => p.id).sort());
      for (const h of hung) {
        expect(onField(h, FIELD)).toBe(true);
        for (const o of hung)
          if (o !== h)
            expect(
              o.x >= h.x + h.width + GAP_MM - 0.02 ||
                h.x >= o.x + o.width + GAP_MM - 0.02 ||
                o.y >= h.y + h.height + CAPTION_MM - 0.02 ||
                h.y >= o.y + o.height + CAPTION_MM - 0.02,
            ).toBe(true);
      }
      for (const place of places.filter((p) => pieces.some((q) => q.id === p.id))) {
        const at = hung.find((h) => h.id === place.id);
        const followed = at?.x === place.x && at.y === place.y;
        expect(followed !== faults.some((f) => f.id === place.id)).toBe(true);
      }
    }),
    RUNS,
  );
});
