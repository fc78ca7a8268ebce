import type { ProjectQuantities } from "../quantities/quantityTypes.ts";
import { clothWaitsFor } from "../quantities/unchosen.ts";
import { isFitted } from "../records/hasReached.ts";
import type { ClothRecord, ProjectRecord } from "../records/records.ts";
import { daysBetween } from "./calendar.ts";

/** How far the sample of a card has come; `returned` is one that went back unapproved. */
export type SampleState = "to-ask-for" | "ordered" | "here" | "approved" | "returned";

/** The same within a project: once all is fitted nobody waits for a sample that was never approved. */
export function sampleStateIn(
  project: ProjectRecord,
  card: ClothRecord,
): SampleState | "not-needed" {
  const state = sampleState(card);
  return isFitted(project) && state !== "approved" ? "not-needed" : state;
}

export function sampleState({ fields: { sample } }: ClothRecord): SampleState {
  if (sample?.approved) return "approved";
  if (sample?.returned) return "returned";
  if (sample?.arrived) return "here";
  return sample?.ordered ? "ordered" : "to-ask-for";
}

/** Days that a sample has been under way, or has lain here unapproved, as of a day; null where nothing is waited for. */
export function daysWaiting(card: ClothRecord, asOf: string): number | null {
  const { sample } = card.fields;
  const state = sampleState(card);
  const since =
    state === "ordered" ? sample?.ordered : state === "here" ? sample?.arrived : undefined;
  return since === undefined ? null : Math.max(0, daysBetween(since, asOf));
}

/** What is still to be known or said before a cloth is ordered. */
export type OpenPoint = "sample" | "choice" | "repeat" | "price" | "supplier";

/** What is still needed before a card is ordered; the client's approval of the whole is the project's, and not among it. */
export function openPoints(card: ClothRecord, quantities: ProjectQuantities): OpenPoint[] {
  const { price, supplier } = card.fields;
  const isUnknown = quantities.cloths.some(
    (c) => c.cloth === card.id && c.facts.repeatUnknown === true,
  );
  const open: readonly [OpenPoint, boolean][] = [
    ["sample", sampleState(card) !== "approved"],
    ["choice", clothWaitsFor(quantities, card.id).length > 0],
    ["repeat", isUnknown],
    ["price", price?.trade === undefined],
    ["supplier", supplier === undefined],
  ];
  return open.filter(([, isOpen]) => isOpen).map(([point]) => point);
}
