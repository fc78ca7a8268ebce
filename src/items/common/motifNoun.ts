import { printLength, type UnitSystem } from "../../units/printLength.ts";
import type { ClothFacts } from "../itemKind.ts";

/** What stands in the middle of a centred piece: on cloth that repeats across alone a stripe, else a motif. */
export function motifNoun(cloth: ClothFacts | null): "motif" | "stripe" {
  return cloth?.repeat?.match === "free" && cloth.repeat.across ? "stripe" : "motif";
}

/** Which of its stripes that is: `the one whose middle lies 4.5 cm from the left selvedge, or its like`; null for a cloth with motifs. */
export function whichStripe(cloth: ClothFacts | null, units: UnitSystem): string | null {
  const across = cloth?.repeat?.across;
  if (!across || motifNoun(cloth) === "motif") return null;
  const middle = cloth?.repeat?.fromSelvedge ?? across.dividedBy(2);
  return `the one whose middle lies ${printLength(middle, units)} from the left selvedge, or its like`;
}

/** The note beside a lozenge, on two lines. */
export function centredNote(cloth: ClothFacts | null, language: "en-US" | "en-GB"): string {
  return `${motifNoun(cloth)}\n${language === "en-US" ? "centered" : "centred"}`;
}
