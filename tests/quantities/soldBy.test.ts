import { expect, test } from "vitest";
import { quantitiesText } from "../../src/quantities/text/quantitiesText.ts";
import { quantitiesJson } from "../../src/quantities/text/toJson.ts";
import { quantitiesOf, STUDIO_CM, STUDIO_INCHES } from "./studioOf.ts";

// Buying goes UP to the step in which a cloth is sold: reference/trade/README.md, section 3 (common practice, no source). The figures
// are worked by hand: a knife-edge cushion is cut as its size and two seams (1/2 in; 1.5 cm), its two faces lie side by side where the
// cloth is wide enough, so the plan is as long as one face; where it is not, as long as both.

interface Bought {
  readonly plan: { readonly lengthMm: number; readonly lengths: readonly number[] };
  readonly spareMm: number;
  readonly buy: { readonly amount: number; readonly unit: string; readonly text: string };
}

function bought(card: string, size: string, inches: boolean, count = 1) {
  const allowances = `allowances: { cushion: { seam: ${inches ? '1/2"' : "1.5 cm"} } }`;
  const quantities = quantitiesOf({
    studio: `${inches ? STUDIO_INCHES : STUDIO_CM}\n${allowances}`,
    cloths: { plain: `cloth: Plain\n${card}` },
    rooms: {
      a: `room: A\nitems:\n  - { cushion: One, cloth: plain, count: ${count}, size: ${size}, edge: knife, closure: sewn }`,
    },
  });
  const [cloth] = (quantitiesJson(quantities) as unknown as { cloths: Bought[] }).cloths;
  const codes = quantities.diagnostics.map((d) => d.code);
  const text = quantitiesText(quantities, inches ? "inches" : "centimetres", "en-US");
  return { ...(cloth as Bought), codes, text };
}

const YD = `width: 54"\nkind: plain\nprice: { trade: 20, per: yard`;
const M = "width: 140 cm\nkind: plain\nprice: { trade: 20, per: metre";

// A face is cut 1 in longer than it is made.
test.each([
  ["1/4 yd", '16 7/8"', 0.5],
  ["1/4 yd", '17"', 0.5],
  ["1/4 yd", '17 1/8"', 0.75],
  ["1/8 yd", '12 3/8"', 0.375],
  ["1/8 yd", '12 1/2"', 0.375],
  ["1/8 yd", '12 5/8"', 0.5],
])("sold by %s: a cushion of %s takes %d yd", (step, size, yards) => {
  const found = bought(`${YD}, sold-by: ${step} }`, `${size} x ${size}`, true);
  expect(found.buy).toMatchObject({ amount: yards, unit: "yard" });
  expect(found.codes.filter((code) => code.startsWith("sold-by"))).toEqual([]);
});

// 47 + 3 = 50 cm.
test.each([
  ["46.9 cm", 0.5],
  ["47 cm", 0.5],
  ["47.1 cm", 0.6],
])("sold by 0.1 m: a cushion of %s takes %d m", (size, metres) => {
  for (const step of ["", ", sold-by: 0.1 m"])
    expect(bought(`${M}${step} }`, `${size} x ${size}`, false).buy).toMatchObject({
      amount: metres,
      unit: "metre",
    });
});

// 61 + 3 = 64 cm of plan, and a repeat of 64 cm to spare since the pattern may begin anywhere: two repeats, 1.28 m.
test.each([
  ["60.9 cm", 1.28, 2],
  ["61 cm", 1.28, 2],
  ["61.1 cm", 1.92, 3],
])("sold by whole repeats of 64 cm: a cushion of %s takes %d m", (size, metres, repeats) => {
  const card = `width: 140 cm\nrepeat: { up: 64 cm, match: straight }\nprice: { trade: 20, per: metre, sold-by: repeat }`;
  const found = bought(card, `${size} x ${size}`, false);
  expect(found.spareMm).toBe(640);
  expect(found.buy.amount).toBeCloseTo(metres, 9);
  expect(found.text).toContain(`whole repeats of 64\u202fcm: ${repeats}`);
});

// Two faces of 97 + 3 = 100 cm, one above the other: 2 m, one bolt. A millimetre more, and a bolt holds one face.
test.each([
  ["96.9 cm", 2],
  ["97 cm", 2],
  ["97.1 cm", 4],
])("sold by whole bolts of 2 m: a cushion of %s takes %d m", (size, metres) => {
  const found = bought(
    `${M}, bolt: { length: 2 m, trade: 15 }, sold-by: bolt }`,
    `${size} x ${size}`,
    false,
  );
  expect(found.buy.amount).toBe(metres);
});

test("four faces of 1.5 m are 6 m, but a bolt of 2.5 m holds one: four bolts, not three", () => {
  const card = `${M}, bolt: { length: 2.5 m, trade: 15 }, sold-by: bolt }`;
  const found = bought(card, "120 cm x 147 cm", false, 2);
  expect(found.plan.lengths.filter((mm) => mm > 0)).toHaveLength(4);
  expect(found.buy.amount).toBe(10);
  // Cut from bolts and sold by the tenth, each length goes up by itself: 4 × 1.51 m are 4 × 1.6 m, not 6.1 m.
  const cut = bought(`${M}, bolt: { length: 2.5 m, trade: 15 } }`, "120 cm x 148 cm", false, 2);
  expect(cut.buy.amount).toBeCloseTo(6.4, 9);
});

// 26 + 1 = 27 in, twice across 54 in; 35 + 1 = 36 in is the supplier's minimum of 1 yd.
test.each([
  ['34 7/8"', 1, true],
  ['35"', 1, false],
  ['35 1/8"', 1.25, false],
])("a minimum of 1 yd: a cushion 26 in by %s takes %d yd", (height, yards, least) => {
  const found = bought(`${YD}, minimum: 1 yd }`, `26" x ${height}`, true);
  expect(found.buy.amount).toBe(yards);
  expect(found.text.includes("the supplier's minimum")).toBe(least);
});

test("a minimum that is no whole step goes up to one: 2/3 yd by the quarter is 3/4 yd", () => {
  expect(bought(`${YD}, minimum: 24" }`, '17" x 17"', true).buy.amount).toBe(0.75);
});

test("whole repeats or bolts that the card does not give are asked for, and the usual step is taken", () => {
  const repeat = bought(`${M}, sold-by: repeat }`, "47 cm x 47 cm", false);
  expect(repeat.codes).toContain("sold-by-repeat-unknown");
  expect(repeat.buy.amount).toBe(0.5);
  const bolt = bought(`${M}, sold-by: bolt }`, "47 cm x 47 cm", false);
  expect(bolt.codes).toContain("sold-by-bolt-unknown");
});
