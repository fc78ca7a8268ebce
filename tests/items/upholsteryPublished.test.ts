import { expect, test } from "vitest";
import type { Made } from "../../src/items/itemKind.ts";
import { Length } from "../../src/units/length.ts";
import {
  type ContextAsk,
  clothFacts,
  given,
  inUnit,
  length,
  tradeCase,
  wanted,
} from "./tradeContext.ts";
import { make, pair, sizes, total } from "./upholsteryMade.ts";

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
  expect(made.questions.join(" ")).toContain("one width in the middle");
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

test("ranges while nothing is measured (up-11, common practice, no source; a pair of dining seats takes a yard)", () => {
  const c = tradeCase("upholstery", "up-11");
  const yards = (made: Made) => [
    (made.figures.estimateLowMm ?? 0) / 914.4,
    (made.figures.estimateMm ?? 0) / 914.4,
  ];
  for (const [which, raw, key] of [
    ["sofa", { type: "sofa" }, "sofa_7ft"],
    ["sofa", { type: "loveseat", size: '60" x 36" x 34"' }, "loveseat"],
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
    const made = make(
      "sofa",
      { type, cover: "loose", cloth, size: '72" x 36" x 34"' },
      { cloths: wide },
    );
    return [made.figures.estimateLowMm, made.figures.estimateMm].map((mm) =>
      Number(((mm ?? 0) / 914.4).toFixed(6)),
    );
  };
  expect(yards("sofa", "w60")).toEqual(pair(c.expected.large_sofa_60in));
  expect(yards("sofa", "w45")).toEqual(pair(c.expected.large_sofa_45in));
  expect(yards("loveseat", "w60")).toEqual(pair(c.expected.small_sofa_60in));
  expect(yards("loveseat", "w45")).toEqual(pair(c.expected.small_sofa_45in));
  // Between the two rows the larger: the 1979 book Slipcovers and Bedspreads (up-05) has 19 3/4 yd in cloth of 45 to 54 in.
  expect(yards("sofa", "w54")).toEqual(pair(c.expected.large_sofa_45in));
  const book = tradeCase("upholstery", "up-05");
  expect(yards("sofa", "w54")[1]).toBeGreaterThanOrEqual(given(book, "sofa"));
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
