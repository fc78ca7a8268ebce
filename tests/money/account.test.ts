import { expect, test } from "vitest";
import type { Diagnostic } from "../../src/diagnostics/diagnostic.ts";
import { type Account, accountOf } from "../../src/money/account/account.ts";
import { accountJson } from "../../src/money/account/accountJson.ts";
import { accountText } from "../../src/money/account/accountText.ts";
import { moneyText } from "../../src/money/moneyText.ts";
import { moneyJson } from "../../src/money/toJson.ts";
import { PROJECT, recordsOf, STUDIO_CM } from "../quantities/studioOf.ts";
import { pricedOf } from "./priced.ts";
import { CUSHION, PLAIN, ROOM, STUDIO, small } from "./pricedStudio.ts";

/*
 * One cushion, from its files: goods 15.00 and 1.50 tax, making 45.00, together 61.50 (projectMoney.test.ts has the sum by hand). The
 * scenario is made up; what the account counts as due and as paid is common practice, no source.
 */

const TODAY = "2026-12-01";
const HEAD = PROJECT.replace("status: proposed", "status: approved\nrevision: B");
const PARTS =
  "instalments: [{ deposit: 50%, due: approval }, { interim: $ 10, due: order }, { balance: rest, due: fitting }]";
const approval = (more: string, revision = "B"): string =>
  `approvals: [{ revision: ${revision}, by: Nobody, on: 2026-11-02${more} }]`;

type Files = Parameters<typeof small>[0];

function account(project: string, more: Files = {}): Account {
  const { context, project: record, money } = pricedOf(small({ ...more, project }));
  return accountOf(record, context.studio, money, TODAY);
}
const said = (found: readonly Diagnostic[]): string[] =>
  found.map((d) => `${d.severity} ${d.code} ${d.file}:${d.line} ${d.keyPath}`);
const partsOf = (a: Account) =>
  a.parts.map((p) => [p.name, p.dueOn, Number(p.sum.minor), Number(p.paid.minor), p.state]);

test("a project without approval or payment: nothing is agreed, all remains, and nothing is wrong", () => {
  const a = account(`${PROJECT}\n${PARTS}`);
  expect([a.last, a.change, a.payments, a.diagnostics]).toEqual([null, null, [], []]);
  expect([a.total.minor, a.paid.minor, a.remaining.minor, a.dueNow.minor]).toEqual([
    6150n,
    0n,
    6150n,
    0n,
  ]);
  expect(partsOf(a)).toEqual([
    ["deposit", null, 3075, 0, "open"],
    ["interim", null, 1000, 0, "open"],
    ["balance", null, 2075, 0, "open"],
  ]);
  expect(account(PROJECT).parts).toEqual([]);
});

test("the total that was approved is today's: the parts fall due by their days, and payments fill them in their order", () => {
  const a = account(
    `${HEAD}\nfitting: 2027-02-01\n${PARTS}\n${approval(", total: 61.50")}
orders: [{ cloth: plain, length: 2 yd, on: 2026-11-20 }, { cloth: plain, length: 1 yd, on: 2026-11-12 }]
payments: [{ amount: 8, on: 2026-11-14 }, { amount: 30, on: 2026-11-05, what: deposit }]`,
  );
  expect(a.diagnostics).toEqual([]);
  expect(a.change?.minor).toBe(0n);
  expect(partsOf(a)).toEqual([
    ["deposit", "2026-11-02", 3075, 3075, "paid"],
    ["interim", "2026-11-12", 1000, 725, "part-paid"],
    ["balance", "2027-02-01", 2075, 0, "open"],
  ]);
  expect(a.parts[0]?.paidOn).toBe("2026-11-14");
  expect([a.paid.minor, a.remaining.minor, a.dueNow.minor]).toEqual([3800n, 2350n, 275n]);
  expect(a.payments.map((p) => [p.on, p.what, p.beforeApproval])).toEqual([
    ["2026-11-05", "deposit", false],
    ["2026-11-14", null, false],
  ]);
});

test("more than the total is paid: the client is in credit, and what is given back settles it", () => {
  const paid = (more: string) =>
    account(
      `${HEAD}\n${approval(", total: 61.50")}\npayments: [{ amount: 70, on: 2026-11-05 }${more}]`,
    );
  expect(paid("").remaining.minor).toBe(-850n);
  expect(paid(", { amount: -8.50, on: 2026-11-06 }").remaining.minor).toBe(0n);
  expect(paid(", { amount: −8.50, on: 2026-11-06 }").remaining.minor).toBe(0n);
  // A sum given back in another currency, or finer than its coin, is refused as any other.
  for (const [sum, code] of [
    ["-8.50 EUR", "currency-other"],
    ["-8.505", "sum-too-fine"],
    ["-about 8", "amount-unreadable"],
  ])
    expect(
      recordsOf(
        small({ project: `${PROJECT}\npayments: [{ amount: ${sum}, on: 2026-11-05 }]` }),
      ).diagnostics.map((d) => [d.code, d.line]),
    ).toEqual([[code, 5]]);
});

/** The last line of a hint, as she would paste it below `approvals:`. */
const pasted = (d: Diagnostic | undefined): string => d?.hint?.split("\n").at(-1) ?? "";

test("today's total is another than was approved: said at that sum, and the line of the hint mends it", () => {
  const before = `${HEAD}\n${PARTS}\napprovals:\n  - { revision: B, by: "Nobody, N.", on: 2026-11-02, total: 60 }`;
  const a = account(before);
  expect(said(a.diagnostics)).toEqual([
    "warning approved-total-differs projects/test/project.md:8 approvals[0].total",
  ]);
  expect(a.diagnostics[0]?.message).toBe(
    "Revision B was approved at $60.00 on 2026-11-02; today's total is $61.50: $1.50 more.",
  );
  expect(pasted(a.diagnostics[0])).toBe(
    '  - { revision: B, by: "Nobody, N.", on: 2026-12-01, total: 61.50 }',
  );
  // Half of what was approved, ten dollars, and all that is left of today's total.
  expect(partsOf(a).map((p) => p[2])).toEqual([3000, 1000, 2150]);
  const mended = account(`${before}\n${pasted(a.diagnostics[0])}`);
  expect(mended.diagnostics).toEqual([]);
  expect(mended.change?.minor).toBe(0n);
  expect(partsOf(mended).map((p) => p[2])).toEqual([3075, 1000, 2075]);
});

test("the project says approved, and the revision is not, or nothing is: said at its line, and the hint mends it", () => {
  const before = `${HEAD}\napprovals:\n  - { revision: A, by: Nobody, on: 2026-11-02, total: 60 }`;
  const a = account(before);
  expect(said(a.diagnostics)).toEqual([
    "warning revision-not-approved projects/test/project.md:5 revision",
  ]);
  expect(a.diagnostics[0]?.message).toContain(
    "revision B is not approved; the last that was is revision A",
  );
  expect(a.diagnostics[0]?.message).toContain("$1.50 more");
  expect(account(`${before}\n${pasted(a.diagnostics[0])}`).diagnostics).toEqual([]);

  const none = account(HEAD);
  expect(said(none.diagnostics)).toEqual([
    "warning approval-missing projects/test/project.md:4 status",
  ]);
  const [, ...lines] = none.diagnostics[0]?.hint?.split("\n") ?? [];
  expect(account(`${HEAD}\n${lines.join("\n")}`).diagnostics).toEqual([]);
});

test("while a new revision lies with the client another total is no surprise; of the same revision it is", () => {
  const proposed = (revision: string) =>
    account(`${PROJECT}\nrevision: ${revision}\n${approval(", total: 60", "a")}`);
  expect(proposed("B")).toMatchObject({ isProposing: true, unapproved: "B", diagnostics: [] });
  expect(proposed("B").change?.minor).toBe(150n);
  expect(said(proposed("A").diagnostics)).toEqual([
    "warning approved-total-differs projects/test/project.md:6 approvals[0].total",
  ]);
});

test("an approval without its total: nothing to compare, no warning, and the parts are today's", () => {
  const a = account(`${HEAD}\n${PARTS}\n${approval("")}`);
  expect([a.change, a.last?.total, a.diagnostics]).toEqual([null, null, []]);
  expect(partsOf(a).map((p) => p.slice(1, 3))).toEqual([
    ["2026-11-02", 3075],
    [null, 1000],
    [null, 2075],
  ]);
});

test("the last approval by its day counts, however they are written", () => {
  const a = account(
    `${HEAD}\napprovals: [{ revision: B, by: Nobody, on: 2026-11-09, total: 61.50 }, { revision: A, by: Nobody, on: 2026-11-02, total: 40 }]`,
  );
  expect(a.approvals.map((one) => one.revision)).toEqual(["A", "B"]);
  expect([a.last?.revision, a.change?.minor, a.diagnostics]).toEqual(["B", 0n, []]);
});

test("a payment that stands twice is asked about, two of one day for two things are not", () => {
  const twice = (second: string) =>
    said(
      account(
        `${HEAD}\n${approval(", total: 61.50")}\npayments:\n  - { amount: 5, on: 2026-10-01, what: deposit }\n  - { amount: 5, on: 2026-10-01${second} }`,
      ).diagnostics,
    );
  expect(twice(", what: Deposit")).toEqual([
    "warning payment-twice projects/test/project.md:9 payments[1]",
  ]);
  expect(twice(", what: survey")).toEqual([]);
  expect(twice("")).toEqual([]);
});

test("a payment of nothing and one that is dated ahead are said; the latter is not counted, but for the day of who lives east", () => {
  const a = account(
    `${HEAD}\n${approval(", total: 61.50")}\npayments:\n  - { amount: 5, on: 2026-10-01 }\n  - { amount: 0, on: 2026-11-05 }\n  - { amount: 7, on: 2026-12-02 }\n  - { amount: 9, on: 2027-11-30 }`,
  );
  expect(said(a.diagnostics)).toEqual([
    "warning payment-of-nothing projects/test/project.md:9 payments[1].amount",
    "warning payment-ahead projects/test/project.md:11 payments[3].on",
  ]);
  expect(a.payments.map((p) => [p.counts, p.beforeApproval])).toEqual([
    [true, true],
    [true, false],
    [true, false],
    [false, false],
  ]);
  expect([a.paid.minor, a.remaining.minor]).toEqual([1200n, 4950n]);
});

test("what has no price yet is named, not counted, and the warning says so", () => {
  const a = account(`${HEAD}\n${approval(", total: 61.50")}`, {
    cloths: { plain: PLAIN, felt: 'cloth: Felt\nwidth: 54"\nkind: plain' },
    rooms: { den: `${ROOM}${CUSHION.replace("One", "Two").replace("plain", "felt")}` },
  });
  expect(a.priceToCome).toEqual(["Felt"]);
  // The second cushion's making, 45.00, is known; the cloth of neither is bought otherwise.
  expect(a.total.minor).toBe(10_650n);
  expect(a.diagnostics[0]?.message).toContain(
    "$45.00 more. It leaves out what has no price yet: Felt.",
  );
  expect(a.diagnostics[0]?.hint).toContain("When all has its price, and it is approved");
  // Today's total is not what will be approved: the line to paste has dots, which the reader refuses.
  expect(a.diagnostics[0]?.hint).toContain("total: …");
});

test("by kind, with the tax of each, the sums make the total, whether the tax is on top or held", () => {
  const fees = "fees: { design: 20, fitting: 10 }";
  const rows = (studio: string) => {
    const a = account(`${PROJECT}\n${fees}`, { studio });
    const kinds = a.kinds.map((k) => [
      k.kind,
      ...[k.net, k.tax, k.sum].map((m) => Number(m.minor)),
    ]);
    expect(a.kinds.reduce((sum, k) => sum + k.sum.minor, 0n)).toBe(a.total.minor);
    return { kinds, taxes: a.taxes.map((t) => [t.kind, Number(t.net.minor), Number(t.tax.minor)]) };
  };
  const taxed = STUDIO.replace("services: 0", "services: 20");
  // 15.00 at 10 %; making 45.00 and fees 30.00 at 20 %.
  expect(rows(taxed)).toEqual({
    kinds: [
      ["goods", 1500, 150, 1650],
      ["making", 4500, 900, 5400],
      ["fees", 3000, 600, 3600],
    ],
    taxes: [
      ["goods", 1500, 150],
      ["services", 7500, 1500],
    ],
  });
  // Held: 15.00 / 1.1 is 13.64 and 1.36; 75.00 / 1.2 is 62.50 and 12.50, shared as 45 to 30.
  expect(rows(taxed.replace("services: 20", "services: 20, included: yes"))).toEqual({
    kinds: [
      ["goods", 1364, 136, 1500],
      ["making", 3750, 750, 4500],
      ["fees", 2500, 500, 3000],
    ],
    taxes: [
      ["goods", 1364, 136],
      ["services", 6250, 1250],
    ],
  });
  const kept = account(PROJECT, { studio: `${STUDIO}\ncontingency: 10` });
  // A tenth of 61.50.
  expect([kept.reserve.kept.minor, kept.kinds.at(-1)?.kind]).toEqual([615n, "reserve"]);
});

test("a currency without cents: whole sums in the files, in the line to paste and in the account", () => {
  const studio = STUDIO_CM.replace("EUR", "JPY").concat(
    "\nmakers:\n  bench: { name: Bench, makes: [cushion], rates: { cushion: 3000 per item } }",
  );
  const yen = {
    studio,
    cloths: {
      plain: "cloth: Plain\nwidth: 137 cm\nkind: plain\nprice: { trade: 0, client: 0, per: metre }",
    },
  };
  const a = account(
    `${HEAD}\ninstalments: [{ deposit: 33 %, due: approval }, { balance: rest, due: 2026-11-30 }]\n${approval(", total: 1000")}\npayments: [{ amount: 400, on: 2026-11-03 }]`,
    yen,
  );
  expect(a.total).toEqual({ minor: 3000n, currency: "JPY" });
  expect(partsOf(a)).toEqual([
    ["deposit", "2026-11-02", 330, 330, "paid"],
    ["balance", "2026-11-30", 2670, 70, "part-paid"],
  ]);
  expect(a.dueNow.minor).toBe(2600n);
  expect(pasted(a.diagnostics[0])).toContain("total: 3000 }");
  expect(
    recordsOf(
      small({ ...yen, project: `${HEAD}\n${approval(", total: 1000.50")}` }),
    ).diagnostics.map((d) => [d.code, d.line]),
  ).toEqual([["sum-too-fine", 6]]);
});

test("the machine form has the account in minor units, and the text ends with it; a room's text has none", () => {
  const files = `${HEAD}\n${PARTS}\n${approval(", total: 60")}\npayments: [{ amount: 30, on: 2026-11-05 }]`;
  const { context, project, money } = pricedOf(small({ project: files }));
  const a = accountOf(project, context.studio, money, TODAY);
  expect(moneyJson(money, null, [], a).account).toEqual(accountJson(a));
  expect(accountJson(a)).toMatchObject({
    asOf: TODAY,
    total: 6150,
    standsAs: { revision: "B", on: "2026-11-02", total: 6000 },
    change: 150,
    unapproved: null,
    approvals: [{ revision: "B", by: "Nobody", on: "2026-11-02", total: 6000 }],
    instalments: [
      { name: "deposit", agreed: 3000, amount: 3000, paid: 3000, open: 0, paidOn: "2026-11-05" },
      { name: "interim", agreed: 1000, amount: 1000, paid: 0, open: 1000, state: "open" },
      { name: "balance", agreed: 2000, amount: 2150, dueOn: null, state: "open" },
    ],
    payments: [{ amount: 3000, on: "2026-11-05", what: null, counts: true }],
    paid: 3000,
    remaining: 3150,
    dueNow: 0,
  });
  expect(JSON.parse(JSON.stringify(accountJson(a)))).toEqual(accountJson(a));
  const text = moneyText(money, null, undefined, [], a);
  expect(text.endsWith(`${accountText(a, "en-US").join("\n")}\n`)).toBe(true);
  expect(accountText(a, "en-US").slice(1)).toEqual([
    "Account on 2026-12-01: approved $60.00 (revision B, 2026-11-02); today $61.50, $1.50 more.",
    "  deposit, due at approval, 2026-11-02: $30.00, paid 2026-11-05.",
    "  interim, due at order: $10.00, open.",
    "  balance, due at fitting: $21.50, open.",
    "Paid $30.00; $31.50 remains, of it $0.00 due by now.",
  ]);
  expect(moneyText(money, "den", undefined, [], a)).not.toContain("Account on");
});
