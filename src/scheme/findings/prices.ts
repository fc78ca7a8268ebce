import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import type { SchemeInput } from "../schemeInput.ts";
import { finding, listed } from "./make.ts";

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

/** A price that is to be asked for again, by its card. */
interface OldPrice {
  readonly id: string;
  readonly name: string;
  readonly on: string | null;
  readonly days: number | null;
}

/** So many prices have a finding each; more are told in one, with the list of their cards. */
const TOLD_ONE_BY_ONE = 2;

/** Prices that were given long before the day of the documents, or on nobody knows which. Only their dates are looked at here. */
export function priceFindings(input: FindingInput): Finding[] {
  const old = pricesOf(input)
    .map((price) => ({
      ...price,
      days: price.on === null ? null : daysBetween(price.on, input.on),
    }))
    .filter(({ days }) => days === null || days > OLD_AFTER_DAYS);
  // What a waiver names stays together, so that one more old price does not undo it.
  const taken = new Set<OldPrice>();
  const waived = (input.room.fields.accept ?? []).flatMap((w) => {
    const own = old.filter((price) => w.of?.includes(price.id) && !taken.has(price));
    if (w.finding !== "price-old" || own.length === 0 || own.length !== w.of?.length) return [];
    for (const price of own) taken.add(price);
    return [own];
  });
  const rest = old.filter((price) => !taken.has(price));
  const groups = rest.length > TOLD_ONE_BY_ONE ? [rest] : rest.map((each) => [each]);
  return [...waived, ...groups].map((prices) => oldPrices(input, prices));
}

function oldPrices(input: FindingInput, prices: readonly OldPrice[]): Finding {
  const { say, room } = input;
  const [{ name, on, days } = { name: "", on: null, days: null }] = prices;
  const alone =
    days === null
      ? say`The price of ${name} has no date.`
      : say`The price of ${name} is ${days} days old: it was given on ${on ?? ""}.`;
  const each = prices.map((p) =>
    p.days === null ? say`${p.name} (no date)` : say`${p.name} (${p.days} days)`,
  );
  const known = prices.flatMap((p) => p.days ?? []);
  return finding(
    room,
    "price-old",
    "worth-a-look",
    {
      message:
        prices.length === 1
          ? alone
          : say`${prices.length} prices are to be asked for again: ${listed(each)}.`,
      reason: say`Price lists change; one older than ${OLD_AFTER_DAYS} days is asked for again before it is promised (common practice).`,
    },
    prices.length === 1
      ? { days: days ?? "unknown", on: on ?? "", usual: OLD_AFTER_DAYS }
      : {
          prices: prices.length,
          days: known.length > 0 ? Math.max(...known) : "unknown",
          usual: OLD_AFTER_DAYS,
        },
    prices.map(({ id }) => id),
  );
}
