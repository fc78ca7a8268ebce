import { expect, test } from "vitest";
import { roomQuantities } from "../../src/quantities/projectQuantities.ts";
import { quantitiesText } from "../../src/quantities/text/quantitiesText.ts";
import { quantitiesJson } from "../../src/quantities/text/toJson.ts";
import { PROJECT, quantitiesOf, STUDIO_CM } from "./studioOf.ts";

// One order for several makers, divided where it arrives: common practice, no source. Worked by hand: a face is cut 3 cm longer and wider
// than it is made, and two faces of 63 cm lie side by side on 140 cm. So a cushion of 60 x 103 cm takes 1.06 m, one of 60 x 60 cm 0.63 m.

const STUDIO = `${STUDIO_CM}
allowances: { cushion: { seam: 1.5 cm } }
makers:
  bench: { name: Bench, makes: [cushion] }
  frame: { name: Frame, makes: [cushion] }
  loom: { name: Loom, makes: [cushion] }`;

const cushion = (name: string, maker: string, size: string, more = "") =>
  `  - { cushion: ${name}, cloth: plain, size: ${size}, edge: knife, closure: sewn, maker: ${maker}${more} }`;
const LONG = cushion("Long", "bench", "60 cm x 103 cm");
const SHORT = cushion("Short", "frame", "60 cm x 60 cm");

const M = "width: 140 cm\nkind: plain\nprice: { trade: 20, per: metre";

function boughtOf(card: string, items: readonly string[], project = PROJECT) {
  return quantitiesOf({
    studio: STUDIO,
    project,
    cloths: { plain: `cloth: Plain\n${card}` },
    rooms: { den: `room: Den\nitems:\n${items.join("\n")}` },
  });
}

interface Json {
  readonly cloths: readonly {
    readonly maker: string;
    readonly buy: { readonly lengthMm: number; readonly together: boolean };
    readonly plan: { readonly lengthMm: number };
  }[];
  readonly together: readonly {
    readonly buy: { readonly lengthMm: number; readonly text: string };
    readonly parts: readonly { readonly maker: string; readonly lengthMm: number }[];
    readonly bolts: { readonly count: number; readonly cut: readonly unknown[] } | null;
    readonly separatelyMm: number;
    readonly text: string;
  }[];
}

const json = (...ask: Parameters<typeof boughtOf>) =>
  quantitiesJson(boughtOf(...ask)) as unknown as Json;
const BOLT = (length: string) => `${M}, bolt: { length: ${length}, trade: 15 }, sold-by: bolt }`;

test("1.06 m and 0.63 m of a cloth sold in whole bolts of 30 m are one bolt, and it is said how it is divided", () => {
  const found = json(BOLT("30 m"), [LONG, SHORT]);
  expect(found.together).toEqual([
    {
      cloth: "plain",
      buy: { amount: 30, unit: "metre", text: "30\u202fm", lengthMm: 30_000 },
      parts: [
        { maker: "bench", lengthMm: 1060 },
        { maker: "frame", lengthMm: 630 },
      ],
      bolts: {
        lengthMm: 30_000,
        count: 1,
        cut: [
          [
            { maker: "bench", lengthMm: 1060 },
            { maker: "frame", lengthMm: 630 },
          ],
        ],
      },
      separatelyMm: 60_000,
      text: "one whole bolt of 30\u202fm: 1.06\u202fm to bench, 0.63\u202fm to frame; 28.31\u202fm over",
    },
  ]);
  expect(found.cloths.map((c) => [c.maker, c.buy.lengthMm, c.buy.together])).toEqual([
    ["bench", 1060, true],
    ["frame", 630, true],
  ]);
  const text = quantitiesText(boughtOf(BOLT("30 m"), [LONG, SHORT]), "centimetres", "en-GB");
  expect(
    text.match(/^ {2}30\u202fm {2}Plain, one order for all makers: one whole bolt/gm),
  ).toHaveLength(1);
  expect(text).toContain("1.06\u202fm (cut off as needed; its part of one order for all makers");
});

// 1.06 + 0.63 = 1.69 m.
test.each([
  ["1.68 m", 0, [1680, 1680]],
  ["1.69 m", 1, [1060, 630]],
])("bolts of %s: %d order for both", (length, orders, each) => {
  const found = json(BOLT(length), [LONG, SHORT]);
  expect(found.together).toHaveLength(orders);
  expect(found.cloths.map((c) => c.buy.lengthMm)).toEqual(each);
});

test("three makers' lengths of 1.06, 0.63 and 1.06 m come from two bolts of 2 m, none of them split", () => {
  const third = cushion("Third", "loom", "60 cm x 103 cm");
  const [shared] = json(BOLT("2 m"), [LONG, SHORT, third]).together;
  // 2.75 m together; each maker by itself would take a bolt.
  expect(shared).toMatchObject({
    buy: { lengthMm: 4000 },
    bolts: { count: 2 },
    separatelyMm: 6000,
  });
  expect(shared?.text).toBe(
    "2 whole bolts of 2\u202fm: bolt 1, 1.06\u202fm to bench, 0.63\u202fm to frame; bolt 2, 1.06\u202fm to loom; 1.25\u202fm over",
  );
  // 3.18 m are less than two bolts of 1.69 m, but no bolt holds two of 1.06 m: three bolts, as each maker by itself.
  const longs = [LONG, cushion("Second", "frame", "60 cm x 103 cm"), third];
  expect(json(BOLT("1.69 m"), longs).together).toEqual([]);
});

// A plan of 64 cm and a repeat of 64 cm to spare since its pattern may begin anywhere: 1.28 m a maker.
test.each([
  ["2.55 m", 0],
  ["2.56 m", 1],
])("each maker's length has its own spare: on bolts of %s", (length, orders) => {
  const card = `width: 140 cm\nrepeat: { up: 64 cm, match: straight }\nprice: { trade: 20, per: metre, bolt: { length: ${length}, trade: 15 }, sold-by: bolt }`;
  const items = ["bench", "frame"].map((maker) => cushion(maker, maker, "61 cm x 61 cm"));
  expect(json(card, items).together).toHaveLength(orders);
});

// Each is cut off for itself, up to a tenth: 1.1 and 0.7 m.
test.each([
  ["2 m", 2000, 4000],
  ["1.8 m", 1800, 3600],
  ["12 m", 12_000, 24_000],
])("a minimum of %s counts once: %d mm are bought instead of %d", (least, once, apart) => {
  const [shared] = json(`${M}, minimum: ${least} }`, [LONG, SHORT]).together;
  expect(shared).toMatchObject({
    buy: { lengthMm: once },
    separatelyMm: apart,
    parts: [{ lengthMm: 1100 }, { lengthMm: 700 }],
    bolts: null,
  });
  expect(shared?.text).toMatch(/1\.1\u202fm to bench, 0\.7\u202fm to frame/);
});

test("a minimum that the step already reaches changes nothing: 0.63 m and 0.65 m are both 0.7 m", () => {
  expect(json(`${M}, minimum: 0.65 m }`, [LONG, SHORT]).together).toEqual([]);
});

test("a step rounds each maker's length as it is cut, with or without one order", () => {
  const step = json(`${M}, sold-by: 0.5 m }`, [LONG, SHORT]);
  expect(step.together).toEqual([]);
  expect(step.cloths.map((c) => c.buy.lengthMm)).toEqual([1500, 1000]);
  const least = json(`${M}, sold-by: 0.5 m, minimum: 2 m }`, [LONG, SHORT]);
  expect(least.together).toMatchObject([
    {
      buy: { lengthMm: 2500 },
      parts: [{ lengthMm: 1500 }, { lengthMm: 1000 }],
      separatelyMm: 4000,
    },
  ]);
});

test("a minimum of more than a bolt is whole bolts of it", () => {
  const card = `${M}, bolt: { length: 2 m, trade: 15 }, sold-by: bolt, minimum: 5 m }`;
  const [shared] = json(card, [LONG, SHORT]).together;
  expect(shared).toMatchObject({
    buy: { lengthMm: 6000 },
    bolts: { count: 3 },
    separatelyMm: 12_000,
  });
});

test("the client's own cloth is no part of the order", () => {
  const own = cushion("Own", "loom", "60 cm x 60 cm", ", owner: client");
  const found = json(BOLT("30 m"), [LONG, SHORT, own]);
  expect(found.together[0]?.parts.map((part) => part.maker)).toEqual(["bench", "frame"]);
  expect(json(BOLT("30 m"), [LONG, own]).together).toEqual([]);
});

test("a room shows the project's order", () => {
  const small = {
    studio: STUDIO,
    cloths: { plain: `cloth: Plain\n${BOLT("30 m")}` },
    rooms: { den: `room: Den\nitems:\n${LONG}`, snug: `room: Snug\nitems:\n${SHORT}` },
  };
  const whole = quantitiesOf(small);
  const den = roomQuantities(whole, "den");
  expect(den.together).toEqual(whole.together);
  expect(den.cloths.map((c) => c.maker)).toEqual(["bench"]);
  expect(quantitiesText(den, "centimetres", "en-GB")).toContain("0.63\u202fm to frame");
});

test("one bolt ordered is enough for both makers, and a length that is short of it is not", () => {
  const told = (length: string) =>
    boughtOf(
      BOLT("30 m"),
      [LONG, SHORT],
      `${PROJECT}\norders: [{ cloth: plain, length: ${length}, on: 2026-12-03 }]`,
    ).diagnostics.filter((d) => d.code === "ordered-too-little");
  expect(told("30 m")).toEqual([]);
  expect(told("29 m")[0]?.message).toMatch(/29\u202fm was ordered; 30\u202fm is needed/);
});

test("one bolt is one lot: receipts that name two are said at the second", () => {
  const told = (lot: string) =>
    boughtOf(
      BOLT("30 m"),
      [LONG, SHORT],
      `${PROJECT}
receipts:
  - { cloth: plain, maker: bench, lot: A1, length: 1.1 m, on: 2026-12-10 }
  - { cloth: plain, maker: frame, lot: ${lot}, length: 0.7 m, on: 2026-12-10 }`,
    ).diagnostics.filter((d) => d.code === "bolt-in-two-lots");
  expect(told("A1")).toEqual([]);
  expect(told("B2").map((d) => [d.severity, d.line, d.keyPath, d.actual])).toEqual([
    ["warning", 7, "receipts[1].lot", "B2"],
  ]);
});
