import Big from "big.js";
import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { partsOf, standing } from "../../src/money/account/dueParts.ts";
import { type PaidSum, settle } from "../../src/money/account/settle.ts";
import type { InstalmentAsked } from "../../src/money/instalments.ts";
import { type Money, money, sumMoney } from "../../src/units/money.ts";

/*
 * What is due and what is paid of it, as plain arithmetic. Sums are held against big.js; that parts stand as they were approved and changes
 * fall into the balance is common practice, no source. Currencies of ISO 4217 with two, no and three minor digits.
 */

const RUNS = { numRuns: process.env.SOAK ? 5000 : 200, seed: 20261126 };
const HERE = { file: "x.md", line: 1, column: 1, keyPath: null };
const CURRENCY = fc.constantFrom("USD", "JPY", "KWD");

type Name = InstalmentAsked["name"];
const asked = (part: InstalmentAsked["part"], name: Name): InstalmentAsked => ({
  name,
  part,
  due: "approval",
  place: HERE,
});
const NAMES = fc.constantFrom<Name>("deposit", "interim", "balance");
const PARTS = fc.oneof(
  fc.integer({ min: 0, max: 60 }).map((percent) => new Fraction(percent, 100)),
  fc.integer({ min: 0, max: 400 }).map((sum) => ({ decimal: String(sum), mark: null })),
);
/** One to five parts; at most one takes the rest, wherever it stands. */
const SCHEDULE = fc
  .tuple(
    fc.array(fc.tuple(PARTS, NAMES), { minLength: 1, maxLength: 5 }),
    fc.option(fc.nat({ max: 4 }), { nil: null }),
  )
  .map(([list, rest]) => list.map(([part, name], at) => asked(at === rest ? "rest" : part, name)));
const TOTAL = fc.integer({ min: 0, max: 5_000_000 });
const minors = (all: readonly Money[]): number[] => all.map((m) => Number(m.minor));

test("the parts always make today's total to the last minor unit, none is below nothing, and as approved they make the approved one", () => {
  fc.assert(
    fc.property(SCHEDULE, TOTAL, TOTAL, CURRENCY, (list, approved, now, currency) => {
      const found = standing(list, money(approved, currency), money(now, currency));
      expect(Number(sumMoney(found.today, currency).minor)).toBe(now);
      expect(Number(sumMoney(found.agreed, currency).minor)).toBe(approved);
      expect(Math.min(...minors(found.today))).toBeGreaterThanOrEqual(0);
    }),
    RUNS,
  );
});

test("a total that has grown changes the balance alone; all else stands as it was approved", () => {
  fc.assert(
    fc.property(TOTAL, TOTAL, fc.nat({ max: 50 }), fc.nat({ max: 50 }), (approved, more, a, b) => {
      const list = [
        asked(new Fraction(a, 100), "deposit"),
        asked(new Fraction(b, 100), "interim"),
        asked("rest", "balance"),
      ];
      const { today } = standing(list, money(approved, "USD"), money(approved + more, "USD"));
      // To the nearest cent, halves away from nought.
      const share = (percent: number): number =>
        new Big(approved).times(percent).div(100).round(0, Big.roundHalfUp).toNumber();
      expect(minors(today)).toEqual([share(a), share(b), approved + more - share(a) - share(b)]);
    }),
    RUNS,
  );
});

test("a reduction comes off the balance first, then off the part before it, and the deposit stands while it can", () => {
  const list = [
    asked(new Fraction(1, 2), "deposit"),
    asked(new Fraction(3, 10), "interim"),
    asked("rest", "balance"),
  ];
  const at = (total: number) =>
    minors(standing(list, money(100_000, "USD"), money(total, "USD")).today);
  expect(at(100_000)).toEqual([50_000, 30_000, 20_000]);
  expect(at(90_000)).toEqual([50_000, 30_000, 10_000]);
  expect(at(75_000)).toEqual([50_000, 25_000, 0]);
  expect(at(40_000)).toEqual([40_000, 0, 0]);
  expect(at(0)).toEqual([0, 0, 0]);
});

test("parts that are sums stand as written; the change is in the balance, wherever it stands, or in the last part", () => {
  const sum = (decimal: string) => ({ decimal, mark: null });
  const of = (list: readonly InstalmentAsked[]) =>
    minors(standing(list, money(100_000, "USD"), money(110_000, "USD")).today);
  expect(of([asked(sum("500"), "deposit"), asked(sum("600"), "balance")])).toEqual([
    50_000, 60_000,
  ]);
  expect(
    of([
      asked(sum("300"), "deposit"),
      asked("rest", "balance"),
      asked(new Fraction(1, 10), "interim"),
    ]),
  ).toEqual([30_000, 70_000, 10_000]);
  expect(of([asked("rest", "deposit"), asked(sum("200"), "interim")])).toEqual([80_000, 30_000]);
});

test("a share that is no whole minor unit is rounded once, and who takes the rest takes what rounding leaves", () => {
  const list = [asked(new Fraction(1, 3), "deposit"), asked(new Fraction(2, 3), "balance")];
  expect(minors(partsOf(list, money(1000, "JPY")))).toEqual([333, 667]);
  expect(minors(partsOf(list, money(1001, "KWD")))).toEqual([334, 667]);
  expect(partsOf([], money(1000, "JPY"))).toEqual([]);
});

const DAY = fc.integer({ min: 1, max: 28 }).map((d) => `2026-10-${String(d).padStart(2, "0")}`);
const PAYMENTS = fc.array(
  fc.record({ minor: fc.integer({ min: -200_000, max: 400_000 }), on: DAY }),
  { maxLength: 8 },
);
const asPaid = (all: readonly { minor: number; on: string }[]): PaidSum[] =>
  all.map(({ minor, on }) => ({ amount: money(minor, "USD"), on }));
const DUES = fc.array(fc.integer({ min: 0, max: 300_000 }), { minLength: 1, maxLength: 5 });

test("of each part paid and open make the part; what was paid of them is all that came in, up to the whole", () => {
  fc.assert(
    fc.property(DUES, PAYMENTS, (dues, payments) => {
      const found = settle(
        dues.map((d) => money(d, "USD")),
        asPaid(payments),
      );
      const whole = dues.reduce((a, b) => a + b, 0);
      const net = payments.reduce((a, p) => a + p.minor, 0);
      for (const [at, part] of found.entries()) {
        expect(Number(part.paid.minor + part.open.minor)).toBe(dues[at]);
        expect(Number(part.open.minor)).toBeGreaterThanOrEqual(0);
        // A part is begun only when those before it are paid.
        if (part.paid.minor > 0n)
          for (const before of found.slice(0, at)) expect(before.open.minor).toBe(0n);
        expect(part.state).toBe(
          part.open.minor === 0n ? "paid" : part.paid.minor === 0n ? "open" : "part-paid",
        );
      }
      const paid = found.reduce((a, p) => a + Number(p.paid.minor), 0);
      expect(paid).toBe(Math.min(Math.max(net, 0), whole));
    }),
    RUNS,
  );
});

test("the order in which payments are written does not matter", () => {
  fc.assert(
    fc.property(DUES, PAYMENTS, fc.infiniteStream(fc.nat()), (dues, payments, keys) => {
      const parts = dues.map((d) => money(d, "USD"));
      const shuffled = payments
        .map((p) => ({ p, key: keys.next().value as number }))
        .sort((a, b) => a.key - b.key)
        .map(({ p }) => p);
      expect(settle(parts, asPaid(shuffled))).toEqual(settle(parts, asPaid(payments)));
    }),
    RUNS,
  );
});

test("a part is paid since the day from which on so much was there; what is given back opens it again", () => {
  const parts = [money(500, "USD"), money(300, "USD"), money(0, "USD")];
  const on = (all: readonly (readonly [number, string])[]) =>
    settle(parts, asPaid(all.map(([minor, day]) => ({ minor, on: day })))).map((p) => [
      p.state,
      Number(p.open.minor),
      p.paidOn,
    ]);
  expect(on([])).toEqual([
    ["open", 500, null],
    ["open", 300, null],
    ["paid", 0, null],
  ]);
  expect(
    on([
      [200, "2026-10-02"],
      [400, "2026-10-09"],
    ]),
  ).toEqual([
    ["paid", 0, "2026-10-09"],
    ["part-paid", 200, null],
    ["paid", 0, null],
  ]);
  expect(
    on([
      [900, "2026-10-02"],
      [-500, "2026-10-05"],
      [200, "2026-10-07"],
    ]),
  ).toEqual([
    ["paid", 0, "2026-10-07"],
    ["part-paid", 200, null],
    ["paid", 0, null],
  ]);
  // Both on one day: what was given back that day was never there.
  expect(
    on([
      [900, "2026-10-02"],
      [-600, "2026-10-02"],
    ])[0],
  ).toEqual(["part-paid", 200, null]);
});
