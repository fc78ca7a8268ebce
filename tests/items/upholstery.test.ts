import fc from "fast-check";
import { expect, test } from "vitest";
import { buttonCovers } from "../../src/items/buttonCovers.ts";
import type { Made } from "../../src/items/itemKind.ts";
import { joinPiece } from "../../src/items/joinPiece.ts";
import { diningChairKind } from "../../src/items/upholstery/diningchair/kind.ts";
import { dropInKind } from "../../src/items/upholstery/dropin/kind.ts";
import { headboardKind } from "../../src/items/upholstery/headboard/kind.ts";
import { ottomanKind } from "../../src/items/upholstery/ottoman/kind.ts";
import { sofaKind } from "../../src/items/upholstery/sofa/kind.ts";
import { Length } from "../../src/units/length.ts";
import {
  type ContextAsk,
  clothFacts,
  contextFor,
  fieldsOf,
  given,
  inUnit,
  length,
  tradeCase,
  wanted,
} from "./tradeContext.ts";

const PLAIN = clothFacts({ id: "slub", usableWidth: length('54"'), mayTurn: true });
const PLAIN137 = clothFacts({ id: "plain137", usableWidth: length("137 cm") });
const PRINT = clothFacts({
  id: "fern",
  name: "Fern",
  usableWidth: length('54"'),
  repeat: {
    up: length('25 1/4"'),
    across: length('27"'),
    match: "straight",
    fromSelvedge: length('13 1/2"'),
  },
});
/** Three columns to a width: neighbours joined at the selvedge hang half a repeat lower. */
const HALF_DROP = clothFacts({
  id: "bough",
  name: "Bough",
  usableWidth: length('54"'),
  repeat: {
    up: length('24"'),
    across: length('18"'),
    match: "half-drop",
    fromSelvedge: length('9"'),
  },
});
const CLOTHS = [PLAIN, PLAIN137, PRINT, HALF_DROP];
const pair = (v: unknown) => (v as { value: [number, number] }).value;

const KINDS = {
  sofa: { kind: sofaKind, raw: { sofa: "Long", size: '84" x 36" x 34"' } },
  dining: { kind: diningChairKind, raw: { "dining-chair": "Side", size: '19" x 21" x 38"' } },
  seat: { kind: dropInKind, raw: { "drop-in-seat": "Six", size: '18" x 16"' } },
  ottoman: { kind: ottomanKind, raw: { ottoman: "Stool", size: '24" x 20" x 17"', legs: '5"' } },
  headboard: { kind: headboardKind, raw: { headboard: "End", size: '42" x 3" x 36"' } },
} as const;

function make(which: keyof typeof KINDS, raw: Record<string, unknown>, ask: ContextAsk = {}): Made {
  const { kind, raw: usual } = KINDS[which];
  const fields = fieldsOf(kind.schema, { cloth: "slub", ...usual, ...raw });
  const context = contextFor(kind.allowances, { cloths: CLOTHS, ...ask });
  return (kind.make as (f: unknown, c: typeof context) => Made)(fields, context);
}
const sizes = (made: Made, unit: "in" | "cm") =>
  made.cuts.map((c) => [c.piece, inUnit(c.width, unit), inUnit(c.height, unit), c.count]);
const total = (made: Made, cloth: string) =>
  made.handbook.find((h) => h.cloth === cloth)?.length ?? Length.zero;

test("drop-in seats are the seat and 6 in each way (up-01, how-to article; up-02, weblog, 2012), two across 54 in (up-01)", () => {
  for (const id of ["up-01", "up-02"]) {
    const c = tradeCase("upholstery", id);
    const [w, d] = pair(c.inputs.seat);
    const made = make("seat", { size: `${w}" x ${d}"` });
    expect(sizes(made, "in"), id).toEqual([["seat", ...pair(c.expected.cut), 1]]);
  }
  const c = tradeCase("upholstery", "up-01");
  const two = make("seat", { size: '20" x 22"', count: "2" });
  const yards = Math.ceil(inUnit(total(two, "slub"), "in") / 18) / 2;
  expect(yards).toBe(2 * wanted(c, "yards_per_seat"));
  const three = make("seat", { size: '20" x 22"', count: "3" });
  expect(inUnit(total(three, "slub"), "in")).toBe(56);
});

test("a headboard's face wraps all edges; too high to run sideways, it takes two drops with a whole width in the middle (up-14, common practice, no source)", () => {
  const c = tradeCase("upholstery", "up-14");
  const made = make(
    "headboard",
    { cloth: "plain137", size: "160 cm x 8 cm x 120 cm" },
    { units: "centimetres" },
  );
  const strip = wanted(c, "each_side_strip");
  const [cutW, cutH] = pair(c.expected.cut);
  expect(made.working[0]?.result.replace(/\s/g, " ")).toBe(`${cutW} cm × ${cutH} cm`);
  expect(sizes(made, "cm")).toEqual([
    ["face, left strip", strip, cutH, 1],
    ["face, whole width", 137, cutH, 1],
    ["face, right strip", strip, cutH, 1],
  ]);
  expect(inUnit(total(made, "plain137"), "m")).toBe(wanted(c, "length"));
  expect(made.questions.join(" ")).toContain("whole width in the middle");
  const sideways = make(
    "headboard",
    { cloth: "plain137", size: "160 cm x 8 cm x 120 cm", railroad: "yes" },
    { units: "centimetres" },
  );
  expect(sideways.diagnostics[0]).toMatchObject({ code: "piece-wider-than-cloth" });
  expect(sideways.diagnostics[0]?.hint).toContain("join: both-sides");
});

test("a sofa's back: one join or a whole width in the middle, 1.68 m either way; sideways 1.98 m without a join (up-13, common practice, no source)", () => {
  const c = tradeCase("upholstery", "up-13");
  const size = `${given(c, "inside_back_width")} cm x ${given(c, "inside_back_height")} cm`;
  const ask: ContextAsk = { units: "centimetres", allowances: { pull: "0 cm" } };
  const back = (more: Record<string, unknown>, item: Record<string, unknown> = {}) =>
    make(
      "sofa",
      { cloth: "plain137", pieces: [{ piece: "inside-back", size, ...more }], ...item },
      ask,
    );
  const one = back({ join: "one-side" });
  expect(one.figures.joins).toBe(wanted(c, "up_the_roll_joins"));
  const middle = back({ join: "both-sides" });
  expect(middle.figures.joins).toBe(wanted(c, "up_the_roll_joins_whole_middle"));
  for (const made of [one, middle])
    expect(inUnit(total(made, "plain137"), "m")).toBe(wanted(c, "up_the_roll_length"));
  const along = back({}, { railroad: "yes" });
  expect(along.figures.joins).toBe(wanted(c, "railroaded_joins"));
  expect(inUnit(total(along, "plain137"), "m")).toBe(wanted(c, "railroaded_length"));
  expect(back({}).diagnostics[0]?.hint).toMatch(/join: both-sides.*may-turn: yes.*wider cloth/);
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

test("ranges while nothing is measured (up-11, common practice, no source; a pair of dining seats takes a yard)", () => {
  const c = tradeCase("upholstery", "up-11");
  const yards = (made: Made) => [
    (made.figures.estimateLowMm ?? 0) / 914.4,
    (made.figures.estimateMm ?? 0) / 914.4,
  ];
  for (const [which, raw, key] of [
    ["sofa", { type: "sofa" }, "sofa_7ft"],
    ["sofa", { type: "loveseat" }, "loveseat"],
    ["dining", { type: "seat-and-back" }, "dining_seat_and_back"],
    ["ottoman", { measured: "no" }, "ottoman"],
    ["headboard", { measured: "no" }, "headboard_queen"],
  ] as const) {
    const made = make(which, raw);
    const [low, high] = yards(made) as [number, number];
    expect(low, key).toBeCloseTo(pair(c.expected[key])[0], 9);
    expect(high, key).toBeCloseTo(pair(c.expected[key])[1], 9);
    expect(made.cuts).toEqual([]);
    expect(made.estimate).toContain("An estimate");
    expect(made.questions.join(" ")).toContain("only an estimate");
  }
  const seats = make("dining", { type: "seat", count: "2" });
  expect(yards(seats)[1]).toBeCloseTo(wanted(c, "dining_seat_pair"), 9);
});

test("loose covers by range: chairs (up-03, how-to article, 2013), sofas in 60 and 45 in cloth (up-04, how-to weblog, 2020)", () => {
  const c = tradeCase("upholstery", "up-04");
  const wide = [
    clothFacts({ id: "w60", usableWidth: length('60"') }),
    clothFacts({ id: "w45", usableWidth: length('45"') }),
    clothFacts({ id: "w54", usableWidth: length('54"') }),
  ];
  const yards = (type: string, cloth: string) => {
    const made = make("sofa", { type, cover: "loose", cloth }, { cloths: wide });
    return [made.figures.estimateLowMm, made.figures.estimateMm].map((mm) =>
      Number(((mm ?? 0) / 914.4).toFixed(6)),
    );
  };
  expect(yards("sofa", "w60")).toEqual(pair(c.expected.large_sofa_60in));
  expect(yards("sofa", "w45")).toEqual(pair(c.expected.large_sofa_45in));
  expect(yards("loveseat", "w60")).toEqual(pair(c.expected.small_sofa_60in));
  expect(yards("loveseat", "w45")).toEqual(pair(c.expected.small_sofa_45in));
  // Between the two rows the wider row grows by the widths' proportion.
  expect(yards("sofa", "w54")[1]).toBeCloseTo((14 * 60) / 54, 5);
});

test("loose covers take a 1 in seam on each edge and 6 in tuck-ins (up-03, how-to article, 2013)", () => {
  const made = make("sofa", {
    cover: "loose",
    pieces: [
      { piece: "seat", size: '54" x 26"', "may-turn": "yes" },
      { piece: "outside-arm", size: '30" x 20"' },
    ],
  });
  expect(sizes(made, "in")).toEqual([
    ["seat", 54 + 2 + 12, 26 + 2 + 6, 1],
    ["outside arm", 32, 22, 2],
  ]);
});

test("a suite's yards add up, 30.25 yd, which is 27.66 m (up-05, weblog on a 1979 chart; printed rounded up to 28 m)", () => {
  const c = tradeCase("upholstery", "up-05");
  const sum = Length.sum(
    ["sofa", "chair", "footstool"].map((k) => Length.yards(String(given(c, k)))),
  );
  expect(inUnit(sum, "yd")).toBe(wanted(c, "total"));
  expect(inUnit(sum.upTo(length("1 m")), "m")).toBe(wanted(c, "metres"));
});

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
        expect(
          total(of(`${w}"`, `${d + 1}"`, n), cloth).compare(total(inches, cloth)),
        ).toBeGreaterThanOrEqual(0);
      },
    ),
    { numRuns: 120 },
  );
});
