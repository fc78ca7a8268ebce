import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { type SentLine, withFreight } from "../../src/money/freight.ts";
import type { StudioRecord } from "../../src/records/records.ts";
import { money, sumMoney, timesMoney } from "../../src/units/money.ts";

// Freight once on the order as a whole, its lines making it to the last cent: common practice, no source; sums by hand.

const studio = {
  fields: {
    markup: { freight: new Fraction("1.2") },
    freight: { cloth: new Fraction("0.1") },
    suppliers: {
      mill: { freight: new Fraction("0.035") },
      shed: {},
      near: { freight: new Fraction(0) },
    },
  },
} as unknown as StudioRecord;

const goods = (item: string, cents: number, supplier?: string, byLength = true): SentLine => ({
  room: "den",
  item,
  what: "cloth",
  label: item,
  cloth: item,
  maker: null,
  phase: 2,
  trade: money(cents, "USD"),
  client: money(cents * 2, "USD"),
  taxKind: "goods",
  open: false,
  sentBy: { supplier, byLength },
});
const freightOf = (lines: readonly SentLine[]) =>
  withFreight(lines, studio, "USD")
    .filter((l) => l.what === "freight")
    .map((l) => [l.item, Number(l.trade.minor), Number(l.client.minor)]);

test("three of 4.14 from one supplier carry 43 cents, not three times 14; a stated nought is none", () => {
  // 12.42 × 3.5 % = 0.4347; by the line 0.1449 each, 0.14. Marked up once: 0.43 × 1.2 = 0.516.
  expect(freightOf(["a", "b", "c"].map((item) => goods(item, 414, "mill")))).toEqual([
    ["a", 15, 18],
    ["b", 14, 17],
    ["c", 14, 17],
  ]);
  expect(freightOf([goods("a", 414, "near")])).toEqual([]);
});

test("each supplier's order by itself; by the studio's share only what is bought by length", () => {
  expect(
    freightOf([
      goods("a", 1000, "mill"),
      goods("b", 1000, "shed"),
      goods("pole", 1000, "shed", false),
      goods("rod", 1000, "mill", false),
      goods("c", 1005),
    ]),
  ).toEqual([
    // 20.00 × 3.5 % = 0.70; 20.05 × 10 % = 2.005, up to 2.01, and 2.41 with its markup.
    ["a", 35, 42],
    ["b", 100, 120],
    ["rod", 35, 42],
    ["c", 101, 121],
  ]);
});

test("whatever is bought, the lines make the order's freight to the last cent, and no line of goods is lost or another", () => {
  const line = fc.tuple(
    fc.integer({ min: 0, max: 200_000 }),
    fc.constantFrom("mill", "shed", undefined),
    fc.boolean(),
  );
  fc.assert(
    fc.property(fc.array(line, { minLength: 1, maxLength: 12 }), (all) => {
      const lines = all.map(([cents, by, long], at) => goods(`i${at}`, cents, by, long));
      const out = withFreight(lines, studio, "USD");
      expect(out.filter((l) => l.what !== "freight")).toEqual(
        lines.map(({ sentBy: _, ...rest }) => rest),
      );
      const orders = [
        [new Fraction("0.035"), lines.filter((_, at) => all[at]?.[1] === "mill")],
        [new Fraction("0.1"), lines.filter((_, at) => all[at]?.[1] !== "mill" && all[at]?.[2])],
      ] as const;
      const wanted = orders.map(([share, own]) =>
        timesMoney(
          sumMoney(
            own.map((l) => l.trade),
            "USD",
          ),
          share,
        ),
      );
      const sum = (key: "trade" | "client") =>
        out.filter((l) => l.what === "freight").reduce((a, l) => a + l[key].minor, 0n);
      expect(sum("trade")).toBe(wanted.reduce((a, w) => a + w.minor, 0n));
      const marked = wanted.map((w) => timesMoney(w, new Fraction("1.2")).minor);
      expect(sum("client")).toBe(marked.reduce((a, w) => a + w, 0n));
    }),
  );
});
