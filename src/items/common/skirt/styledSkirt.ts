import Fraction from "fraction.js";
import { Length } from "../../../units/length.ts";
import type { ItemContext } from "../../itemKind.ts";
import type { Notes } from "../notes.ts";
import { skirtOf } from "./skirtOf.ts";
import type { Skirt, SkirtRun, SkirtStyle } from "./skirtRun.ts";

/** What the fields of a skirt say of its style and cloth. */
export interface SkirtFields {
  readonly cloth: string;
  readonly style?: SkirtStyle | undefined;
  readonly count?: number | undefined;
  readonly railroad?: boolean | undefined;
}

/** Where a skirt runs, and how it ends. */
export interface SkirtPlace {
  readonly runs: readonly SkirtRun[];
  /** Side hems, or the lap, of one run together, and what they are called. */
  readonly ends: Length;
  readonly endsWord: string;
  /** Looked up after the fullness, so that the allowances are listed in the order of the job. */
  readonly drop: () => Length;
}

/** A skirt of its style by the allowances of its kind (`skirtAllowances`); gathered where nothing is said. Null where it cannot be cut. */
export function styledSkirt(
  fields: SkirtFields,
  place: SkirtPlace,
  context: ItemContext,
  notes: Notes,
): Skirt | null {
  const style = fields.style ?? "gathered";
  return skirtOf(
    {
      cloth: fields.cloth,
      runs: place.runs,
      style,
      // Only what is used is asked for, since a default that was used is listed: what is tailored is flat.
      fullness:
        style === "tailored"
          ? new Fraction(1)
          : context.ratio(style === "box-pleat" ? "pleat-fullness" : "fullness"),
      cornerPleat: style === "tailored" ? context.length("corner-pleat") : Length.zero,
      ends: place.ends,
      endsWord: place.endsWord,
      drop: place.drop(),
      hem: context.length("hem"),
      top: context.length("top"),
      join: context.length("join"),
      count: fields.count ?? 1,
      railroad: fields.railroad,
      keyPath: ["cloth"],
    },
    context,
    notes,
  );
}
