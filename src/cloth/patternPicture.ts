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
  readonly separation: Separation;
  /** The same as fine as its colours were told from: for bands, some of which are two threads wide. */
  readonly fine: Bytes;
  /** For each colour one that is on the cloth as it stands. */
  readonly hexes: () => string[];
  /** Pixels of the fine picture that one of these stands for, 1 or more. */
  readonly scale: number;
}

/** Makes the separated part of a photograph so small that the whole, `sidePx` along its longer side, would be of the size for patterns. */
export function patternPicture(separated: Separated, sidePx: number): PatternPicture {
  const { even, separation } = separated;
  const hexes = () => hexesOf(separated);
  const scale = sidePx / PATTERN_SIDE_PX;
  if (scale <= 1) return { even, fine: even, separation, hexes, scale: 1 };
  const small = shrink(even, even.width / scale, even.height / scale) as Bytes;
  const { centres } = separation;
  const labels = labelPixels(small, Float64Array.from(centres.flat()));
  return {
    even: small,
    fine: even,
    separation: { centres, labels },
    hexes,
    scale: even.width / small.width,
  };
}
