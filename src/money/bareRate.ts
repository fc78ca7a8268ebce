import { type Diagnostic, diagnostic, type Place } from "../diagnostics/diagnostic.ts";
import type { Rate } from "../fields/amountField.ts";
import type { PricedItem } from "./purchase.ts";

/**
 * A warning where a maker's rate is a bare sum for a kind that is as often paid by something else: `48` at curtains is taken to be
 * for a pair, and is more likely meant for a width. Said once of each rate. Empty where the kind is only counted by the item.
 */
export function bareRate(
  rate: Rate,
  priced: PricedItem,
  place: Place,
  found: readonly Diagnostic[],
): Diagnostic[] {
  const others = Object.keys(priced.makingCounts).filter((unit) => unit !== "item");
  if (!rate.bare || others.length === 0) return [];
  // An area is written in either unit, by studios of both.
  const [first = ""] = others;
  const meant = first.startsWith("square-")
    ? others.filter((u) => u.startsWith("square-"))
    : [first];
  const said = diagnostic(
    place,
    "rate-without-unit",
    `“${rate.decimal}” does not say what it is for: per item is taken.`,
    {
      severity: "warning",
      actual: rate.decimal,
      expected: ["item", ...others].map((unit) => `per ${unit}`).join(", "),
      hint: `Write ${rate.decimal} per ${meant.join(" or per ")}, or ${rate.decimal} per item if that is what it is.`,
    },
  );
  const isSaid = found.some(
    (d) =>
      d.code === said.code &&
      d.file === said.file &&
      d.line === said.line &&
      d.column === said.column,
  );
  return isSaid ? [] : [said];
}
