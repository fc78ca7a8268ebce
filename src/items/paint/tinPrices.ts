import Fraction from "fraction.js";
import type { PaintPrice } from "../../fields/paintPriceField.ts";
import type { ItemContext } from "../itemKind.ts";
import type { PricedTin } from "./cheapestTins.ts";
import { cheapestTins } from "./cheapestTins.ts";
import type { PaintFields } from "./schema.ts";
import { type TinCount, tinsFor } from "./tins.ts";
import type { Tin } from "./volume.ts";

/**
 * What a tin costs: by the price of its own size, else in its own unit, else by the tin where that is the first price given; null where
 * none of these is.
 */
function priceOf(tin: Tin, prices: readonly PaintPrice[]): Fraction | null {
  const sized = prices.find((p) => p.litres?.equals(tin.litres));
  if (sized) return new Fraction(sized.decimal);
  const own = prices.find((p) => p.per === tin.unit);
  if (own) return tin.amount.mul(own.decimal);
  const [first] = prices.filter((p) => p.litres === undefined);
  return first?.per === "tin" ? new Fraction(first.decimal) : null;
}

/**
 * The tins to buy: where the price of every size is known, the item's own before the studio's, the cheapest that hold enough; else those
 * that leave least over, since what a quart costs by itself is not known from a gallon. Prices are taken as they are written: they are
 * rounded only when they are charged.
 */
export function tinsToBuy(
  litres: Fraction,
  sizes: readonly Tin[],
  fields: PaintFields,
  context: ItemContext,
): TinCount[] {
  const prices = fields.price ?? context.paint?.price ?? [];
  const priced = sizes.flatMap((tin): PricedTin[] => {
    const price = priceOf(tin, prices);
    return price ? [{ tin, price }] : [];
  });
  return priced.length === sizes.length ? cheapestTins(litres, priced) : tinsFor(litres, sizes);
}
