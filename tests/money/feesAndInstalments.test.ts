import { expect, test } from "vitest";
import { sumMoney } from "../../src/units/money.ts";
import { PROJECT, recordsOf } from "../quantities/studioOf.ts";
import { priced, small } from "./pricedStudio.ts";

const project = (more: string) => priced(small({ project: `${PROJECT}\n${more}` }));

test("fitting is passed on as it is paid; the studio's own fees cost it nothing", () => {
  const fees = project(
    "fees: { design: 100, survey: 40, management: 60, fitting: 80 }",
  ).lines.filter((l) => l.what === "fee");
  expect(fees.map((f) => [f.label, f.trade.minor, f.client.minor, f.taxKind])).toEqual([
    ["Design fee", 0n, 10_000n, "services"],
    ["Survey and measuring", 0n, 4000n, "services"],
    ["Managing the work", 0n, 6000n, "services"],
    ["Fitting", 8000n, 8000n, "services"],
  ]);
});

test("instalments of a project make up what the client pays, tax and all", () => {
  const money = project(
    "instalments:\n  - { deposit: 33 %, due: approval }\n  - { interim: $ 20, due: order }\n  - { balance: rest, due: fitting }",
  );
  // 61.50 in all: 33 % is 20.295, to the nearest cent and half up 20.30; 20.00; the rest 21.20.
  expect(money.instalments.map((i) => [i.name, i.due, i.amount.minor])).toEqual([
    ["deposit", "approval", 2030n],
    ["interim", "order", 2000n],
    ["balance", "fitting", 2120n],
  ]);
  expect(
    sumMoney(
      money.instalments.map((i) => i.amount),
      "USD",
    ),
  ).toEqual(money.totals.total);
});

test("shares that make the whole make it to the last cent: the last takes what rounding leaves", () => {
  // 61.50 in thirds of which none is a whole cent: 33 % is 20.295 twice, up to 20.30; 34 % would be 20.91, and 20.90 is left.
  const money = project(
    "instalments:\n  - { deposit: 33 %, due: approval }\n  - { interim: 33 %, due: order }\n  - { balance: 34 %, due: fitting }",
  );
  expect(money.diagnostics).toEqual([]);
  expect(money.instalments.map((i) => i.amount.minor)).toEqual([2030n, 2030n, 2090n]);
});

test.each([
  [
    "[{ deposit: 900, due: approval }, { balance: rest, due: fitting }]",
    "instalments-too-much",
    /\$900\.00, more than the total of \$61\.50/,
  ],
  [
    "[{ deposit: 50 %, due: approval }, { balance: $ 20, due: fitting }]",
    "instalments-do-not-sum",
    /come to \$50\.75, but the total is \$61\.50/,
  ],
  [
    "[{ deposit: rest, due: approval }, { balance: rest, due: fitting }]",
    "instalments-two-rests",
    /both take the rest/,
  ],
])("instalments that do not make the whole are said at their line: %s", (list, code, words) => {
  const { diagnostics, instalments } = project(`instalments: ${list}`);
  expect(instalments).toEqual([]);
  expect(diagnostics).toMatchObject([
    { code, file: "projects/test/project.md", line: 5, severity: "error" },
  ]);
  expect(diagnostics[0]?.message).toMatch(words);
});

const complaints = (more: string) =>
  recordsOf(small({ project: `${PROJECT}\n${more}` })).diagnostics;

test("a sum in another currency, or finer than its coin, is said in the file where it stands", () => {
  const found = complaints(
    "fees: { design: 100 EUR, survey: 10.555 }\ninstalments: [{ deposit: £ 200, due: approval }, { balance: rest, due: fitting }]",
  );
  expect(found.map((d) => [d.code, d.file, d.line])).toEqual([
    ["currency-other", "projects/test/project.md", 5],
    ["sum-too-fine", "projects/test/project.md", 5],
    ["currency-other", "projects/test/project.md", 6],
  ]);
});

test.each([
  ["50", "instalment-share-or-sum", /Is 50 a share of the total, or a sum of money/],
  ["100", "instalment-share-or-sum", /Is 100 a share/],
  ["120 %", "instalment-too-much", /“120 %” is more than the whole/],
  ["half", "instalment-unreadable", /“half”/],
])("an instalment that says too little is asked about, not guessed: %s", (part, code, words) => {
  const [found, ...more] = complaints(
    `instalments: [{ deposit: ${part}, due: approval }, { balance: rest, due: fitting }]`,
  );
  expect(more).toEqual([]);
  expect(found).toMatchObject({ code, line: 5, severity: "error" });
  expect(found?.message).toMatch(words);
});

test.each([
  ["50 %", 3075n],
  ["12.5%", 769n],
  ["12,5 %", 769n],
  ["40 per cent", 2460n],
  ["$ 20", 2000n],
  ["20.50 USD", 2050n],
])("an instalment as people write it: %s", (part, minor) => {
  const [first] = project(
    `instalments: [{ deposit: "${part}", due: approval }, { balance: rest, due: fitting }]`,
  ).instalments;
  expect(first?.amount.minor).toBe(minor);
});
