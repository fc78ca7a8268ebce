import Big from "big.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { boltChoice } from "../../src/money/bolt.ts";
import { moneyText } from "../../src/money/moneyText.ts";
import { moneyJson } from "../../src/money/toJson.ts";
import { Length } from "../../src/units/length.ts";
import { money } from "../../src/units/money.ts";
import { PROJECT, STUDIO_CM, STUDIO_INCHES } from "../quantities/studioOf.ts";
import { clientOf, pricedOf, tradeOf } from "./priced.ts";

// Price breaks at a full bolt: common practice, no source. Sums by hand, and against big.js.

const YARD = Length.yards(1);

test("24 yd at 38.00 is 912.00; a bolt of 30 yd at 29.00 is 870.00, leaves 6 yd, and pays from 22.89 yd", () => {
  const choice = boltChoice(
    Length.yards(24),
    money(3800, "USD"),
    { length: Length.yards(30), price: money(2900, "USD") },
    YARD,
  );
  expect(choice).toMatchObject({
    cut: { minor: 91_200n },
    bolts: { minor: 87_000n },
    boltCount: 1,
    saves: { minor: 4200n },
    worth: true,
  });
  expect(choice.over.over(YARD).toFraction()).toBe("6");
  // 30 x 29 / 38, exactly.
  expect(choice.breakEven.over(YARD).toFraction()).toBe("435/19");
});

test("against a decimal library: cut and bolt prices, and the break-even divides them", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 400 }),
      fc.integer({ min: 1, max: 20_000 }),
      fc.integer({ min: 1, max: 20_000 }),
      fc.integer({ min: 5, max: 60 }),
      (quarters, cutPrice, boltPrice, length) => {
        const need = Length.yards(quarters).times("0.25");
        const choice = boltChoice(
          need,
          money(cutPrice, "USD"),
          { length: Length.yards(length), price: money(boltPrice, "USD") },
          YARD,
        );
        const cut = new Big(cutPrice).times(quarters).div(4).round(0, Big.roundHalfUp);
        const bolts = new Big(Math.ceil(quarters / 4 / length)).times(length).times(boltPrice);
        expect(choice.cut.minor.toString()).toBe(cut.toFixed(0));
        expect(choice.bolts.minor.toString()).toBe(bolts.toFixed(0));
        expect(choice.worth).toBe(bolts.lt(cut));
        expect(choice.over.over(YARD).compare(0) >= 0).toBe(true);
        // Within one bolt, clearly beyond the break-even the bolt costs no more, clearly before it no less.
        if (choice.boltCount === 1) {
          const past = need.mm.sub(choice.breakEven.mm).mul(cutPrice).div("914.4");
          if (past.compare(1) > 0) expect(choice.bolts.minor <= choice.cut.minor).toBe(true);
          if (past.compare(-1) < 0) expect(choice.bolts.minor >= choice.cut.minor).toBe(true);
        }
      },
    ),
    { numRuns: process.env.SOAK ? 5000 : 300, seed: 7 },
  );
});

const CLOTH = `cloth: Plain\nwidth: 54"\nkind: plain\nprice: { trade: 40, client: 90, per: yard, bolt: { length: 10 yd, trade: 20 } }`;
const CUSHIONS = `room: Den\nitems:\n  - cushion: Many\n    cloth: plain\n    size: 20" x 20"\n    edge: knife\n    count: 20\n    making: 1\n`;
const small = (project = PROJECT) => ({
  studio: STUDIO_INCHES,
  project,
  cloths: { plain: CLOTH },
  rooms: { den: CUSHIONS },
});

test("a project that buys by the bolt pays for its bolts; the client pays for what is used", () => {
  const cut = pricedOf(small()).money;
  const need = cut.bolts[0]?.need.over(YARD).valueOf() ?? 0;
  expect(need).toBeGreaterThan(5);
  expect(tradeOf(cut, "cloth")).toEqual([Math.round(need * 4000)]);
  expect(cut.bolts[0]).toMatchObject({ cloth: "plain", taken: false, worth: true });
  const bolts = pricedOf(small(`${PROJECT}\nby-the-bolt: [plain]`)).money;
  const count = bolts.bolts[0]?.boltCount ?? 0;
  expect(tradeOf(bolts, "cloth")).toEqual([count * 20_000]);
  expect(clientOf(bolts, "cloth")).toEqual(clientOf(cut, "cloth"));
  expect(moneyText(bolts, null)).toMatch(
    /whole bolts? .* A bolt pays from 5.*yd\. Bought by the bolt\./,
  );
  expect(moneyJson(bolts).bolts[0]).toMatchObject({ taken: true, bolts: count });
});

test("a cloth that is sold in whole bolts alone costs the bolt's price, though no project asks for it", () => {
  const sold = pricedOf({
    ...small(),
    cloths: { plain: CLOTH.replace("per: yard", "per: yard, sold-by: bolt") },
  }).money;
  const count = sold.bolts[0]?.boltCount ?? 0;
  expect(count).toBeGreaterThan(0);
  // 10 yd at 20.00 a bolt for the studio; the client pays 90.00 for each yard of them.
  expect(tradeOf(sold, "cloth")).toEqual([count * 20_000]);
  expect(clientOf(sold, "cloth")).toEqual([count * 90_000]);
  // The sentence says what is charged, and holds no cut price that nobody can buy at.
  const [said, ...more] = moneyText(sold, null)
    .split("\n")
    .filter((line) => /bolt/i.test(line));
  expect(more).toEqual([]);
  expect(said?.replace(/[\u00a0\u202f]/g, " ")).toBe(
    count === 1
      ? "Plain is sold in whole bolts alone: one whole bolt, 10 yd in all, costs $200.00."
      : `Plain is sold in whole bolts alone: ${count} whole bolts, ${10 * count} yd in all, cost $${200 * count}.00.`,
  );
});

test("a cloth without a bolt's price cannot be bought by the bolt: a warning at its line", () => {
  const { money: none } = pricedOf({
    ...small(`${PROJECT}\nby-the-bolt: [plain]`),
    cloths: { plain: CLOTH.replace(/, bolt.*\} \}/, " }") },
  });
  expect(none.diagnostics.map((d) => [d.code, d.severity, d.line, d.keyPath])).toEqual([
    ["bolt-unknown", "warning", 5, "by-the-bolt[0]"],
  ]);
});

test("a minimum cut is paid for whole", () => {
  const one = `room: Den\nitems:\n  - cushion: One\n    cloth: plain\n    size: 20" x 20"\n    edge: knife\n    making: 1\n`;
  const priced = (more: string) =>
    pricedOf({
      ...small(),
      rooms: { den: one },
      cloths: {
        plain: `cloth: Plain\nwidth: 54"\nkind: plain\nprice: { trade: 40, per: yard${more} }`,
      },
    }).money;
  expect(tradeOf(priced(""), "cloth")).toEqual([3000]);
  expect(tradeOf(priced(", minimum: 3 yd"), "cloth")).toEqual([12_000]);
});

// Cushions of 60 x 103 and 60 x 60 cm, faces 3 cm longer and wider, two beside each other: 1.06 m for one maker, 0.63 m for the other.
const TWO_MAKERS = (price: string, project = PROJECT, more = "") => ({
  studio: `${STUDIO_CM}\nmarkup: { cloth: 2 }\nallowances: { cushion: { seam: 1.5 cm } }\nmakers:\n  bench: { name: Bench, makes: [cushion] }\n  frame: { name: Frame, makes: [cushion] }\n  loom: { name: Loom, makes: [cushion] }`,
  project,
  cloths: {
    plain: `cloth: Plain\nwidth: 140 cm\nkind: plain\nprice: { trade: 20, per: metre${price} }`,
  },
  rooms: {
    den: `room: Den\nitems:\n  - { cushion: Long, cloth: plain, size: 60 cm x 103 cm, edge: knife, closure: sewn, making: 1, maker: bench }`,
    snug: `room: Snug\nitems:\n  - { cushion: Short, cloth: plain, size: 60 cm x 60 cm, edge: knife, closure: sewn, making: 1, maker: frame }${more}`,
  },
});

test("two makers pay for one bolt of 30 m, by the length that each gets, and the parts add up to the cent", () => {
  const { money } = pricedOf(TWO_MAKERS(", bolt: { length: 30 m, trade: 15 }, sold-by: bolt"));
  // 30 x 15.00 = 450.00, of which 106 parts in 169 and 63: 282.249 and 167.751.
  expect(tradeOf(money, "cloth")).toEqual([28_225, 16_775]);
  // 30 x 40.00 = 1200.00: 752.6627 and 447.3373; the cent that is left goes to the larger remainder, .73 of a cent.
  expect(clientOf(money, "cloth")).toEqual([75_266, 44_734]);
  expect(money.lines.filter((l) => l.what === "cloth").map((l) => l.room)).toEqual(["den", "snug"]);
  expect(money.bolts[0]).toMatchObject({ boltCount: 1, soldWhole: true });
  const words = {
    language: "en-GB",
    units: "centimetres" as const,
    item: () => "",
    room: () => "",
    maker: (maker: string) => maker,
  };
  const text = moneyText(money, null, words);
  expect(text).toMatch(/one whole bolt, 30\sm in all, costs €450\.00\. Divided/);
  expect(text).toContain("Divided: 1.06\u202fm to bench, 0.63\u202fm to frame; 28.31\u202fm over.");
  expect(moneyJson(money).bolts[0]?.divided).toEqual([
    [
      { maker: "bench", lengthMm: 1060 },
      { maker: "frame", lengthMm: 630 },
    ],
  ]);
});

test("two makers share one minimum of 2 m, by the lengths that are cut off for them: 1.1 and 0.7 m", () => {
  const { money } = pricedOf(TWO_MAKERS(", minimum: 2 m"));
  // 40.00 of which 11 parts in 18 and 7: 24.444 and 15.556; for the client twice that.
  expect(tradeOf(money, "cloth")).toEqual([2444, 1556]);
  expect(clientOf(money, "cloth")).toEqual([4889, 3111]);
});

test("bolts that the project asks for are as many as hold every maker's length whole", () => {
  const third =
    "\n  - { cushion: Other, cloth: plain, size: 60 cm x 60 cm, edge: knife, closure: sewn, making: 1, maker: loom }";
  const asked = `${PROJECT}\nby-the-bolt: [plain]`;
  const bolts = (length: string) =>
    pricedOf(TWO_MAKERS(`, bolt: { length: ${length}, trade: 15 }`, asked, third)).money.bolts[0];
  // 1.1, 0.7 and 0.7 m: 2.5 m, which two bolts of 1.3 m exceed, but a bolt holds one length alone.
  expect(bolts("1.3 m")).toMatchObject({ boltCount: 3, bolts: { minor: 5850n } });
  expect(bolts("1.4 m")).toMatchObject({ boltCount: 2, bolts: { minor: 4200n } });
});
