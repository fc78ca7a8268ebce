import type Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { turningsTooDeep } from "../common/likelySizes.ts";
import type { Notes } from "../common/notes.ts";
import { forShrinkage } from "../common/shrinkage.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import { slotSizes } from "./poleHeadings.ts";
import type { CurtainsFields } from "./schema.ts";

export interface PlainCut {
  readonly heading: Length;
  readonly hem: Length;
  /** Drop, heading, hem and shrinkage; before any repeat. */
  readonly length: Length;
  /** How many times longer the cut is than what it shrinks to; 1 without shrinkage. */
  readonly lengthening: Fraction;
  readonly because: string;
}

/** Plain cut = (drop + heading + hem) ÷ (1 − shrinkage); what the cloth's card says of shrinkage goes before the allowance. */
export function plainCut(
  fields: CurtainsFields,
  drop: Length,
  cloth: ClothFacts,
  context: ItemContext,
  notes: Notes,
): PlainCut {
  const p = (length: Length) => printLength(length, context.units);
  const hem = fields.hem ?? context.length("hem");
  const heading =
    fields["heading-turn"] ??
    (fields.heading === "slot" ? slotSizes(context).turn : context.length("heading"));
  const turnings = {
    hem: { turned: hem, isItems: fields.hem !== undefined },
    "heading-turn": { turned: heading, isItems: fields["heading-turn"] !== undefined },
  };
  notes.diagnostics.push(...turningsTooDeep(turnings, drop, context));
  // Run sideways, the length of the cloth lies across the curtain: its card then says nothing of the drop.
  const ofCard = fields.railroad === true ? undefined : cloth.shrinkage;
  const { length, lengthening, because, rounded } = forShrinkage(
    drop.plus(heading).plus(hem),
    `${p(drop)} drop + ${p(heading)} heading + ${p(hem)} hem`,
    ofCard ?? context.ratio("shrinkage"),
    context.units,
  );
  notes.working.push({
    what: "Cut, without repeat",
    sum: because,
    result: p(length),
    rounded,
  });
  return { heading, hem, length, lengthening, because };
}
