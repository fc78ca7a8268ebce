import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ProjectRecord, Records } from "../records/records.ts";
import { Length } from "../units/length.ts";
import type { UnitSystem } from "../units/printLength.ts";
import { countsAsOrdered, keptReceipts } from "./arrival/returned.ts";
import { lengthOrRolls } from "./text/rollsIn.ts";

/** So much more than was ordered is far more: pieces come cut a little long, a point in the wrong place makes ten times as much (from memory). */
const FAR_MORE = "1.1";

/**
 * A warning at the last receipt of each card of which far more is written to have come than was ordered: the cutting plan is made on
 * that length, and would only be found too long on the table. Nothing is said of a card without an order.
 */
export function receivedMore(
  project: ProjectRecord,
  { cloths }: Pick<Records, "cloths">,
  units: UnitSystem,
): Diagnostic[] {
  const receipts = keptReceipts(project);
  const lastOf = (card: string): number =>
    (project.fields.receipts ?? []).findLastIndex((r) => r.cloth === card && !r.returned);
  return [...new Set(receipts.map((receipt) => receipt.cloth))].flatMap((card): Diagnostic[] => {
    const ordered = countsAsOrdered(card, project);
    const came = Length.sum(receipts.filter((r) => r.cloth === card).map((r) => r.length));
    if (!ordered.isMoreThan(Length.zero) || !came.isMoreThan(ordered.times(FAR_MORE))) return [];
    const record = cloths.get(card);
    const name = record?.fields.cloth ?? card;
    const text = (length: Length) => lengthOrRolls(length, record, units, "down");
    return [
      diagnostic(
        project.place(["receipts", lastOf(card), "length"]),
        "received-more-than-ordered",
        `Of ${name} ${text(came)} came by these receipts; ${text(ordered)} was ordered.`,
        {
          severity: "warning",
          actual: text(came),
          expected: text(ordered),
          hint: "Measure it again: cutting is planned on the length written here. Write the order that is missing, or returned: at the receipt of what went back.",
        },
      ),
    ];
  });
}
