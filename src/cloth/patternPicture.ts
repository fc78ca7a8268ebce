import type { Separation } from "./palette/clothColours.ts";
import { hexesOf, type Separated } from "./palette/palette.ts";
import { labelPixels } from "./pixels/labels.ts";
import type { Bytes } from "./pixels/pixels.ts";
import { shrink } from "./pixels/shrink.ts";

/**
 * Longer side of a photograph at which its pattern is read. Colours are told from a finer picture: a floret of a few pixels is half rim
 * there, and all rim here.
 */
export const PATTERN_SIDE_PX = 640;

/** A cloth in even light and its colours, at the size at which a pattern is read. */
export interface PatternPicture {
  readonly even: Bytes;
  readonly mmPerPx: number;
  readonly separation: Separation;
  /** The same as fine as its colours were told from: for bands, some of which are two threads wide. */
  readonly fine: { readonly even: Bytes; readonly mmPerPx: number };
  /** For each colour one that is on the cloth as it stands. */
  readonly hexes: () => string[];
}

/**
 * The separated part of a photograph, `mmPerPx` millimetres to a pixel, made as much smaller as brings the whole, `sidePx` along its
 * longer side, to the size for patterns; never larger.
 */
export function patternPicture(
  separated: Separated,
  mmPerPx: number,
  sidePx: number,
): PatternPicture {
  const { even, separation } = separated;
  const fine = { even, mmPerPx };
  const hexes = () => hexesOf(separated);
  const scale = sidePx / PATTERN_SIDE_PX;
  if (scale <= 1) return { ...fine, separation, fine, hexes };
  const small = shrink(even, even.width / scale, even.height / scale) as Bytes;
  const { centres } = separation;
  const labels = labelPixels(small, Float64Array.from(centres.flat()));
  return {
    even: small,
    mmPerPx: (mmPerPx * even.width) / small.width,
    separation: { centres, labels },
    fine,
    hexes,
  };
}
