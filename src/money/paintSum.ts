import type { PaintPrice } from "../fields/paintPriceField.ts";
import { addMoney, type Money, money, timesMoney } from "../units/money.ts";
import { LITRES } from "../units/volume.ts";
import type { PaintTins } from "./purchase.ts";

/** A price of paint with its sum in the studio's currency. */
export interface PricedPaint {
  readonly per: PaintPrice["per"];
  /** Of a price for tins of one size alone: what such a tin holds. */
  readonly litres?: PaintPrice["litres"];
  readonly sum: Money;
}

function priceOf(tin: PaintTins, prices: readonly PricedPaint[]): Money | null {
  const held = tin.amount.mul(LITRES[tin.unit]);
  const sized = prices.find((p) => p.litres?.mul(tin.tins).equals(held));
  if (sized) return timesMoney(sized.sum, tin.tins);
  const own = prices.find((p) => p.per === tin.unit);
  if (own) return timesMoney(own.sum, tin.amount);
  for (const { per, litres, sum } of prices) {
    if (litres) return timesMoney(sum, held.div(litres));
    if (per === "tin") return timesMoney(sum, tin.tins);
    return timesMoney(sum, held.div(LITRES[per]));
  }
  return null;
}

/**
 * What tins of paint cost: each size by its own price, else by the price in its own unit, else by the first price given, by volume or by
 * the tin; rounded once for each size. Null where there is no price.
 */
export function paintSum(
  tins: readonly PaintTins[],
  prices: readonly PricedPaint[],
  currency: string,
): Money | null {
  let sum = money(0, currency);
  for (const tin of tins) {
    const cost = priceOf(tin, prices);
    if (cost === null) return null;
    sum = addMoney(sum, cost);
  }
  return sum;
}
