// A trim is bought as its card says that it is sold: `minimum` is "the shortest length that is sold", `sold-by` "the step that it is cut
// in" (the format page), for a braid as for a cloth. The sums are worked by hand: a tie-back of 60 cm takes 60 cm and 5 cm for its two
// ends along its lower edge (common practice, no source), so a pair takes 1.3 m.
import { expect, test } from "vitest";
import { quantitiesText } from "../../src/quantities/text/quantitiesText.ts";
import { quantitiesJson } from "../../src/quantities/text/toJson.ts";
import { clientOf, pricedOf, tradeOf } from "../money/priced.ts";
import { quantitiesOf, STUDIO_CM, STUDIO_INCHES } from "./studioOf.ts";

const PAIR = (name: string, trim = "braid") =>
  `  - { tieback: ${name}, cloth: plain, count: 2, shape: straight, length: 60 cm, depth: 10 cm, trim: ${trim} }`;

function small(price: string, rooms: Readonly<Record<string, string>>, project = "") {
  return {
    studio: `${STUDIO_CM}\nmarkup: { cloth: 2 }`,
    project: `project: Test\nclient: { name: Nobody }\nstatus: proposed\n${project}`,
    cloths: {
      plain:
        "cloth: Oat\nwidth: 137 cm\nkind: plain\nruns: any-way\nprice: { trade: 10, per: metre }",
      braid: `cloth: Flax braid\ntype: trim\nprice: { trade: 7, per: metre${price} }`,
    },
    rooms,
  };
}

const ONE = { a: `room: A\nitems:\n${PAIR("One")}` };
const TWO = { a: `room: A\nitems:\n${PAIR("One")}`, b: `room: B\nitems:\n${PAIR("Two")}` };

test.each([
  ["", 1.3, 910],
  [", sold-by: 0.5 m", 1.5, 1050],
  [", sold-by: 1 m", 2, 1400],
  [", minimum: 5 m", 5, 3500],
  [", minimum: 1 m, sold-by: 1 m", 2, 1400],
])("one pair of tie-backs takes 1.3 m; sold%s %d m are bought", (price, metres, trade) => {
  const found = quantitiesOf(small(price, ONE));
  expect(found.trims.map(({ buy }) => buy.amount.valueOf())).toEqual([metres]);
  const { money } = pricedOf(small(price, ONE));
  expect(tradeOf(money, "trim")).toEqual([trade]);
  expect(clientOf(money, "trim")).toEqual([2 * trade]);
});

// 1.3 + 1.3 = 2.6 m, up to 3 m: the step counts once for the project, and each item bears its share.
test("two rooms share one purchase of a trim", () => {
  const files = small(", sold-by: 1 m", TWO);
  expect(quantitiesOf(files).trims.map(({ buy }) => buy.amount.valueOf())).toEqual([3]);
  expect(tradeOf(pricedOf(files).money, "trim")).toEqual([1050, 1050]);
  expect(tradeOf(pricedOf(small(", minimum: 5 m", TWO)).money, "trim")).toEqual([1750, 1750]);
});

// A card (put-up) of 25 m at 4.00 a metre: 100.00, and the client pays for the whole of it, as of a cloth sold in whole bolts alone.
test("a trim that is sold by the whole card alone is bought and charged so", () => {
  const files = small(", bolt: { length: 25 m, trade: 4 }, sold-by: bolt", TWO);
  expect(quantitiesOf(files).trims.map(({ buy }) => buy.text)).toEqual(["25\u202fm"]);
  const { money } = pricedOf(files);
  expect(tradeOf(money, "trim")).toEqual([5000, 5000]);
  expect(clientOf(money, "trim")).toEqual([17_500, 17_500]);
});

test("what was ordered is held against what is bought", () => {
  const order = (metres: number) =>
    `orders: [{ cloth: braid, length: ${metres} m, on: 2026-10-05 }]`;
  const codes = (metres: number) =>
    quantitiesOf(small(", minimum: 5 m", TWO, order(metres))).diagnostics.map((d) => d.code);
  expect(codes(3)).toContain("ordered-too-little");
  expect(codes(5)).not.toContain("ordered-too-little");
  // A slip of the point: ten times as much. Up to twice as much may be meant.
  expect(codes(50)).toContain("ordered-far-more");
  expect(codes(5)).not.toContain("ordered-far-more");
});

test("far more that came than was ordered is told at its receipt, a piece that was cut long is not", () => {
  const told = (came: string, orders = "[{ cloth: braid, length: 5 m, on: 2026-10-05 }]") =>
    quantitiesOf(
      small(
        ", minimum: 5 m",
        TWO,
        `orders: ${orders}\nreceipts: [{ cloth: braid, lot: 1, length: 1 m }, { cloth: braid, lot: 1, length: ${came} }]`,
      ),
    ).diagnostics.filter((d) => d.code === "received-more-than-ordered");
  expect(told("40 m").map((d) => [d.severity, d.keyPath, d.message])).toEqual([
    [
      "warning",
      "receipts[1].length",
      "Of Flax braid 41\u202fm came by these receipts; 5\u202fm was ordered.",
    ],
  ]);
  expect(told("4.5 m")).toEqual([]);
  expect(told("4.51 m")).toHaveLength(1);
  expect(told("40 m", "[]")).toEqual([]);
});

test("the list to buy and the JSON say what is bought, and for what", () => {
  const found = quantitiesOf(small(", sold-by: 1 m", TWO));
  const text = quantitiesText(found, "centimetres", "en-GB");
  expect(text).toMatch(
    /^ {2}3\sm {2}Flax braid \(One, tie-back 1\.3\sm; Two, tie-back 1\.3\sm\)$/m,
  );
  expect(text).toMatch(
    /Flax braid, to buy: 2\.6\sm for all that is trimmed with it → 3\sm \(up to 1\sm\)/,
  );
  expect(quantitiesJson(found)).toMatchObject({
    trims: [
      {
        cloth: "braid",
        needMm: 2600,
        buy: { amount: 3, unit: "metre", lengthMm: 3000, waits: [] },
        uses: [
          { room: "a", lengthMm: 1300 },
          { room: "b", lengthMm: 1300 },
        ],
      },
    ],
  });
});

// 2 x (24 in + 2 in) = 52 in = 1.44 yd, up to 1 1/2 yd sewn on; sold by the yard 2 yd.
test("in yards", () => {
  const found = quantitiesOf({
    studio: STUDIO_INCHES,
    cloths: {
      plain: 'cloth: Oat\nwidth: 54"\nkind: plain\nruns: any-way',
      braid: "cloth: Flax braid\ntype: trim\nprice: { trade: 7, per: yard, sold-by: 1 yd }",
    },
    rooms: {
      a: `room: A\nitems:\n  - { tieback: One, cloth: plain, count: 2, shape: straight, length: 24", depth: 4", trim: braid }`,
    },
  });
  expect(found.trims.map(({ buy }) => buy.text)).toEqual(["2\u202fyd"]);
});
