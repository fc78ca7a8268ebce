import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { paintSum } from "../../src/money/paintSum.ts";
import type { PaintTins } from "../../src/money/purchase.ts";
import { money } from "../../src/units/money.ts";
import { recordsOf } from "../quantities/studioOf.ts";
import { lineOf, priced, STUDIO, small } from "./pricedStudio.ts";

// Four quarts are a gallon, and a US gallon is 3.785411784 l (NIST Handbook 44, appendix C).

const tin = (tins: number, amount: number, unit: PaintTins["unit"]): PaintTins => ({
  tins,
  amount: new Fraction(amount),
  unit,
});
const usd = (minor: number) => money(minor, "USD");
const sum = (tins: PaintTins[], ...prices: [PaintPer, number][]) =>
  paintSum(
    tins,
    prices.map(([per, minor]) => ({ per, sum: usd(minor) })),
    "USD",
  )?.minor;
type PaintPer = PaintTins["unit"] | "tin";

test("each size by the price in its own unit, else by volume", () => {
  const bought = [tin(2, 2, "gallon"), tin(1, 1, "quart")];
  expect(sum(bought, ["gallon", 5800], ["quart", 2200])).toBe(13_800n);
  expect(sum(bought, ["quart", 2200], ["gallon", 5800])).toBe(13_800n);
  expect(sum(bought, ["gallon", 5800])).toBe(13_050n);
  expect(sum([tin(1, 1, "quart")], ["gallon", 5800])).toBe(1450n);
  // 3.785411784 l at 10.00, to the nearest cent.
  expect(sum([tin(1, 1, "gallon")], ["litre", 1000])).toBe(3785n);
  expect(sum([tin(2, 5, "litre")], ["litre", 2400])).toBe(12_000n);
});

test("by the tin: as many prices as tins, whatever they hold", () => {
  expect(sum([tin(3, 7.5, "litre")], ["tin", 4500])).toBe(13_500n);
  expect(sum([tin(2, 10, "litre"), tin(1, 2.5, "litre")], ["tin", 4500])).toBe(13_500n);
});

// Paint in litres is priced by the size of its tin, a larger one cheaper for what it holds (common practice, no source).
test("tins of each size at their own price, and the cheapest that hold enough", () => {
  const litres = PAINTED.replace("height: 8'", "height: 240 cm")
    .replace("floor: 10' x 10'", "floor: 300 cm x 300 cm")
    .replace("400 sq ft/gal", "12 m2/l")
    .replace("[1 gal, 1 qt]", "[1 l, 2.5 l, 5 l]");
  // 12 m by 2.4 m, two coats at 12 m2 a litre: 4.8 l. 5 l at 91 cost less than 2 × 2.5 l at 52, or five tins of 1 l at 24.10.
  const tins = "[24.10 per 1 l, 52 per 2.5 l, 91 per 5 l tin]";
  expect(lineOf(priced(house(tins, litres)), "paint")?.trade.minor).toBe(9100n);
  const dear = "[24.10 per l, 52,00 per 2500 ml, 120 per 5 litres]".replace("52,00", "52");
  expect(lineOf(priced(house(dear, litres)), "paint")?.trade.minor).toBe(10_400n);
  // A size without a price of its own is charged by what the first priced size holds.
  expect(
    lineOf(priced(house("50 per 2.5 l", litres.replace("1 l, 2.5 l, 5 l", "5 l"))), "paint")?.trade
      .minor,
  ).toBe(10_000n);
});

test("no price, no sum", () => {
  expect(sum([tin(1, 1, "quart")])).toBeUndefined();
});

const PAINTED = `room: Den\nheight: 8'\nfloor: 10' x 10'\nitems:\n  - paint: Walls\n    on: walls\n    colour: "#ddeedd"\n    coats: 2\n    coverage: 400 sq ft/gal\n    tins: [1 gal, 1 qt]\n    making: 50\n`;
const house = (price: string, room = PAINTED) =>
  small({
    studio: `${STUDIO.replace("cloth: 2,", "cloth: 2, paint: 1.5,")}\npaint: { price: ${price} }`,
    cloths: {},
    rooms: { den: room },
  });

test("walls of 320 sq ft, two coats at 400 sq ft a gallon: 1.6 gallons, bought as two gallons or less", () => {
  // 1 gallon and 3 quarts would hold 1.75, but three quarts cost about a gallon: two gallons.
  const line = lineOf(priced(house("58 per gallon")), "paint");
  expect(line).toMatchObject({
    trade: { minor: 11_600n },
    client: { minor: 17_400n },
    open: false,
  });
});

test("a small job in quarts is not charged by the gallon", () => {
  const little = PAINTED.replace(
    "floor: 10' x 10'",
    `floor: 10' x 10'\nwalls:\n  - { wall: north, length: 10' }\n  - { wall: east, length: 10' }\n  - { wall: south, length: 10' }\n  - { wall: west, length: 10' }`,
  )
    .replace("on: walls", "on: [north]")
    .replace("coats: 2", "coats: 1");
  // 80 sq ft at 400 a gallon: a fifth of a gallon, one quart.
  expect(lineOf(priced(house("58 per gallon", little)), "paint")?.trade.minor).toBe(1450n);
  expect(lineOf(priced(house("[58 per gallon, 22 per quart]", little)), "paint")?.trade.minor).toBe(
    2200n,
  );
});

test("the item's own price stands before the studio's; without any the line stands open", () => {
  const own = PAINTED.replace("making: 50", "making: 50\n    price: 40 per gallon");
  expect(lineOf(priced(house("58 per gallon", own)), "paint")?.trade.minor).toBe(8000n);
  const none = small({ cloths: {}, rooms: { den: PAINTED } });
  expect(lineOf(priced(none), "paint")).toMatchObject({ open: true, trade: { minor: 0n } });
});

test.each([
  ["58", "paint-price-for-what", /58 is the price of what/],
  ["58 per item", "paint-price-for-what", /“per item”/],
  ["[58 per gallon, 22]", "paint-price-for-what", /22 is the price of what/],
  ["58 per 0 l", "paint-price-for-what", /“per 0 l”/],
  ["dear", "paint-price-unreadable", /“dear”/],
])("a price of paint that says too little: %s", (price, code, words) => {
  const { diagnostics } = recordsOf(house(price));
  expect(diagnostics.map((d) => d.code)).toEqual([code]);
  expect(diagnostics[0]?.message).toMatch(words);
  expect(diagnostics[0]?.file).toBe("studio.md");
  expect(diagnostics[0]?.hint).toContain("per");
});
