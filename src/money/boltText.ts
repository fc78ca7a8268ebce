import type { Money } from "../units/money.ts";
import { printCloth, type UnitSystem } from "../units/printLength.ts";
import type { ClothBolt } from "./bolts.ts";

/**
 * Cut length against whole bolts of one cloth, by trade prices, and which of them is bought; `worth` says what to do where bolts that are
 * not bought would cost less, `dear` where they would not. Of a cloth that is sold in no other way only what is bought and charged: it has
 * no cut price to be held against.
 */
export function boltText(
  b: ClothBolt,
  units: UnitSystem,
  print: (m: Money) => string,
  { worth, dear }: { readonly worth: string; readonly dear: string },
): string {
  const bolts = b.boltCount === 1 ? "one whole bolt" : `${b.boltCount} whole bolts`;
  if (b.soldWhole)
    return `${b.name} is sold in whole bolts alone: ${bolts}, ${printCloth(b.need, units)} in all, ${b.boltCount === 1 ? "costs" : "cost"} ${print(b.bolts)}.`;
  const end = b.taken ? "Bought by the bolt." : b.worth ? worth : dear;
  const text = `${b.name}: ${printCloth(b.need, units)} cut ${print(b.cut)}; ${bolts} ${print(b.bolts)}, with ${printCloth(b.over, units)} over. A bolt pays from ${printCloth(b.breakEven, units)}. ${end}`;
  return text.trim();
}
