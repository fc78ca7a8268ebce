import type { Length } from "../units/length.ts";
import { printLength, type UnitSystem } from "../units/printLength.ts";
import type { WorkingLine } from "./itemKind.ts";
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
  const p = (length: Length) => printLength(length, units);
  const inner = wholesWords(strips, usableWidth, units);
  return [
    {
      what: "Side strips",
      sum: `(${p(cutWidth)} − ${inner} + ${strips.wholes * 2} × ${p(join)} seams) ÷ 2 + ${p(join)} seam`,
      result: `2 of ${p(strips.strip)}, beside ${strips.wholes === 1 ? "one whole width" : `${strips.wholes} whole widths`}`,
      rounded: null,
    },
  ];
}

/** The whole widths in the middle: `54″`, or `3 × 54″`. */
export function wholesWords(strips: Strips, usableWidth: Length, units: UnitSystem): string {
  const width = printLength(usableWidth, units);
  return strips.wholes === 1 ? width : `${strips.wholes} × ${width}`;
}
