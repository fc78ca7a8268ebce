import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ClothRecord } from "../records/records.ts";
import { type Money, money, timesMoney } from "../units/money.ts";
import { allocate } from "./allocate.ts";
import { boltPrices, boltsOf, checkBolts } from "./bolts.ts";
import { clothPrice, markupNameOf, unitsBought } from "./clothPrice.ts";
import type { SentLine } from "./freight.ts";
import { type LineKind, type PriceLine, wholeLine } from "./lines.ts";
import type { MoneyInput } from "./moneyInput.ts";
import type { PricedItem, Purchase } from "./purchase.ts";
import { toMoney } from "./toMoney.ts";

function lineKindOf(cloth: ClothRecord): LineKind {
  const name = markupNameOf(cloth);
  return name === "wallcovering" || name === "lining" || name === "trim" ? name : "cloth";
}

/** The phase of an item: its own, else its kind's usual one. */
export function phaseOf(items: readonly PricedItem[], room: string, item: string): number | null {
  return items.find((i) => i.room === room && i.item === item)?.usualPhase ?? null;
}

function linesOf(
  purchase: Purchase,
  cloth: ClothRecord,
  input: MoneyInput,
  currency: string,
  byTheBolt: Money | null,
  found: Diagnostic[],
): SentLine[] {
  const price = clothPrice(cloth, input.studio, currency, found);
  if (!price) {
    found.push(
      diagnostic(
        cloth.place(["price"]),
        "cloth-without-price",
        `${cloth.fields.cloth} has no price yet.`,
        {
          severity: "warning",
          expected: "price: { trade: …, per: yard }",
          hint: "Until then its lines stand as “price to come” and the total leaves it out.",
        },
      ),
    );
  }
  const units = price
    ? unitsBought(purchase.amount, price.per, cloth.fields.roll?.length ?? null)
    : null;
  if (price && !units) {
    const byLength = "length" in purchase.amount;
    found.push(
      diagnostic(
        cloth.place(["price", "per"]),
        "price-for-another-unit",
        `${cloth.fields.cloth} is priced ${price.per === "each" ? "each" : `by the ${price.per}`}, but ${byLength ? "a length" : "a number"} of it is bought.`,
        {
          severity: "warning",
          actual: `per: ${price.per}`,
          expected: byLength ? "a price per yard or metre" : "a price per roll or each",
          hint: `${byLength ? "Ask what a yard or a metre costs" : "Ask what one costs, or write the roll's length on the card"}. Until then its lines stand as “price to come” and the total leaves it out.`,
        },
      ),
    );
  }
  const whole = (unit: Money | undefined): Money =>
    unit && units ? timesMoney(unit, units) : money(0, currency);
  const weights = purchase.uses.map((u) => u.weight);
  const trade = byTheBolt ?? whole(price?.trade);
  const parts = {
    trade: allocate(trade, weights),
    client: allocate(whole(price?.client), weights),
  };
  return purchase.uses.map(
    (use, at): SentLine => ({
      room: use.room,
      item: use.item,
      cloth: cloth.id,
      maker: null,
      phase: phaseOf(input.items, use.room, use.item),
      what: lineKindOf(cloth),
      label: cloth.fields.cloth,
      trade: parts.trade[at] as Money,
      client: parts.client[at] as Money,
      taxKind: "goods",
      open: units === null,
      sentBy: { supplier: cloth.fields.supplier, byLength: true },
    }),
  );
}

/** Sample fees: credited where the cloth is bought and its supplier credits them, else a cost of the project. */
function sampleLine(
  cloth: ClothRecord,
  bought: boolean,
  currency: string,
  found: Diagnostic[],
): PriceLine[] {
  const sample = cloth.fields.sample;
  if (!sample?.fee || (bought && sample.credited)) return [];
  const fee = toMoney(sample.fee, currency, cloth.place(["sample", "fee"]), found);
  const label = `Sample of ${cloth.fields.cloth}`;
  const line = wholeLine("sample", label, fee, money(0, currency), "none");
  return [{ ...line, cloth: cloth.id }];
}

/**
 * Cloth lines: what is bought at its price, shared over the items that use it by their weight so that the parts make the whole to the
 * last cent; and the fees of samples that nobody credits. What the client owns costs nothing. A cloth that the project
 * buys by the bolt costs the studio its bolts; the client pays for what is used.
 */
export function clothLines(input: MoneyInput, currency: string, found: Diagnostic[]): SentLine[] {
  const bought = new Set(input.purchases.map((p) => p.cloth));
  const bolts = boltsOf(input, currency, []);
  found.push(...checkBolts(input, bolts));
  const prices = boltPrices(input, bolts);
  const lines = input.purchases.flatMap((purchase) => {
    const cloth = input.records.cloths.get(purchase.cloth);
    return cloth
      ? linesOf(purchase, cloth, input, currency, prices.get(purchase) ?? null, found)
      : [];
  });
  // A sample that was asked for is paid for, whether its cloth was taken or only looked at.
  const used = new Set([
    ...bought,
    ...input.project.rooms.flatMap((room) =>
      (room.fields.cloths ?? []).flatMap((c) => (typeof c === "string" ? [c] : Object.keys(c))),
    ),
    ...input.considered,
  ]);
  const samples = [...used].sort().flatMap((id) => {
    const cloth = input.records.cloths.get(id);
    return cloth ? sampleLine(cloth, bought.has(id), currency, found) : [];
  });
  return [...lines, ...samples];
}
