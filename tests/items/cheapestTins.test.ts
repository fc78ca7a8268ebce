import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { paintAllowances } from "../../src/items/paint/allowances.ts";
import { cheapestTins, type PricedTin } from "../../src/items/paint/cheapestTins.ts";
import { makePaint } from "../../src/items/paint/pieces.ts";
import { paintSchema } from "../../src/items/paint/schema.ts";
import type { TinCount } from "../../src/items/paint/tins.ts";
import { parseTin, type Tin } from "../../src/items/paint/volume.ts";
import { type ContextAsk, contextFor, fieldsOf, wallRun } from "./tradeContext.ts";

// Checked against every possible choice, counted out one by one: no published source is needed. Prices are made up.

const said = (tins: readonly TinCount[]) =>
  tins.map((t) => `${t.count} x ${t.tin.text}`).join(" + ");
/** A wall 10 m long and as many tenths of a metre high as give the litres, at 10 m2 a litre, one coat. */
const bought = (litres: number, more: Record<string, unknown>, ask: Partial<ContextAsk> = {}) => {
  const fields = {
    paint: "Walls",
    on: "walls",
    colour: "#efe3c8",
    coats: "1",
    coverage: "10 m2/l",
  };
  const made = makePaint(
    fieldsOf(paintSchema, { ...fields, ...more }),
    contextFor(paintAllowances, {
      units: "centimetres",
      runs: [wallRun("1000 cm", `${Math.round(litres * 100)} cm`)],
      ...ask,
    }),
  );
  expect(made.litres?.valueOf()).toBe(litres);
  return said(made.tins);
};

test("9.18 l in tins of 2.5 l and 1 l at a price for the litre: 9.5 l are bought, and not 10", () => {
  const tins = ["2.5 l", "1 l"];
  expect(bought(9.18, { tins, price: "18.14 per litre" })).toBe("3 x 2.5 l + 2 x 1 l");
  // At any price for the tin the fewest tins cost least.
  expect(bought(9.18, { tins, price: "40 per tin" })).toBe("4 x 2.5 l");
  // Without a price as before: of the small size never as many as cost about a large one.
  expect(bought(9.18, { tins })).toBe("4 x 2.5 l");
});

test("sizes priced apart: what they cost decides, and not what they hold", () => {
  const tins = ["1 gal", "1 qt"];
  // 6 l are 1.585 gal: one gallon and three quarts, or two gallons.
  expect(bought(6, { tins, price: ["58 per gallon", "22 per quart"] })).toBe("2 x 1 gal");
  expect(bought(6, { tins, price: ["58 per gallon", "16 per quart"] })).toBe(
    "1 x 1 gal + 3 x 1 qt",
  );
  expect(bought(6, { tins, price: ["58 per gallon", "8 per quart"] })).toBe("7 x 1 qt");
  // What a quart costs is not known from a gallon's price: the least over, within the trade's rule.
  expect(bought(6, { tins, price: "58 per gallon" })).toBe("2 x 1 gal");
});

test("the item's own price goes before the studio's", () => {
  const price = (decimal: string, per: "litre" | "tin") => [{ decimal, mark: null, per }];
  const paint = { coverage: null, tins: ["2.5 l", "1 l"], price: price("18.14", "litre") };
  expect(bought(9.18, {}, { paint })).toBe("3 x 2.5 l + 2 x 1 l");
  expect(bought(9.18, { price: "40 per tin" }, { paint })).toBe("4 x 2.5 l");
});

/** Price, tins and litres of a choice; each goes before the next. */
type Rank = readonly [Fraction, number, Fraction];
const less = (a: Rank, b: Rank): boolean =>
  !a[0].equals(b[0])
    ? a[0].compare(b[0]) < 0
    : a[1] !== b[1]
      ? a[1] < b[1]
      : a[2].compare(b[2]) < 0;
const rankOf = (all: readonly { readonly size: PricedTin; readonly count: number }[]): Rank => [
  all.reduce((sum, { size, count }) => sum.add(size.price.mul(count)), new Fraction(0)),
  all.reduce((sum, { count }) => sum + count, 0),
  all.reduce((sum, { size, count }) => sum.add(size.tin.litres.mul(count)), new Fraction(0)),
];

/** The best of every choice in which no size is bought oftener than it would have to be by itself. */
function bestOfAll(litres: Fraction, sizes: readonly PricedTin[]): Rank {
  let best: Rank | null = null;
  const visit = (counts: readonly number[]): void => {
    const size = sizes[counts.length];
    if (!size) {
      const rank = rankOf(counts.map((count, at) => ({ size: sizes[at] as PricedTin, count })));
      if (rank[2].compare(litres) >= 0 && (best === null || less(rank, best))) best = rank;
      return;
    }
    const most = Number(litres.div(size.tin.litres).ceil().valueOf());
    for (let n = 0; n <= most; n += 1) visit([...counts, n]);
  };
  visit([]);
  return best as unknown as Rank;
}

test("no choice of tins costs less; of equal price none has fewer tins, and of as many none leaves less over", () => {
  const sizes = ["5 l", "2.5 l", "1 l", "750 ml", "1 gal", "1 qt", "1 imperial gallon"];
  const price = fc.oneof(
    // By the litre: every size costs the same for what it holds.
    fc.integer({ min: 0, max: 3000 }).map((cents) => (tin: Tin) => tin.litres.mul(cents)),
    fc.constant(() => new Fraction(45)),
    fc
      .array(fc.integer({ min: 100, max: 9000 }), { minLength: 7, maxLength: 7 })
      .map((cents) => (tin: Tin) => new Fraction(cents[sizes.indexOf(tin.text)] as number, 100)),
  );
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1200 }),
      fc.subarray(sizes, { minLength: 1, maxLength: 3 }),
      price,
      (hundredths, names, priceOf) => {
        const litres = new Fraction(hundredths, 100);
        const priced = names.map((name): PricedTin => {
          const tin = parseTin(name) as Tin;
          return { tin, price: priceOf(tin) };
        });
        const found = cheapestTins(litres, priced).map(({ tin, count }) => ({
          size: priced.find((p) => p.tin === tin) as PricedTin,
          count,
        }));
        const [mine, best] = [rankOf(found), bestOfAll(litres, priced)];
        expect(mine.map((v) => v.valueOf())).toEqual(best.map((v) => v.valueOf()));
      },
    ),
    { numRuns: 150 },
  );
});

test("a great house is reckoned too, though its tins can be put together in very many ways", () => {
  const priced = ["10 l", "5 l", "2.5 l", "1 l", "750 ml", "1 imperial gallon"].map((name) => {
    const tin = parseTin(name) as Tin;
    return { tin, price: tin.litres.mul("18.14") };
  });
  const tins = cheapestTins(new Fraction("812.37"), priced);
  const held = tins.reduce((sum, t) => sum.add(t.tin.litres.mul(t.count)), new Fraction(0));
  expect(held.compare("812.37")).toBeGreaterThanOrEqual(0);
  expect(cheapestTins(new Fraction(0), priced)).toEqual([]);
});
