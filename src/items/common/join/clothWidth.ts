import { diagnostic } from "../../../diagnostics/diagnostic.ts";
import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { ClothFacts, ItemContext } from "../../itemKind.ts";
import type { Notes } from "../notes.ts";

/**
 * Usable width of an item's cloth. Null where there is no such cloth, or where its card gives no width; then with a diagnostic at
 * `key`, which `unknown` ends: "… has no width, so ".
 */
export function clothWidth(
  cloth: ClothFacts | null,
  key: string,
  unknown: string,
  context: ItemContext,
  notes: Notes,
): Length | null {
  if (cloth === null || cloth.usableWidth !== null) return cloth?.usableWidth ?? null;
  notes.diagnostics.push(
    diagnostic(
      context.place([key]),
      "cloth-without-width",
      `${cloth.name} has no width, so ${unknown}.`,
      {
        actual: cloth.id,
        expected: "a usable width",
        // The face is what most often lacks it: there the hint shows how it is written.
        hint: `Write width: in the card of ${cloth.id}${key === "cloth" ? ', for example 54" or 137 cm' : ""}.`,
      },
    ),
  );
  return null;
}

/** Says at `key` that a cloth is used up by the two turnings of a join. */
export function narrowerThanJoins(
  cloth: ClothFacts,
  usableWidth: Length,
  join: Length,
  context: ItemContext,
  notes: Notes,
  key = "cloth",
): void {
  const p = (length: Length) => printLength(length, context.units);
  notes.diagnostics.push(
    diagnostic(
      context.place([key]),
      "cloth-narrower-than-joins",
      `${cloth.name} is ${p(usableWidth)} wide, which two join turnings of ${p(join)} use up.`,
      {
        actual: p(usableWidth),
        hint: "Look at the width on its card, or at the allowance join.",
      },
    ),
  );
}
