import { addMoney, type Money, sumMoney } from "../units/money.ts";
import type { PriceLine, TaxedLine } from "./lines.ts";

/** What a client pays for some lines: their prices, and the tax that comes on top where prices do not hold it. */
export function payable(lines: readonly TaxedLine[], included: boolean, currency: string): Money {
  return sumMoney(
    lines.map((l) => (included ? l.client : addMoney(l.client, l.tax))),
    currency,
  );
}

/** The names of the cloths that some lines buy, by which a client knows the thing: its lining and the freight are left out. */
export function clothNames(lines: readonly PriceLine[]): string[] {
  const named = lines.filter((l) => l.cloth && l.what !== "freight" && l.what !== "lining");
  return [...new Set(named.map((l) => l.label))];
}
