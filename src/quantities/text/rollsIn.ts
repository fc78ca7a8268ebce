import type { Length } from "../../units/length.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import { clothText } from "./clothText.ts";

/** What a card says of its roll. */
export interface RollCard {
  readonly fields: { readonly roll?: { readonly length: Length } | undefined };
}

/** `5 rolls` of a length that is whole rolls of a card's; null where it is not, or where nothing is sold by the roll. */
export function rollsIn(length: Length, card: RollCard | undefined): string | null {
  const roll = card?.fields.roll?.length;
  if (!roll || roll.isZero() || length.isZero()) return null;
  const count = length.over(roll);
  if (!count.equals(count.floor())) return null;
  const whole = Number(count.valueOf());
  return `${whole} ${whole === 1 ? "roll" : "rolls"}`;
}

/** Whole rolls of what is sold so, else the length as cloth is measured. */
export function lengthOrRolls(
  length: Length,
  card: RollCard | undefined,
  units: UnitSystem,
  to: "up" | "down" = "up",
): string {
  return rollsIn(length, card) ?? clothText(length, units, to);
}
