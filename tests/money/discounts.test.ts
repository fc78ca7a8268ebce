import { expect, test } from "vitest";
import { stairSvg } from "../../src/documents/proposal/stair.ts";
import { textWidthMm } from "../../src/drawing/words.ts";
import { money as sumOf } from "../../src/units/money.ts";
import { PROJECT } from "../quantities/studioOf.ts";
import { lineOf, PLAIN, priced, STUDIO, small } from "./pricedStudio.ts";

// What comes off the client's prices; sums by hand. The small studio sells cloth for 15.00, taxed with 10 %, and making for 45.00, untaxed:
// 61.50 in all. How a discount is taxed (its share of what it comes off) is common practice, no source: local rules go before.

const off = (discounts: string, studio = STUDIO) =>
  priced(small({ studio, project: `${PROJECT}\ndiscounts: [${discounts}]` }));
const lines = (money: ReturnType<typeof off>) =>
  money.lines
    .filter((l) => l.what === "discount")
    .map((l) => [l.label, l.client.minor, l.tax.minor, l.trade.minor, l.taxKind]);
const total = (money: ReturnType<typeof off>) => money.totals.total.minor;

test("a share of all comes off goods and work by what they come to, and takes its tax with it", () => {
  const money = off("{ what: Second house, share: 10 % }");
  expect(money.diagnostics).toEqual([]);
  expect(lines(money)).toEqual([
    ["Second house, off goods", -150n, -15n, 0n, "goods"],
    ["Second house, off work", -450n, 0n, 0n, "services"],
  ]);
  // (15.00 - 1.50) x 1.1 + 45.00 - 4.50
  expect(total(money)).toBe(5535n);
  expect(money.totals.tax.minor).toBe(135n);
  expect(money.totals.trade.minor).toBe(priced(small()).totals.trade.minor);
});

test("a share or a sum of one part alone is one line; so is one of all where goods and work are taxed alike", () => {
  expect(lines(off("{ what: Late, share: 10 %, of: making }"))).toEqual([
    ["Late", -450n, 0n, 0n, "services"],
  ]);
  expect(lines(off("{ what: Late, amount: 5, of: goods }"))).toEqual([
    ["Late", -500n, -50n, 0n, "goods"],
  ]);
  const alike = off("{ what: Late, share: 10 % }", STUDIO.replace("services: 0", "services: 10"));
  expect(lines(alike)).toEqual([["Late", -600n, -60n, 0n, "services"]]);
  expect(total(alike)).toBe(5940n);
});

test("where prices hold the tax, what comes off holds it too", () => {
  const money = off(
    "{ what: Late, share: 10 % }",
    STUDIO.replace("services: 0", "services: 0, included: yes"),
  );
  expect(total(money)).toBe(5400n);
  // 13.50 x 10 / 110 = 1.2272…
  expect(money.totals.tax.minor).toBe(123n);
});

test.each([1, 3, 7, 12.5, 33, 99])(
  "at %s %% the lines, their tax and the total agree to the last cent",
  (share) => {
    const money = off(`{ what: A, share: ${share} % }, { what: B, amount: 0.01, of: making }`);
    const goods = money.lines.filter((l) => l.taxKind === "goods");
    const net = goods.reduce((sum, l) => sum + l.client.minor, 0n);
    const tax = goods.reduce((sum, l) => sum + l.tax.minor, 0n);
    // Ten per cent of cents, half up.
    expect(tax).toBe((net + 5n) / 10n);
    const all = money.lines.reduce((sum, l) => sum + l.client.minor + l.tax.minor, 0n);
    expect(all).toBe(total(money));
  },
);

test("what is not said, said twice, or more than there is, is told at its line and comes off nothing", () => {
  for (const [text, code, keyPath] of [
    ["{ what: A }", "discount-of-nothing", "discounts[0]"],
    ["{ what: A, share: 5 %, amount: 5 }", "discount-twice", "discounts[0].amount"],
    ["{ what: A, amount: 15.01, of: goods }", "discount-of-more-than-all", "discounts[0].amount"],
    ["{ what: A, amount: 60.01 }", "discount-of-more-than-all", "discounts[0].amount"],
  ] as const) {
    const money = off(text);
    expect(money.diagnostics).toMatchObject([{ code, keyPath, severity: "error" }]);
    expect(total(money)).toBe(6150n);
  }
});

test("a share of what is still to be priced is to come; fees are left out of what it is of", () => {
  const unpriced = priced(
    small({
      project: `${PROJECT}\nfees: { design: 100 }\ndiscounts: [{ what: A, share: 10 % }, { what: B, amount: 3 }]`,
      cloths: { plain: PLAIN.replace(/\nprice.*/, "") },
    }),
  );
  expect(
    unpriced.lines.filter((l) => l.what === "discount").map((l) => [l.client.minor, l.open]),
  ).toEqual([
    [-450n, true],
    [-300n, false],
  ]);
  expect(lineOf(unpriced, "fee")?.client.minor).toBe(10_000n);
});

test("on the stair it is a bar that goes back from where the last one ended, and what is kept begins there", () => {
  const flat = (minor: number) => [
    { label: "x", sum: sumOf(minor, "USD"), fill: { flat: "#abcabc" } } as const,
  ];
  const { html } = stairSvg(
    {
      steps: [
        { name: "First", sum: "$80", parts: flat(8000) },
        { name: "Comes off", sum: "−$20", parts: flat(2000), isBack: true },
      ],
      reserve: { sum: sumOf(1000, "USD"), words: "kept" },
      limit: null,
    },
    "p",
  );
  const bars = [
    ...html.matchAll(/<rect x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="8.5" fill="none"/g),
  ].map((m) => m.slice(1, 4).map(Number));
  // 170 mm are 80: 20 are 42.5 mm, from 127.5 to 170; what is kept, 21.25 mm, begins at 127.5 a row below.
  expect(bars.map(([x, , width]) => [x, width])).toEqual([
    [0, 170],
    [127.5, 42.5],
    [127.5, 21.25],
  ]);
  expect((bars[2]?.[1] as number) - (bars[1]?.[1] as number)).toBe(12);
});

const NEARLY_ALL = (reserve: number | null, limit: number | null) => {
  const part = (minor: number) => [
    { label: "x", sum: sumOf(minor, "USD"), fill: { flat: "#abcabc" } } as const,
  ];
  return stairSvg(
    {
      steps: [
        { name: "First", sum: "$1,400.00", parts: part(140_000) },
        { name: "Comes off", sum: "−$1,300.00", parts: part(130_000), isBack: true },
      ],
      reserve: reserve === null ? null : { sum: sumOf(reserve, "USD"), words: "kept in reserve" },
      limit: limit === null ? null : { sum: sumOf(limit, "USD"), words: "your limit" },
    },
    "n",
  ).html;
};

test("where most of it comes off, no word of the stair begins before the picture: what comes off is named within its bar", () => {
  const html = NEARLY_ALL(300, null);
  const words = [
    ...html.matchAll(
      /<text[^>]* x="([\d.]+)"[^>]*text-anchor="end" font-size="([\d.]+)"[^>]*>([^<]+)/g,
    ),
  ].map(([, x, size, text]) => ({ text, from: Number(x) - textWidthMm(text ?? "", Number(size)) }));
  expect(words.map(({ text }) => text)).toEqual(
    expect.arrayContaining(["Comes off", "−$1,300.00", "kept in reserve"]),
  );
  for (const { text, from } of words) expect(from, text).toBeGreaterThanOrEqual(0);
});

test("what is over the limit stands a row below the bar that goes back, as what is kept does", () => {
  const red = (html: string) =>
    Number(html.match(/y="([\d.]+)"[^>]*stroke="#8c3426"/)?.[1] ?? Number.NaN);
  // Two bars from 9 mm on, 12 mm apart: what is over begins at 9 + 2 x 12.
  expect(red(NEARLY_ALL(null, 5000))).toBe(33);
  expect(red(NEARLY_ALL(300, 5000))).toBe(33);
});

test("several that come off cannot take more than there is together", () => {
  const money = off("{ what: A, share: 100 % }, { what: B, amount: 0.01, of: making }");
  expect(money.diagnostics).toMatchObject([
    { code: "discount-of-more-than-all", keyPath: "discounts[1].amount" },
  ]);
  expect(total(money)).toBe(0n);
});
