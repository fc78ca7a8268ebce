import type { Length } from "../../../units/length.ts";

/** A strip whose ends leave less of it than so many times its own width is thrown away. */
const LEAST_WIDTHS = 2;

/** True where a rectangle of this shorter side gives strips that can be joined at all, however long it is. */
export function givesStrips(side: Length, strip: Length, turning: Length): boolean {
  return side.toMm() * Math.SQRT2 - 2 * turning.toMm() * Math.SQRT2 >= LEAST_WIDTHS * strip.toMm();
}

/**
 * What a rectangle truly gives in strips on the bias, joined end to end: cut at 45° both ways from the fold through a corner, each strip
 * as long as its two edges are on the mean, less a turning at either end. Its corners give ever shorter ones, so that a small or narrow
 * rectangle loses more than its share. Geometry, no outside source; a number of millimetres, since the root of two is no fraction.
 */
export function biasLengthMm(
  width: Length,
  height: Length,
  strip: Length,
  turning: Length,
): number {
  const [one, other] = [width.toMm(), height.toMm()];
  const [long, short] = [Math.max(one, other), Math.min(one, other)];
  const wide = strip.toMm();
  // From cut to cut along an edge of the rectangle, and what a turning takes along the strip, whose ends are slanted.
  const step = wide * Math.SQRT2;
  const ends = 2 * turning.toMm() * Math.SQRT2;
  /** Length of the cut that is so far from the corner, along an edge. */
  const cut = (at: number) => Math.min(at, short, long + short - at) * Math.SQRT2;
  let all = 0;
  const add = (from: number, to: number) => {
    const length = (cut(from) + cut(to)) / 2 - ends;
    if (length >= LEAST_WIDTHS * wide) all += length;
  };
  for (let at = short; at + step <= long + short; at += step) add(at, at + step);
  for (let at = short; at - step >= 0; at -= step) add(at - step, at);
  return all;
}
