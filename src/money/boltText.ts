import { cutWords, type MakerNamed } from "../quantities/text/togetherWords.ts";
import type { Money } from "../units/money.ts";
import { printCloth, type UnitSystem } from "../units/printLength.ts";
import type { ClothBolt } from "./bolts.ts";

/** What is said of whole bolts beside the sums. */
export interface BoltWords {
  /** What to do where bolts that are not bought would cost less. */
  readonly worth: string;
  /** The same where they would not. */
  readonly dear: string;
  readonly maker: MakerNamed;
}

/**
 * Cut length against whole bolts of one cloth, by trade prices, and which of them is bought, and how bolts are divided that serve several
 * makers. Of a cloth that is sold in no other way only what is bought and charged: it has no cut price to be held against.
 */
export function boltText(
  b: ClothBolt,
  units: UnitSystem,
  print: (m: Money) => string,
  { worth, dear, maker }: BoltWords,
): string {
  const bolts = b.boltCount === 1 ? "one whole bolt" : `${b.boltCount} whole bolts`;
  const makers = new Set(b.divided.cut.flat().map((part) => part.maker)).size;
  const divided = makers > 1 ? ` Divided: ${cutWords(b.divided, b.unit, maker)}.` : "";
  if (b.soldWhole)
    return `${b.name} is sold in whole bolts alone: ${bolts}, ${printCloth(b.need, units)} in all, ${b.boltCount === 1 ? "costs" : "cost"} ${print(b.bolts)}.${divided}`;
  const end = b.taken ? `Bought by the bolt.${divided}` : b.worth ? worth : dear;
  const text = `${b.name}: ${printCloth(b.need, units)} cut ${print(b.cut)}; ${bolts} ${print(b.bolts)}, with ${printCloth(b.over, units)} over. A bolt pays from ${printCloth(b.breakEven, units)}. ${end}`;
  return text.trim();
}
