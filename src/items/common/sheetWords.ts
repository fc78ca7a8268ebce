import { capital } from "../../units/capital.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import type { SheetGroup } from "../itemDrawing.ts";

/** Lines of a sheet, those left out that do not hold for the item: a condition that fails gives none. */
export function linesOf(parts: readonly (string | null | false | undefined)[]): string[] {
  return parts.filter((part): part is string => Boolean(part));
}

/** The groups of a sheet that say something. */
export function filledGroups(groups: readonly SheetGroup[]): SheetGroup[] {
  return groups.filter(({ lines }) => lines.length > 0);
}

/** What stands behind the blank that a maker writes a measure in: its unit. */
export function blankUnit(units: UnitSystem): string {
  return units === "inches" ? "\u2033" : "cm";
}

/** The same behind the blank for a weight. */
export function weightUnit(units: UnitSystem): string {
  return units === "inches" ? "lb" : "kg";
}

/** One line for each piece of hardware, its number before it where there are more than one. */
export function hardwareLines(
  hardware: readonly { readonly what: string; readonly count?: number | undefined }[] | undefined,
): string[] {
  return (hardware ?? []).map(
    ({ what, count }) => `${count && count > 1 ? `${count} × ${what}` : capital(what)}.`,
  );
}
