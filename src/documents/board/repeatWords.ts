import { isPlain, type Swatch } from "../../swatches/swatch.ts";
import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";

/** The repeat and how it is matched, in words. */
export function repeatWords(swatch: Swatch, units: UnitSystem): string {
  const repeat = swatch.repeat;
  const runsOn = isPlain(swatch) || swatch.kind === "stripe" || swatch.kind === null;
  if (!repeat && !runsOn && swatch.matched !== false) return "repeat not known";
  if (!repeat || repeat.match === "free") return "nothing to match";
  const size = printLength(Length.mm((Math.round(repeat.upMm * 1000) / 1000).toString()), units);
  if (swatch.kind === "stripe") return `repeat ${size} across`;
  return `repeat ${size}${repeat.match === "half-drop" ? ", half-drop" : ""}`;
}
