import type { Length } from "../../../units/length.ts";
import { printLength, type UnitSystem } from "../../../units/printLength.ts";
import type { WorkingLine } from "../../itemKind.ts";
import type { Strips } from "./joinStrips.ts";

/** The working of side strips beside whole widths; nothing where there are none. */
export function sideStripsWorking(
  strips: Strips,
  cutWidth: Length,
  usableWidth: Length,
  join: Length,
  units: UnitSystem,
): WorkingLine[] {
  if (!strips.strip) return [];
  return [
    {
      what: "Side strips",
      sum: stripSum(strips, cutWidth, usableWidth, join, units),
      result: `2 of ${printLength(strips.strip, units)}, beside ${besideWords(strips, units)}`,
      rounded: null,
    },
  ];
}

/** `one whole width`, or the narrower one with a motif in its middle. */
export function besideWords(strips: Strips, units: UnitSystem): string {
  if (strips.motif)
    return `a middle of ${printLength(strips.middle, units)}, the widest with a motif in its middle`;
  return strips.wholes === 1 ? "one whole width" : `${strips.wholes} whole widths`;
}

/** What each strip comes to: half of what the whole widths and the seams leave, and its own seam. */
export function stripSum(
  strips: Strips,
  cutWidth: Length,
  usableWidth: Length,
  join: Length,
  units: UnitSystem,
): string {
  const p = (length: Length) => printLength(length, units);
  const inner = wholesWords(strips, usableWidth, units);
  return `(${p(cutWidth)} − ${inner} + ${strips.wholes * 2} × ${p(join)} seams) ÷ 2 + ${p(join)} seam`;
}

/** The whole widths in the middle: `54″`, or `3 × 54″`. */
export function wholesWords(strips: Strips, usableWidth: Length, units: UnitSystem): string {
  const width = printLength(strips.motif ? strips.middle : usableWidth, units);
  return strips.wholes === 1 ? width : `${strips.wholes} × ${width}`;
}
