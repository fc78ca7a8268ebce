import type { PaintPrice } from "../fields/paintPriceField.ts";
import { addMoney, type Money, money, timesMoney } from "../units/money.ts";
import { LITRES } from "../units/volume.ts";
import type { PaintTins } from "./purchase.ts";

/** A price of paint with its sum in the studio's currency. */
export interface PricedPaint {
  readonly per: PaintPrice["per"];
  readonly sum: Money;
}

function priceOf(tin: PaintTins, prices: readonly PricedPaint[]): Money | null {
  const own = prices.find((p) => p.per === tin.unit);
  if (own) return timesMoney(own.sum, tin.amount);
  for (const { per, sum } of prices) {
    if (per === "tin") return timesMoney(sum, tin.tins);
    return timesMoney(sum, tin.amount.mul(LITRES[tin.unit]).div(LITRES[per]));
  }
  return null;
}

/**
 * What tins of paint cost: each size by the price in its own unit, else by the first price given, by volume or by the tin; rounded
 * once for each size. Null where there is no price.
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
