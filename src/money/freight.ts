import Fraction from "fraction.js";
import type { StudioRecord } from "../records/records.ts";
import { type Money, sumMoney, timesMoney } from "../units/money.ts";
import { allocate } from "./allocate.ts";
import { markupOf } from "./clothPrice.ts";
import type { PriceLine } from "./lines.ts";

/** A line of goods and who sends them: their supplier, as named in studio.md, and whether they are bought by length or roll. */
export interface SentLine extends PriceLine {
  readonly sentBy?: { readonly supplier: string | undefined; readonly byLength: boolean };
}

interface Carriage {
  /** Whose freight it is; the studio's own share has no name. */
  readonly by: string;
  readonly share: Fraction;
}

/** A supplier's freight, else for what is bought by length or roll the studio's own share; null where neither is stated. */
function carriageOf({ sentBy }: SentLine, { fields }: StudioRecord): Carriage | null {
  if (!sentBy) return null;
  const { supplier, byLength } = sentBy;
  const own = supplier ? fields.suppliers?.[supplier]?.freight : undefined;
  if (own) return { by: `of ${supplier}`, share: own };
  const usual = byLength ? fields.freight?.cloth : undefined;
  return usual ? { by: "", share: usual } : null;
}

/**
 * The lines with the freight of each behind it. An invoice has its freight once, on the order as a whole: it is reckoned on the trade price of
 * all that comes from one supplier, rounded there to the nearest minor unit and nowhere else, its markup likewise, and then shared out by
 * what the goods cost, so that lines and totals agree (common practice, no source). The studio's own share is one order.
 */
export function withFreight(
  lines: readonly SentLine[],
  studio: StudioRecord,
  currency: string,
): PriceLine[] {
  const carriages = lines.map((line) => carriageOf(line, studio));
  const freight = lines.map((): { trade: Money; client: Money } | null => null);
  for (const by of new Set(carriages.flatMap((each) => each?.by ?? []))) {
    const at = carriages.flatMap((each, index) => (each?.by === by ? [index] : []));
    const share = carriages[at[0] as number]?.share as Fraction;
    const goods = at.map((index) => (lines[index] as SentLine).trade);
    const trade = timesMoney(sumMoney(goods, currency), share);
    const client = timesMoney(trade, markupOf(studio, "freight"));
    const weights = goods.map(({ minor }) => new Fraction(minor, 1n));
    const parts = { trade: allocate(trade, weights), client: allocate(client, weights) };
    for (const [n, index] of at.entries())
      freight[index] = { trade: parts.trade[n] as Money, client: parts.client[n] as Money };
  }
  return lines.flatMap(({ sentBy: _, ...line }, at): PriceLine[] => {
    const carried = freight[at];
    if (!carried || (carried.trade.minor === 0n && carried.client.minor === 0n)) return [line];
    return [line, { ...line, what: "freight", label: "Freight", ...carried, open: false }];
  });
}
