import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import Big from "big.js";
import { beforeAll, expect, test } from "vitest";
import { parseDocument } from "yaml";
import { compute } from "../../src/site/compute.ts";

/*
 * The demo's price reckoned again, line by line, with a general-purpose decimal library (big.js) and a general-purpose reader of YAML: from
 * the cards' prices and the quantities alone. Nothing of money/ is used.
 */

const CONTENT = resolve(import.meta.dirname, "../../content");
const YARD_MM = new Big("914.4");
type Card = Readonly<Record<string, string>> & { readonly [key: string]: unknown };
interface Line {
  readonly room: string | null;
  readonly item: string | null;
  readonly what: string;
  readonly label: string;
  readonly cloth: string | null;
  readonly maker: string | null;
  readonly phase: number | null;
  readonly trade: number;
  readonly client: number;
  readonly tax: number;
}
interface Sums {
  readonly lines: readonly Line[];
  readonly totals: Readonly<
    Record<"trade" | "client" | "tax" | "total" | "budget" | "remaining", number>
  >;
  readonly rooms: readonly { readonly room: string; readonly total: number }[];
  readonly phases: readonly { readonly phase: number | null; readonly total: number }[];
  readonly instalments: readonly { readonly name: string; readonly amount: number }[];
  readonly account: {
    readonly change: number;
    readonly instalments: readonly {
      readonly amount: number;
      readonly paid: number;
      readonly open: number;
    }[];
    readonly paid: number;
    readonly remaining: number;
    readonly kinds: readonly { readonly kind: string; readonly sum: number }[];
  };
}
interface Needs {
  readonly cloths: readonly {
    readonly cloth: string;
    readonly buy: { readonly lengthMm: number };
  }[];
  readonly materials: readonly {
    readonly room: string;
    readonly item: string;
    readonly cloth: string | null;
    readonly buy: { readonly amount: number; readonly unit: string };
  }[];
  readonly items: readonly {
    readonly room: string;
    readonly item: string;
    readonly kind: string;
    readonly figures: Readonly<Record<string, unknown>>;
  }[];
}

/** The front matter of a file, every value as its text. */
function read(path: string): Record<string, never> {
  const text = readFileSync(join(CONTENT, path), "utf8").split("---\n")[1] ?? "";
  return parseDocument(text, { schema: "failsafe" }).toJS();
}
// biome-ignore lint/suspicious/noExplicitAny: the files are read without our schemas on purpose.
const studio = read("studio.md") as any;
// biome-ignore lint/suspicious/noExplicitAny: as above.
const project = read("projects/gannet-house/project.md") as any;
// biome-ignore lint/suspicious/noExplicitAny: as above.
const cards = new Map<string, any>(
  readdirSync(join(CONTENT, "cloths"))
    .filter((f) => f.endsWith(".md"))
    .map((f) => [f.replace(/\.md$/, ""), read(`cloths/${f}`)]),
);

/** To the nearest cent, halves away from nought. */
const cents = (sum: Big): Big => sum.times(100).round(0, Big.roundHalfUp);
const total = (lines: readonly Line[], key: "trade" | "client" | "tax"): number =>
  lines.reduce((a, l) => a + l[key], 0);

let money: Sums;
let needs: Needs;
beforeAll(async () => {
  const computed = await compute(CONTENT, { only: null, useCache: true });
  money = computed.money("gannet-house")?.json as Sums;
  needs = computed.quantities("gannet-house")?.json as Needs;
});

const isCloth = (what: string): boolean => ["cloth", "lining", "wallcovering"].includes(what);

test("cloth and paper: what is bought at the card's price, each purchase rounded once", () => {
  const bought = new Set([
    ...needs.cloths.map((c) => c.cloth),
    ...needs.materials.flatMap((m) => m.cloth ?? []),
  ]);
  expect(bought.size).toBeGreaterThan(12);
  for (const id of bought) {
    const { price } = cards.get(id);
    const units = [
      ...needs.cloths
        .filter((c) => c.cloth === id)
        .map((c) => new Big(c.buy.lengthMm).div(YARD_MM)),
      ...needs.materials.filter((m) => m.cloth === id).map((m) => new Big(m.buy.amount)),
    ].map((u) => u.round(6));
    const lines = money.lines.filter((l) => l.cloth === id && isCloth(l.what));
    for (const key of ["trade", "client"] as const) {
      const wanted = units.reduce((a, u) => a.plus(cents(u.times(price[key]))), new Big(0));
      expect(total(lines, key), `${id} ${key}`).toBe(wanted.toNumber());
    }
  }
});

test("freight: the supplier's share of the trade price, else the studio's, and no markup", () => {
  const freight = money.lines.filter((l) => l.what === "freight");
  expect(new Set(freight.map((l) => l.cloth)).size).toBeGreaterThan(12);
  const by = new Map<string, Line[]>();
  for (const line of money.lines.filter((l) => l.cloth !== null && isCloth(l.what))) {
    const { supplier } = cards.get(line.cloth as string);
    // Suppliers that state none go by the studio's share, together.
    const key = studio.suppliers[supplier]?.freight ? supplier : "";
    by.set(key, [...(by.get(key) ?? []), line]);
  }
  expect([...by.keys()].sort()).toEqual(["", "anstey", "greyfell"]);
  let all = new Big(0);
  for (const [supplier, goods] of by) {
    const share = studio.suppliers[supplier]?.freight ?? studio.freight.cloth;
    // Once for each order, to the nearest cent, and the lines make it exactly.
    const wanted = new Big(total(goods, "trade")).times(share).div(100).round(0, Big.roundHalfUp);
    const cloths = new Set(goods.map((l) => l.cloth));
    const lines = freight.filter((l) => cloths.has(l.cloth));
    expect(total(lines, "trade"), supplier).toBe(wanted.toNumber());
    all = all.plus(wanted);
  }
  expect(total(freight, "trade")).toBe(all.toNumber());
  for (const line of freight) expect(line.client).toBe(line.trade);
});

test("making: an agreed charge, else the rate times what it is counted by, and the markup on making", () => {
  const rooms = new Map(
    ["dining-room", "study"].map((id) => [id, read(`projects/gannet-house/${id}.md`)]),
  );
  const lines = money.lines.filter((l) => l.what === "making");
  expect(lines.length).toBeGreaterThan(14);
  for (const line of lines) {
    const item = needs.items.find((i) => i.room === line.room && i.item === line.item);
    const figures = item?.figures as Record<string, number>;
    const kind = item?.kind as string;
    const record = (rooms.get(line.room as string) as unknown as { items: Card[] }).items.find(
      (i) => `${kind}-${String(i[kind]).toLowerCase().replace(/ /g, "-")}` === line.item,
    ) as Card;
    const rate = String(studio.makers[line.maker as string].rates[kind] ?? "");
    const [sum, per] = rate.split(" per ");
    const counts: Record<string, number | undefined> = {
      item: Number(record.count ?? 1),
      width: figures?.widths,
      roll: (figures?.rolls ?? 0) - Number(record["spare-rolls"] ?? 0),
    };
    if (record.making) {
      expect(line.trade).toBe(cents(new Big(record.making)).toNumber());
    } else if (per === "square-foot") {
      // By whole square feet, up, as the painter's sheet has them.
      const feet = new Big(figures?.areaM2 as number).div("0.09290304").round(0, Big.roundUp);
      expect(line.trade).toBe(cents(feet.times(sum as string)).toNumber());
    } else {
      const count = counts[per as string] as number;
      expect(line.trade, line.item ?? "").toBe(
        cents(new Big(sum as string).times(count)).toNumber(),
      );
    }
    expect(line.client).toBe(
      new Big(line.trade).times(studio.markup.making).round(0, Big.roundHalfUp).toNumber(),
    );
  }
});

test("fees, tax, reserve and totals", () => {
  const hours = Number(project.fees.fitting.hours);
  const rate = String(studio.makers.lowry.rates.fitting).replace(" per hour", "");
  const fee = (label: string) => money.lines.find((l) => l.label === label);
  expect(fee("Fitting")).toMatchObject({
    trade: cents(new Big(rate).times(hours)).toNumber(),
    client: cents(new Big(rate).times(hours).times(studio.markup.fitting)).toNumber(),
  });
  expect(fee("Design fee")?.client).toBe(Number(project.fees.design) * 100);
  const goods = money.lines.filter((l) => !["making", "fee", "reserve", "sample"].includes(l.what));
  const tax = new Big(total(goods, "client")).times(studio.tax.goods).div(100);
  expect(money.totals.tax).toBe(tax.round(0, Big.roundHalfUp).toNumber());
  expect(total(money.lines, "tax")).toBe(money.totals.tax);
  for (const l of goods) {
    // A line's own tax is its share of the tax on all goods, off by less than a cent.
    const exact = new Big(l.client).times(studio.tax.goods).div(100);
    expect(Math.abs(l.tax - exact.toNumber()), l.label).toBeLessThan(1.01);
  }
  const reserve = money.lines.find((l) => l.what === "reserve")?.client as number;
  const before = total(money.lines, "client") - reserve + money.totals.tax;
  expect(reserve).toBe(
    new Big(before).times(studio.contingency).div(100).round(0, Big.roundHalfUp).toNumber(),
  );
  for (const key of ["trade", "client"] as const)
    expect(money.totals[key]).toBe(total(money.lines, key));
  expect(money.totals.total).toBe(money.totals.client + money.totals.tax);
  expect(money.totals.remaining).toBe(Number(project.budget) * 100 - money.totals.total);
});

test("rooms, phases and instalments each make up the total", () => {
  const payable = (lines: readonly Line[]): number => total(lines, "client") + total(lines, "tax");
  for (const { room, total: sum } of money.rooms)
    expect(sum).toBe(payable(money.lines.filter((l) => l.room === room)));
  for (const { phase, total: sum } of money.phases)
    expect(sum).toBe(payable(money.lines.filter((l) => l.phase === phase)));
  expect(money.phases.reduce((a, p) => a + p.total, 0)).toBe(money.totals.total);
  const shares = [50, 30].map((part) =>
    new Big(money.totals.total).times(part).div(100).round(0, Big.roundHalfUp).toNumber(),
  );
  expect(money.instalments.map((i) => i.amount)).toEqual([
    ...shares,
    money.totals.total - (shares[0] as number) - (shares[1] as number),
  ]);
});

test("the account: parts of the approved total, the change in the balance, and what was paid of them", () => {
  const { account, totals } = money;
  const approved = cents(new Big(project.approvals[0].total));
  expect(account.change).toBe(totals.total - approved.toNumber());
  const [deposit, interim] = [50, 30].map((part) =>
    approved.times(part).div(100).round(0, Big.roundHalfUp).toNumber(),
  ) as [number, number];
  expect(account.instalments.map((i) => i.amount)).toEqual([
    deposit,
    interim,
    totals.total - deposit - interim,
  ]);
  const paid = (project.payments as { amount: string }[])
    .reduce((sum, p) => sum.plus(cents(new Big(p.amount))), new Big(0))
    .toNumber();
  expect(paid).toBeGreaterThan(0);
  expect([account.paid, account.remaining]).toEqual([paid, totals.total - paid]);
  expect(account.instalments.reduce((sum, i) => sum + i.open, 0)).toBe(account.remaining);
  const sumOf = (kind: string): number =>
    account.kinds.find((k) => k.kind === kind)?.sum ?? Number.NaN;
  expect(account.kinds.reduce((sum, k) => sum + k.sum, 0)).toBe(totals.total);
  const fees = money.lines.filter((l) => l.what === "fee");
  expect(sumOf("fees")).toBe(total(fees, "client") + total(fees, "tax"));
  const making = money.lines.filter((l) => l.what === "making");
  expect(sumOf("making")).toBe(total(making, "client") + total(making, "tax"));
});
