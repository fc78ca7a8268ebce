import Fraction from "fraction.js";

/** An area in exact square millimetres as the square metres and square feet that makers charge by (a foot is 304.8 mm: ISO 31-1). */
export function areaCounts(areaMm2: Fraction): {
  readonly "square-metre": Fraction;
  readonly "square-foot": Fraction;
} {
  return {
    "square-metre": areaMm2.div(1_000_000),
    "square-foot": areaMm2.div(new Fraction("304.8").pow(2) as Fraction),
  };
}
