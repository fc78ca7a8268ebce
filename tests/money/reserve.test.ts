import { expect, test } from "vitest";
import { accountOf } from "../../src/money/account/account.ts";
import { accountText } from "../../src/money/account/accountText.ts";
import { PROJECT } from "../quantities/studioOf.ts";
import { pricedOf } from "./priced.ts";
import { STUDIO, small } from "./pricedStudio.ts";

/*
 * One cushion of 61.50 with its tax (goods at ten per cent, services at none), and a tenth of that in reserve: 6.15, together 67.65. That
 * what is not used of a reserve is not charged at the end is common practice, no source. The scenario is made up.
 */

const STUDIO_WITH = `${STUDIO}\ncontingency: 10`;
const PARTS = "instalments: [{ deposit: 50%, due: approval }, { balance: rest, due: fitting }]";
const APPROVED = "approvals: [{ revision: B, by: Nobody, on: 2026-11-02, total: 67.65 }]";
const use = (amount: string, more = ""): string =>
  `reserve-used: [{ what: Plasterer, amount: ${amount}, on: 2026-11-20${more} }]`;

function account(
  status: string,
  more: readonly string[] = [APPROVED],
  studio = STUDIO_WITH,
  today = "2026-12-01",
) {
  const head = PROJECT.replace("status: proposed", `status: ${status}\nrevision: B`);
  const project = [head, PARTS, ...more].join("\n");
  const priced = pricedOf(small({ project, studio }), today);
  const found = accountOf(priced.project, priced.context.studio, priced.money, today);
  const { kept, used, left } = found.reserve;
  return {
    account: found,
    money: priced.money,
    total: Number(found.total.minor),
    change: found.change === null ? null : Number(found.change.minor),
    reserve: [kept, used, left].map((sum) => Number(sum.minor)),
    parts: found.parts.map((part) => Number(part.sum.minor)),
    reserveLines: priced.money.lines
      .filter((l) => l.what === "reserve" || l.what === "reserve-used")
      .map((l) => [l.label, Number(l.client.minor), Number(l.tax.minor)]),
    said: [...priced.money.diagnostics, ...found.diagnostics].map((d) => d.code),
  };
}

test("until it is fitted the whole reserve stands in the total, whatever is used of it", () => {
  const none = account("making");
  expect([none.total, none.change, none.reserve]).toEqual([6765, 0, [615, 0, 615]]);
  const some = account("making", [APPROVED, use("4")]);
  expect([some.total, some.change, some.reserve]).toEqual([6765, 0, [615, 400, 215]]);
  expect(some.reserveLines).toEqual([
    ["Plasterer, from the reserve", 400, 0],
    ["Kept in reserve", 215, 0],
  ]);
  expect([...none.said, ...some.said]).toEqual([]);
});

test("once it is fitted what was not used is not charged, comes off the balance and is no change of what was approved", () => {
  for (const status of ["fitted", "archived"]) {
    const none = account(status);
    expect([none.total, none.change, none.reserve]).toEqual([6150, 0, [615, 0, 615]]);
    // Half of 67.65 was the deposit, 33.83; the balance of 33.82 is 6.15 less.
    expect(none.parts).toEqual([3383, 2767]);
    const some = account(status, [APPROVED, use("4")]);
    expect([some.total, some.change, some.parts]).toEqual([6550, 0, [3383, 3167]]);
    expect(some.reserveLines).toEqual([["Plasterer, from the reserve", 400, 0]]);
    expect([...none.said, ...some.said]).toEqual([]);
    expect(accountText(some.account, "en-US").join("\n")).toContain(
      "Reserve $6.15: $4.00 used, $2.15 not used, and not charged.",
    );
  }
});

test("a last total that was approved without the rest of the reserve is today's as well, and a real change is told apart from it", () => {
  const anew = APPROVED.replace("67.65", "65.50");
  expect(account("fitted", [anew, use("4")]).change).toBe(0);
  const other = account("fitted", [APPROVED.replace("67.65", "60.00"), use("4")]);
  expect([other.total, other.change, other.said]).toEqual([6550, 765, ["approved-total-differs"]]);
  expect(other.account.diagnostics[0]?.message).toContain(
    "today's total is $65.50, without the $2.15 of the reserve that were not used: $7.65 more.",
  );
});

test("what is dated ahead is warned of and counts from its day on; one day is let pass", () => {
  const uses =
    "reserve-used:\n  - { what: Later, amount: 1, on: 2026-12-09 }\n  - { what: Plasterer, amount: 4, on: 2026-11-20 }";
  const before = account("fitted", [APPROVED, uses], STUDIO_WITH, "2026-12-07");
  expect([before.total, before.reserve]).toEqual([6550, [615, 400, 215]]);
  expect(before.reserveLines).toEqual([["Plasterer, from the reserve", 400, 0]]);
  expect(before.said).toEqual(["reserve-use-ahead"]);
  expect(before.money.diagnostics[0]).toMatchObject({
    severity: "warning",
    keyPath: "reserve-used[0].on",
    message:
      "This is dated 2026-12-09, and today is 2026-12-07: it is not taken out of the reserve before its day.",
  });
  const after = account("fitted", [APPROVED, uses], STUDIO_WITH, "2026-12-08");
  expect([after.total, after.reserve, after.said]).toEqual([6650, [615, 500, 115], []]);
});

test("what was used is taxed as what it is, and moves no other sum", () => {
  const goods = account("making", [APPROVED, use("4", ", kind: goods, trade: 3")]);
  // Four and forty cents with its tax; 1.75 is left, and the total is the same.
  expect([goods.total, goods.reserve]).toEqual([6765, [615, 440, 175]]);
  expect(
    goods.account.taxes.map((t) => [t.kind, Number(t.net.minor), Number(t.tax.minor)]),
  ).toEqual([["goods", 1900, 190]]);
  expect(goods.money.lines.find((l) => l.what === "reserve-used")?.trade.minor).toBe(300n);
  const held = STUDIO_WITH.replace("services: 0", "services: 0, included: yes");
  // Prices hold the tax: 60 in all, 6 in reserve, and of the four 36 cents are tax.
  const within = account("fitted", [use("4", ", kind: goods")], held);
  expect([within.total, within.reserve]).toEqual([6400, [600, 400, 200]]);
  expect(within.reserveLines).toEqual([["Plasterer, from the reserve", 400, 36]]);
});

test("more than the reserve is charged and warned of, and so is what is used where none is kept", () => {
  for (const status of ["making", "fitted"]) {
    const more = account(status, [APPROVED, use("8")]);
    expect([more.total, more.change, more.reserve]).toEqual([6950, 185, [615, 800, 0]]);
    expect(more.said).toEqual(["reserve-overused", "approved-total-differs"]);
  }
  const none = account("fitted", [use("4")], STUDIO);
  expect([none.total, none.reserve]).toEqual([6550, [0, 400, 0]]);
  expect(none.money.diagnostics[0]?.message).toBe(
    "$4.00 was used of the reserve, and none is kept.",
  );
});
