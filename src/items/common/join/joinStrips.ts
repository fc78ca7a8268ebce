import type { Length } from "../../../units/length.ts";

/** How a blind wider than its cloth is joined: whole widths with one in the middle, and equal strips at the sides. */
export interface Strips {
  /** Whole widths, an odd number; 0 where the blind is cut from one width without a join. */
  readonly wholes: number;
  /** Cut width of each side strip, its seam included; null where none is needed. */
  readonly strip: Length | null;
  /** Widths of cloth used: two strips may come out of one width. */
  readonly widths: number;
  readonly joins: number;
  /** Cut width of each piece in the middle: the usable width, or less where a motif is to stand in its middle. */
  readonly middle: Length;
  /** Then, from each piece's left edge to the motif in the middle of the whole, on the pattern carried on over the joins; null else. */
  readonly motif: { readonly left: Length; readonly middle: Length; readonly right: Length } | null;
}

/**
 * Never a seam in the middle. Both pieces of a join give up their seam, so a strip is
 * (cut width - (usable width - 2 seams)) / 2 + seam; a strip wider than the cloth takes further whole widths at both sides.
 */
export function planStrips(cutWidth: Length, usableWidth: Length, join: Length): Strips {
  if (!cutWidth.isMoreThan(usableWidth))
    return { wholes: 0, strip: null, widths: 1, joins: 0, middle: usableWidth, motif: null };
  const clear = usableWidth.minus(join.times(2));
  const side = cutWidth.minus(clear).dividedBy(2);
  // A side of more than one width less its inner seam needs whole widths between the middle and the strip.
  const over = side.minus(usableWidth.minus(join)).over(clear).ceil().valueOf();
  const extra = Math.max(0, over);
  const strip = side.minus(clear.times(extra)).plus(join);
  const bothFromOne = !strip.times(2).isMoreThan(usableWidth);
  return {
    wholes: 1 + 2 * extra,
    strip,
    widths: 1 + 2 * extra + (bothFromOne ? 1 : 2),
    joins: 2 * extra + 2,
    middle: usableWidth,
    motif: null,
  };
}
