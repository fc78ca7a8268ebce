import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ClothRecord, StudioRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { compareMoney, type Money, money, timesMoney } from "../units/money.ts";
import { soldBelow } from "./soldBelow.ts";
import { toMoney } from "./toMoney.ts";

export interface ClothPrice {
  readonly trade: Money;
  readonly client: Money;
  readonly per: "yard" | "metre" | "roll" | "each";
}

export type MarkupName =
  | "cloth"
  | "wallcovering"
  | "lining"
  | "trim"
  | "hardware"
  | "making"
  | "fitting"
  | "paint"
  | "freight"
  | "objects";

/** The studio's markup for a class of goods; one (no markup) where it says none. Linings and wallcoverings fall back on cloth. */
export function markupOf(studio: StudioRecord, name: MarkupName): Fraction {
  const table = studio.fields.markup;
  const own = table?.[name];
  if (own) return own;
  const asCloth = name === "lining" || name === "wallcovering" || name === "trim";
  return (asCloth ? table?.cloth : undefined) ?? new Fraction(1);
}

/** Which markup a card falls under. */
export function markupNameOf(cloth: ClothRecord): MarkupName {
  const type = cloth.fields.type ?? (cloth.fields.roll ? "wallcovering" : "cloth");
  if (type === "wallcovering" || type === "trim") return type;
  return type === "lining" || type === "interlining" ? "lining" : "cloth";
}

/**
 * The price of one unit of a card: the client price is the card's own, else trade times markup. A card without a trade price gives
 * null. A client price below trade is a warning.
 */
export function clothPrice(
  cloth: ClothRecord,
  studio: StudioRecord,
  currency: string,
  found: Diagnostic[],
): ClothPrice | null {
  const price = cloth.fields.price;
  if (!price?.trade && !price?.client) return null;
  const trade = price.trade
    ? toMoney(price.trade, currency, cloth.place(["price", "trade"]), found)
    : money(0, currency);
  const client = price.client
    ? toMoney(price.client, currency, cloth.place(["price", "client"]), found)
    : timesMoney(trade, markupOf(studio, markupNameOf(cloth)));
  if (price.client)
    found.push(...soldBelow(cloth.place(["price", "client"]), cloth.fields.cloth, client, trade));
  found.push(...boltDearer(cloth, trade, currency));
  return {
    trade,
    client,
    per: price.per ?? (cloth.fields.roll ? "roll" : "yard"),
  };
}

/** A bolt's price that is no better than the cut one: the whole bolt's, written where that of one metre or yard stands. */
function boltDearer(cloth: ClothRecord, trade: Money, currency: string): Diagnostic[] {
  const { price, cloth: name } = cloth.fields;
  if (!price?.bolt || !price.trade) return [];
  const place = cloth.place(["price", "bolt", "trade"]);
  const bolt = toMoney(price.bolt.trade, currency, place, []);
  if (compareMoney(bolt, trade) <= 0) return [];
  return [
    diagnostic(place, "bolt-dearer", `By the bolt a ${price.per} of ${name} costs more than cut.`, {
      severity: "warning",
      actual: price.bolt.trade.decimal,
      hint: `What stands here is for one ${price.per}, not for the whole bolt.`,
    }),
  ];
}

/**
 * How many price units a bought amount is, exactly: rolls of a known length may be priced by the yard, and a length by the whole roll
 * (UP). Null where the price is for something else than what is bought, so that nothing can be reckoned.
 */
export function unitsBought(
  amount: { readonly length: Length } | { readonly count: Fraction },
  per: ClothPrice["per"],
  roll: Length | null,
): Fraction | null {
  if (per === "yard" || per === "metre") {
    const unit = per === "yard" ? Length.yards(1) : Length.mm(1000);
    if ("length" in amount) return amount.length.over(unit);
    return roll ? amount.count.mul(roll.over(unit)) : null;
  }
  if ("count" in amount) return amount.count;
  return per === "roll" && roll ? amount.length.over(roll).ceil() : null;
}
