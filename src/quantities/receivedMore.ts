import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ProjectRecord, Records } from "../records/records.ts";
import { Length } from "../units/length.ts";
import type { UnitSystem } from "../units/printLength.ts";
import { clothText } from "./text/clothText.ts";

/** More than a tenth beyond the order: pieces come cut a little long, a point in the wrong place makes ten times as much (from memory). */
const AS_MUCH_AGAIN = { numerator: 11, denominator: 10 };

/**
 * A warning at the last receipt of each card of which far more is written to have come than was ordered: the cutting plan is made on
 * that length, and would only be found too long on the table. Nothing is said of a card without an order.
 */
export function receivedMore(
  project: ProjectRecord,
  { cloths }: Pick<Records, "cloths">,
  units: UnitSystem,
): Diagnostic[] {
  const receipts = project.fields.receipts ?? [];
  const orders = project.fields.orders ?? [];
  return [...new Set(receipts.map((receipt) => receipt.cloth))].flatMap((card): Diagnostic[] => {
    const sum = (all: readonly { readonly cloth: string; readonly length: Length }[]) =>
      Length.sum(all.filter((each) => each.cloth === card).map((each) => each.length));
    const ordered = sum(orders);
    const came = sum(receipts);
    const { numerator, denominator } = AS_MUCH_AGAIN;
    const isFarMore = came.times(denominator).isMoreThan(ordered.times(numerator));
    if (ordered.isZero() || !isFarMore) return [];
    const name = cloths.get(card)?.fields.cloth ?? card;
    return [
      diagnostic(
        project.place(["receipts", receipts.findLastIndex((r) => r.cloth === card), "length"]),
        "received-more-than-ordered",
        `Of ${name} ${clothText(came, units, "down")} came by these receipts; ${clothText(ordered, units, "down")} was ordered.`,
        {
          severity: "warning",
          actual: clothText(came, units, "down"),
          expected: clothText(ordered, units, "down"),
          hint: "Measure it again: cutting is planned on the length written here. Write the order that is missing, or take out the receipt of what went back.",
        },
      ),
    ];
  });
}
