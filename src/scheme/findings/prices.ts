import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { finding } from "./make.ts";

/** A price is old after so many days; common practice, no source. */
export const OLD_AFTER_DAYS = 180;

const DAY_MS = 86_400_000;

/** Whole days from one ISO date to another. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);
}

/** Prices that were given long before the day of the documents, or on nobody knows which. Only their dates are looked at here. */
export function priceFindings(input: FindingInput): Finding[] {
  const { say } = input;
  const ids = [...new Set(input.uses.map((u) => u.cloth))];
  return ids.flatMap((id): Finding[] => {
    const card = input.cloths.get(id);
    const price = card?.fields.price;
    if (!card || !price || (!price.trade && !price.client)) return [];
    const days = price.on ? daysBetween(price.on, input.on) : null;
    if (days !== null && days <= OLD_AFTER_DAYS) return [];
    return [
      finding(
        input.room,
        "price-old",
        "worth-a-look",
        {
          message:
            days === null
              ? say`The price of ${card.fields.cloth} has no date.`
              : say`The price of ${card.fields.cloth} is ${days} days old: it was given on ${price.on ?? ""}.`,
          reason: say`Price lists change; one older than ${OLD_AFTER_DAYS} days is asked for again before it is promised (common practice).`,
        },
        { days: days ?? "unknown", on: price.on ?? "", usual: OLD_AFTER_DAYS },
        [id],
      ),
    ];
  });
}
