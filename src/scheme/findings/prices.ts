import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import type { SchemeInput } from "../schemeInput.ts";
import { finding } from "./make.ts";

/** A price is old after so many days; common practice, no source. */
export const OLD_AFTER_DAYS = 180;

const DAY_MS = 86_400_000;

/** Whole days from one ISO date to another. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);
}

/** What is priced in the room: the cards of its cloths, and the objects that are bought. */
function pricesOf(input: FindingInput): SchemeInput["objectPrices"] {
  const cloths = [...new Set(input.uses.map((u) => u.cloth))].flatMap((id) => {
    const card = input.cloths.get(id);
    const price = card?.fields.price;
    return card && price && (price.trade || price.client)
      ? [{ id, name: card.fields.cloth, on: price.on ?? null }]
      : [];
  });
  return [...cloths, ...input.objectPrices];
}

/** Prices that were given long before the day of the documents, or on nobody knows which. Only their dates are looked at here. */
export function priceFindings(input: FindingInput): Finding[] {
  const { say } = input;
  return pricesOf(input).flatMap(({ id, name, on }): Finding[] => {
    const days = on === null ? null : daysBetween(on, input.on);
    if (days !== null && days <= OLD_AFTER_DAYS) return [];
    return [
      finding(
        input.room,
        "price-old",
        "worth-a-look",
        {
          message:
            days === null
              ? say`The price of ${name} has no date.`
              : say`The price of ${name} is ${days} days old: it was given on ${on ?? ""}.`,
          reason: say`Price lists change; one older than ${OLD_AFTER_DAYS} days is asked for again before it is promised (common practice).`,
        },
        { days: days ?? "unknown", on: on ?? "", usual: OLD_AFTER_DAYS },
        [id],
      ),
    ];
  });
}
