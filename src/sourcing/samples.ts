import type { ClothRecord } from "../records/records.ts";
import { daysBetween } from "./calendar.ts";

/** How far the sample of a card has come: the last that its file says. */
export type SampleState = "to-ask-for" | "ordered" | "here" | "approved" | "returned";

export function sampleState({ fields: { sample } }: ClothRecord): SampleState {
  if (sample?.returned) return "returned";
  if (sample?.approved) return "approved";
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
