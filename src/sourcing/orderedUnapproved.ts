import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import { isFitted } from "../records/hasReached.ts";
import type { ProjectRecord, Records } from "../records/records.ts";
import { isSampled } from "./leadTimes.ts";
import { sampleState } from "./samples.ts";

/** A warning at the first order of each card whose sample nobody has approved; none once all is fitted, when no cutting of the lot helps. */
export function orderedUnapproved(
  project: ProjectRecord,
  { cloths }: Pick<Records, "cloths">,
): Diagnostic[] {
  if (isFitted(project)) return [];
  const orders = project.fields.orders ?? [];
  return [...new Set(orders.map((order) => order.cloth))].flatMap((id): Diagnostic[] => {
    const card = cloths.get(id);
    if (!card || !isSampled(card) || sampleState(card) === "approved") return [];
    const at = orders.findIndex((order) => order.cloth === id);
    return [
      diagnostic(
        project.place(["orders", at, "cloth"]),
        "ordered-unapproved",
        `${card.fields.cloth} was ordered on ${orders[at]?.on}, and its sample is not approved.`,
        {
          severity: "warning",
          hint: "Have a cutting of the lot approved before it is cut, and write approved: with the day under sample on its card.",
        },
      ),
    ];
  });
}
