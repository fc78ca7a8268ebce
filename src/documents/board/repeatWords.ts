import { isPlain, type Swatch } from "../../swatches/swatch.ts";
import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";

/** The repeat and how it is matched, in words. */
export function repeatWords(swatch: Swatch, units: UnitSystem): string {
  const repeat = swatch.repeat;
  const runsOn = isPlain(swatch) || swatch.kind === "stripe" || swatch.kind === null;
  if (!repeat && !runsOn && swatch.matched !== false) return "repeat not known";
  if (!repeat) return "nothing to match";
  const size = (mm: number) =>
    printLength(Length.mm((Math.round(mm * 1000) / 1000).toString()), units);
  if (swatch.kind === "stripe" && repeat.acrossMm !== null)
    return `repeat ${size(repeat.acrossMm)} across`;
  if (repeat.match === "free") return "nothing to match";
  return `repeat ${size(repeat.upMm)}${repeat.match === "half-drop" ? ", half-drop" : ""}`;
}
