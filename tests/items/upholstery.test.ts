import fc from "fast-check";
import { expect, test } from "vitest";
import { joinPiece } from "../../src/items/common/join/joinPiece.ts";
import { buttonCovers } from "../../src/items/common/welt/buttonCovers.ts";
import type { Made } from "../../src/items/itemKind.ts";
import { Length } from "../../src/units/length.ts";
import { inUnit, length } from "./tradeContext.ts";
import { make, sizes, total } from "./upholsteryMade.ts";

test("an ottoman's pieces follow from its size: top two seams over, sides a seam above and half the pull below; welt is its edge and a lap", () => {
  const made = make("ottoman", { welt: "slub" });
  expect(sizes(made, "in").slice(0, 4)).toEqual([
    ["top", 25, 21, 1],
    ["front", 25, 12 + 0.5 + 2, 1],
    ["side", 21, 14.5, 2],
    ["back", 25, 14.5, 1],
  ]);
  expect((made.figures.weltMm ?? 0) / 25.4).toBeCloseTo(2 * (24 + 20) + 2, 9);
  const round = make("ottoman", { size: '18" x 18" x 17"', shape: "round", legs: '0"' });
  // pi x 18 = 56.549, up to 56 5/8, and two seams.
  expect(sizes(round, "in")).toEqual([
    ["top", 19, 19, 1],
    ["side", 57.625, 19.5, 1],
  ]);
});

test("deep buttons take 15 % more each way (common practice, 10 to 15 %); each button has its square; small parts are cautioned", () => {
  const made = make("headboard", { size: '40" x 2" x 30"', buttons: "9", buttoning: "deep" });
  const wrap = 2 * (2 + 1.75);
  expect(inUnit(made.cuts[0]?.width ?? Length.zero, "in")).toBeCloseTo(40 * 1.15 + wrap, 9);
  expect(inUnit(made.cuts[0]?.height ?? Length.zero, "in")).toBeCloseTo(30 * 1.15 + wrap, 9);
  expect(made.cuts[1]).toMatchObject({
    piece: "9 button covers",
    count: 1,
    width: Length.inches(6),
    height: Length.inches(6),
  });
  expect(made.cautions).toEqual(["fire", "small-parts", "heavy-hanging"]);
  expect(make("headboard", { fixing: "bed" }).cautions).toEqual(["fire"]);
});

test("button covers are one piece that holds a square for each, however it is laid", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 400 }),
      fc.integer({ min: 20, max: 80 }),
      (count, width) => {
        const cut = buttonCovers({
          count,
          square: Length.cm(5),
          cloth: "slub",
          surface: "cover",
          usableWidth: Length.cm(width),
          nap: false,
          units: "centimetres",
        });
        for (const way of [cut, ...(cut.instead ?? [])]) {
          expect(way.width.isMoreThan(Length.cm(width))).toBe(false);
          const squares = way.width.over(Length.cm(5)).mul(way.height.over(Length.cm(5)));
          expect(squares.valueOf()).toBeGreaterThanOrEqual(count);
        }
      },
    ),
    { numRuns: 100 },
  );
});

test("a bordered headboard: panel and strips, sewn, are the board again; an arched strip holds its curve", () => {
  const made = make("headboard", { border: '4"', "border-cloth": "fern" });
  expect(made.cuts.map((c) => [c.piece, c.surface, c.cloth])).toEqual([
    ["panel", "cover", "slub"],
    ["border top", "border-top", "fern"],
    ["border side", "border-side", "fern"],
  ]);
  const [panel, , side] = made.cuts;
  const seam = 0.5;
  const wrap = 3 + 1.75;
  expect(inUnit(panel?.width ?? Length.zero, "in")).toBe(42 - 8 + 2 * seam);
  expect(inUnit(side?.width ?? Length.zero, "in")).toBe(4 + seam + wrap);
  const arched = make("headboard", { border: '4"', shape: "arched", rise: '6"' });
  expect(inUnit(arched.cuts[1]?.height ?? Length.zero, "in")).toBe(10 + seam + wrap);
});

test("bad input is told at its line, with what to write", () => {
  for (const [which, raw, code, key] of [
    ["sofa", {}, "sofa-not-measured", ""],
    ["dining", {}, "chair-not-measured", ""],
    ["ottoman", { legs: '17"' }, "legs-too-high", "legs"],
    ["ottoman", { size: '24" x 20" x 17"', shape: "round" }, "round-not-round", "size"],
    ["headboard", { border: '21"' }, "border-too-wide", "border"],
    ["headboard", { shape: "arched" }, "arch-not-measured", "shape"],
    ["headboard", { shape: "arched", rise: '40"' }, "arch-not-measured", "rise"],
    ["headboard", { rise: '6"' }, "rise-without-arch", "rise"],
    ["headboard", { buttoning: "deep" }, "buttons-not-counted", "buttoning"],
    ["headboard", { "border-cloth": "fern" }, "border-not-measured", "border-cloth"],
    ["headboard", { join: "both-sides" }, "join-not-needed", "join"],
    ["seat", { "back-width": '19"' }, "back-wider-than-front", "back-width"],
    ["seat", { thickness: '4"' }, "wrap-too-small", "thickness"],
    ["seat", { cloth: "fern", size: '23" x 20"' }, "motif-does-not-fit", "size"],
    ["seat", { centred: "yes" }, "no-motif-to-centre", "centred"],
    [
      "seat",
      { cloth: "fern", centred: "yes", railroad: "yes" },
      "railroaded-not-centred",
      "centred",
    ],
  ] as const) {
    const found = make(which, raw).diagnostics[0];
    expect(found, code).toMatchObject({ code, keyPath: `items[0].${key}` });
    expect(found?.hint, code).toBeTruthy();
  }
});

test("inches and centimetres agree exactly; larger never takes less; a count multiplies", () => {
  const raws = {
    dining: (w: string, d: string) => ({ pieces: [{ piece: "seat", size: `${w} x ${d}` }] }),
    seat: (w: string, d: string) => ({ size: `${w} x ${d}` }),
    ottoman: (w: string, d: string) => ({ size: `${w} x ${d} x 40 cm`, legs: "10 cm" }),
    headboard: (w: string, d: string) => ({ size: `${w} x 7 cm x ${d}` }),
  } as const;
  fc.assert(
    fc.property(
      fc.constantFrom(...(Object.keys(raws) as (keyof typeof raws)[])),
      fc.constantFrom("slub", "bough"),
      fc.integer({ min: 6, max: 40 }),
      fc.integer({ min: 6, max: 40 }),
      fc.integer({ min: 1, max: 8 }),
      (which, cloth, w, d, n) => {
        const of = (a: string, b: string, count: number) =>
          make(which, {
            ...raws[which](a, b),
            cloth,
            count: String(count),
            ...(which === "dining" ? {} : { centred: "no" }),
          });
        const inches = of(`${w}"`, `${d}"`, n);
        const metric = of(`${(w * 254) / 100} cm`, `${(d * 254) / 100} cm`, n);
        expect(metric.cuts.map((c) => [c.width.mm.toFraction(), c.height.mm.toFraction()])).toEqual(
          inches.cuts.map((c) => [c.width.mm.toFraction(), c.height.mm.toFraction()]),
        );
        expect(total(metric, cloth).equals(total(inches, cloth))).toBe(true);
        const area = (m: Made) =>
          m.cuts.reduce((sum, c) => sum + c.width.toMm() * c.height.toMm() * c.count, 0);
        expect(area(of(`${w + 1}"`, `${d}"`, n))).toBeGreaterThan(area(inches));
        expect(area(of(`${w}"`, `${d + 1}"`, n))).toBeGreaterThan(area(inches));
        expect(area(of(`${w}"`, `${d}"`, n + 1))).toBeGreaterThan(area(inches));
        // One piece each. An ottoman's five, in rows longest first, may fall into fewer rows when one of them grows past another.
        if (which !== "ottoman")
          expect(
            total(of(`${w}"`, `${d + 1}"`, n), cloth).compare(total(inches, cloth)),
          ).toBeGreaterThanOrEqual(0);
      },
    ),
    { numRuns: 120 },
  );
});

test("joined parts sewn together measure the piece, exactly, and no strip is wider than the cloth", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1000, max: 5200 }),
      fc.integer({ min: 900, max: 1500 }),
      fc.integer({ min: 5, max: 25 }),
      fc.constantFrom("both-sides" as const, "one-side" as const),
      (cut, usable, turning, way) => {
        fc.pre(cut > usable);
        const parts = joinPiece(Length.mm(cut), Length.mm(usable), Length.mm(turning), way);
        if (parts === null) {
          expect(way).toBe("one-side");
          return;
        }
        const joined = Length.sum(parts.map((p) => p.width)).minus(
          Length.mm(turning).times(2 * (parts.length - 1)),
        );
        expect(joined.equals(Length.mm(cut))).toBe(true);
        for (const p of parts) expect(p.width.isMoreThan(Length.mm(usable))).toBe(false);
      },
    ),
    { numRuns: 200 },
  );
});

test("joined pattern meets at the selvedge: strips on half-drop cloth begin half a repeat on, a centred back has its motif level across", () => {
  const made = make("sofa", {
    cloth: "bough",
    pieces: [{ piece: "inside-back", size: '74" x 26"', centred: "yes", join: "both-sides" }],
  });
  expect(made.cuts.map((c) => c.across)).toEqual([
    { how: "selvedge", side: "right" },
    { how: "whole-width" },
    { how: "selvedge", side: "left" },
  ]);
  // Columns at 9, 27 and 45 in: the middle one hangs half a repeat off the first, so the whole width is the one that is shifted.
  expect(made.cuts.map((c) => c.along)).toEqual(
    [0, 1, 0].map((joined) => ({ how: "motif-at", aboveFoot: Length.inches(15), joined })),
  );
  // Fern has its columns at 13 1/2 and 40 1/2 in: a gap stands in the middle of its width.
  const gap = make("sofa", {
    cloth: "fern",
    pieces: [{ piece: "inside-back", size: '74" x 26"', centred: "yes", join: "both-sides" }],
  });
  expect(gap.questions.join(" ")).toContain("no motif stands in the middle");
  expect(made.questions.join(" ")).not.toContain("no motif stands");
  const level = make("sofa", {
    cloth: "fern",
    pieces: [{ piece: "outside-back", size: '80" x 26"', join: "both-sides" }],
  });
  expect(level.cuts.every((c) => c.along.how === "level" && c.along.joined === 0)).toBe(true);
});

test("a headboard said to lie on its bed is told that it stands behind it", () => {
  const host = {
    id: "bed",
    name: "Oak bed",
    shape: "bed",
    round: false,
    mattress: null,
    width: null,
    depth: null,
    height: null,
    weight: null,
    stays: true,
    owner: null,
    hasPhoto: false,
    colours: [],
  } as const;
  const codes = (ask: object) =>
    make("headboard", { size: '60" x 3" x 30"' }, ask).diagnostics.map((d) => d.code);
  expect(codes({ host })).toEqual(["headboard-on-bed"]);
  expect(codes({})).toEqual([]);
});

test("welt of its own cloth is estimated in words of its own, not in those of the cover", () => {
  const made = make("sofa", { type: "sofa", welt: "fern" });
  const of = (cloth: string) => made.handbook.find((h) => h.cloth === cloth);
  // 1 1/2 yd: how-to article on chair slipcovers, 2013.
  expect(of("fern")?.length.equals(length("1.5 yd"))).toBe(true);
  expect(of("fern")?.estimate?.replace(/\s/g, " ")).toBe(
    "An estimate: 1 1/2 yd for the welt of one sofa. Measure the welt before ordering.",
  );
  expect(of("slub")?.estimate).toBeUndefined();
  expect(make("sofa", { type: "sofa", welt: "slub" }).handbook.map((h) => h.estimate)).toEqual([
    undefined,
  ]);
});
