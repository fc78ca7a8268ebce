import { listed, shortened } from "../words/phrases.ts";

/** A letter of a caption's lines below its name takes so much on average, in millimetres. */
export const LETTER_MM = 1.5;

/**
 * Where a cloth goes, for a caption that has one line of `widthMm` left for it: all places, else the first of them and an ellipsis.
 * "Where it goes" has them in full.
 */
export function placesInOneLine(places: readonly string[], widthMm: number): string {
  const letters = Math.max(8, Math.floor(widthMm / LETTER_MM));
  const all = listed(places);
  if (all.length <= letters) return all;
  for (let n = places.length - 1; n > 0; n--) {
    const first = `${places.slice(0, n).join(", ")} …`;
    if (first.length <= letters) return first;
  }
  return shortened(all, letters);
}
