import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { unitsBought } from "../../src/money/clothPrice.ts";
import { Length } from "../../src/units/length.ts";
import { lineOf, PLAIN, priced, small } from "./pricedStudio.ts";

// What is bought against what it is priced by. A yard is 0.9144 m exactly (international yard and pound agreement of 1959).

const length = (l: Length) => ({ length: l });
const count = (n: number) => ({ count: new Fraction(n) });

test.each([
  ["a length by the yard", length(Length.mm(4572)), "yard", null, "5"],
  ["a length by the metre", length(Length.yards(10)), "metre", null, "9.144"],
  ["a length in whole rolls, up", length(Length.yards(12)), "roll", Length.yards(11), "2"],
  ["rolls by the roll", count(8), "roll", Length.yards(11), "8"],
  ["rolls by the yard", count(8), "yard", Length.yards(11), "88"],
  ["rolls by the metre", count(3), "metre", Length.mm(10_050), "30.15"],
  ["pieces", count(4), "each", null, "4"],
] as const)("%s", (_, amount, per, roll, units) => {
  expect(unitsBought(amount, per, roll)?.equals(new Fraction(units))).toBe(true);
});

test.each([
  ["a length priced each", length(Length.yards(3)), "each", null],
  ["a length by a roll of unknown length", length(Length.yards(3)), "roll", null],
  ["rolls of unknown length by the yard", count(3), "yard", null],
] as const)("cannot be reckoned: %s", (_, amount, per, roll) => {
  expect(unitsBought(amount, per, roll)).toBeNull();
});

test("a price by the metre is of metres, whatever the studio measures in", () => {
  const money = priced(small({ cloths: { plain: PLAIN.replace("per: yard", "per: metre") } }));
  // 21 in is 0.5334 m, bought as 0.6 m by the tenth: 6.00 trade.
  expect(lineOf(money, "cloth")?.trade.minor).toBe(600n);
});

test("a price for another unit leaves the line open and says so at its place; nothing is charged by guess", () => {
  const money = priced(small({ cloths: { plain: PLAIN.replace("per: yard", "per: each") } }));
  expect(lineOf(money, "cloth")).toMatchObject({ open: true, trade: { minor: 0n } });
  expect(money.diagnostics).toMatchObject([
    {
      code: "price-for-another-unit",
      severity: "warning",
      file: "cloths/plain.md",
      line: 5,
      actual: "per: each",
    },
  ]);
});

const PAPER = (per: string) =>
  `cloth: Paper\ntype: wallcovering\nkind: plain\nroll: { width: 20 1/2", length: 11 yd }\nprice: { trade: 4, per: ${per} }`;
const PAPERED = `room: Den\nheight: 8'\nfloor: 10' x 10'\nitems:\n  - wallpaper: Walls\n    on: walls\n    cloth: paper\n    maker: bench\n`;

test("paper by the roll and by the yard: one roll is eleven yards of it", () => {
  const of = (per: string) =>
    lineOf(
      priced(small({ cloths: { paper: PAPER(per) }, rooms: { den: PAPERED } })),
      "wallcovering",
    );
  const byRoll = of("roll");
  const rolls = Number(byRoll?.trade.minor) / 400;
  // 40 ft of wall in strips of 20 1/2 in: 24 strips, three or four of them a roll, and a spare roll or none.
  expect(rolls).toBeGreaterThanOrEqual(6);
  expect(Number.isInteger(rolls)).toBe(true);
  expect(of("yard")?.trade.minor).toBe((byRoll?.trade.minor ?? 0n) * 11n);
});
