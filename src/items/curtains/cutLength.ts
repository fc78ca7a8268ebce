import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { finestStep } from "../common/finestStep.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
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

/** Plain cut = (drop + heading + hem) ÷ (1 − shrinkage); up to what can be marked only where shrinkage made it odd. */
export function plainCut(
  fields: CurtainsFields,
  drop: Length,
  context: ItemContext,
  notes: Notes,
): PlainCut {
  const p = (length: Length) => printLength(length, context.units);
  const hem = fields.hem ?? context.length("hem");
  const heading =
    fields["heading-turn"] ??
    (fields.heading === "slot" ? slotSizes(context).turn : context.length("heading"));
  const shrinkage = context.ratio("shrinkage");
  const unshrunk = drop.plus(heading).plus(hem);
  const shrinks = shrinkage.compare(0) > 0;
  const lengthening = new Fraction(1).div(new Fraction(1).sub(shrinkage));
  const length = shrinks ? unshrunk.times(lengthening).upTo(finestStep(context.units)) : unshrunk;
  const sum = `${p(drop)} drop + ${p(heading)} heading + ${p(hem)} hem`;
  const because = shrinks ? `(${sum}) ÷ (1 − ${shrinkage.mul(100).toString()} % shrinkage)` : sum;
  notes.working.push({
    what: "Cut, without repeat",
    sum: because,
    result: p(length),
    rounded: shrinks ? `up to ${context.units === "inches" ? "1/8″" : "1 mm"}` : null,
  });
  return { heading, hem, length, lengthening: shrinks ? lengthening : new Fraction(1), because };
}
