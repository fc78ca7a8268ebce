import { printLength, type UnitSystem } from "../../units/printLength.ts";
import type { ClothFacts } from "../itemKind.ts";

/**
 * What a hint adds where a motif in the middle does not fit and its place across the cloth is only assumed: the card may mend it. Empty
 * where the card says how far the first motif's middle stands from the selvedge.
 */
export function motifPlaceWords({ repeat, name }: ClothFacts, units: UnitSystem): string {
  const across = repeat?.across;
  if (!across || repeat.fromSelvedge !== null) return "";
  const half = printLength(across.dividedBy(2), units);
  return ` That rests on the middle of the first motif standing ${half}, half the repeat, from the left selvedge: measure it on ${name}, and write it on its card as repeat: from-selvedge.`;
}
