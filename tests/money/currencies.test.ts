import Big from "big.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { PROJECT, STUDIO_INCHES } from "../quantities/studioOf.ts";
import { pricedOf } from "./priced.ts";

// A whole project through the reader, in currencies of ISO 4217 with two, no and three minor digits, against big.js.

const DIGITS = { USD: 2, JPY: 0, KWD: 3 } as const;
type Code = keyof typeof DIGITS;
const RUNS = { numRuns: process.env.SOAK ? 300 : 15, seed: 20261125 };

interface Case {
  readonly code: Code;
  /** In minor units. */
  readonly making: readonly number[];
  readonly pole: number;
  readonly goods: number;
  readonly services: number;
  readonly included: boolean;
  readonly reserve: number;
}
const minor = fc.integer({ min: 0, max: 9_999_999 });
const cases: fc.Arbitrary<Case> = fc.record({
  code: fc.constantFrom<Code>("USD", "JPY", "KWD"),
  making: fc.array(minor, { minLength: 2, maxLength: 4 }),
  pole: minor,
  goods: fc.integer({ min: 0, max: 2500 }),
  services: fc.integer({ min: 0, max: 2500 }),
  included: fc.boolean(),
  reserve: fc.integer({ min: 0, max: 1000 }),
});

const typed = (sum: number, code: Code): string =>
  new Big(sum).div(new Big(10).pow(DIGITS[code])).toFixed(DIGITS[code]);
const percent = (basis: number): string => `${new Big(basis).div(100).toString()} %`;

function priceOf(one: Case, order: readonly number[] = one.making.map((_, at) => at)) {
  const { code } = one;
  const items = order.map(
    (at) =>
      `  - cushion: Number ${at}\n    cloth: plain\n    size: 20" x 20"\n    edge: knife\n    making: ${typed(one.making[at] as number, code)}\n    hardware: [{ what: knob ${at}, trade: ${typed(one.pole, code)} }]\n`,
  );
  return pricedOf({
    studio: `${STUDIO_INCHES.replace("USD", code)}\ntax: { goods: ${percent(one.goods)}, services: ${percent(one.services)}, included: ${one.included ? "yes" : "no"} }\ncontingency: ${percent(one.reserve)}`,
    project: `${PROJECT}\ninstalments: [{ deposit: 33.3%, due: approval }, { interim: 33.3%, due: order }, { balance: rest, due: fitting }]`,
    cloths: { plain: `cloth: Plain\nwidth: 54"\nkind: plain\nprice: { trade: 0, per: yard }` },
    rooms: { den: `room: Den\nitems:\n${items.join("")}` },
  }).money;
}

const round = (sum: Big): string => sum.round(0, Big.roundHalfUp).toFixed(0);

test("tax, reserve, total and instalments of a project, in each currency", () => {
  fc.assert(
    fc.property(cases, (one) => {
      const money = priceOf(one);
      const services = one.making.reduce((a, b) => a.plus(b), new Big(0));
      const goods = new Big(one.pole).times(one.making.length);
      const taxOf = (sum: Big, basis: number): Big => {
        const rate = new Big(basis).div(10_000);
        return new Big(round(sum.times(one.included ? rate.div(rate.plus(1)) : rate)));
      };
      const tax = taxOf(goods, one.goods).plus(taxOf(services, one.services));
      const before = goods.plus(services).plus(one.included ? 0 : tax);
      const reserve = new Big(round(before.times(one.reserve).div(10_000)));
      expect(money.currency).toBe(one.code);
      expect(money.totals.tax.minor.toString()).toBe(tax.toFixed(0));
      expect(money.totals.total.minor.toString()).toBe(before.plus(reserve).toFixed(0));
      const total = before.plus(reserve);
      const part = round(total.times("0.333"));
      expect(money.instalments.map((i) => i.amount.minor.toString())).toEqual([
        part,
        part,
        total.minus(part).minus(part).toFixed(0),
      ]);
    }),
    RUNS,
  );
});

test("the order of the items changes no total, and no item's price but by the last unit of the shared tax", () => {
  fc.assert(
    fc.property(cases, (one) => {
      const [there, back] = [priceOf(one), priceOf(one, one.making.map((_, at) => at).reverse())];
      expect(back.totals).toEqual(there.totals);
      for (const line of there.lines) {
        const other = back.lines.find((l) => l.item === line.item && l.label === line.label);
        expect(other?.client).toEqual(line.client);
        const apart = (other?.tax.minor ?? 0n) - line.tax.minor;
        expect(apart >= -1n && apart <= 1n).toBe(true);
      }
    }),
    RUNS,
  );
});

test("a price with more digits than its currency has is refused where it stands", () => {
  for (const [code, sum] of [
    ["USD", "1.005"],
    ["JPY", "1.5"],
  ] as const)
    expect(() =>
      pricedOf({
        studio: STUDIO_INCHES.replace("USD", code),
        cloths: { plain: `cloth: Plain\nwidth: 54"\nprice: { trade: ${sum}, per: yard }` },
        rooms: { den: "room: Den\ncloths: [plain]" },
      }),
    ).toThrow(/plain\.md:4 .*finer than the smallest coin/);
});
