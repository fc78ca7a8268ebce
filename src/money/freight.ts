import type Fraction from "fraction.js";
import type { StudioRecord } from "../records/records.ts";
import { timesMoney } from "../units/money.ts";
import { markupOf } from "./clothPrice.ts";
import type { PriceLine } from "./lines.ts";

/** A supplier's freight as a share of the goods' trade price, or null where the supplier is not known or states none. */
export function supplierFreight(
  studio: StudioRecord,
  supplier: string | undefined,
): Fraction | null {
  return (supplier ? studio.fields.suppliers?.[supplier]?.freight : undefined) ?? null;
}

/**
 * A line of goods that are bought by the piece, and after it the freight that their supplier states, to the nearest minor unit. The
 * studio's own share is for what is bought by length, so without a supplier's there is none; nor while the price is to come.
 */
export function withFreight(
  goods: PriceLine,
  supplier: string | undefined,
  studio: StudioRecord,
): PriceLine[] {
  const share = supplierFreight(studio, supplier);
  const trade = share ? timesMoney(goods.trade, share) : null;
  if (trade === null || trade.minor === 0n) return [goods];
  const client = timesMoney(trade, markupOf(studio, "freight"));
  return [goods, { ...goods, what: "freight", label: "Freight", trade, client, open: false }];
}
