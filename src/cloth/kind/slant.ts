import type { Field } from "../pixels/field.ts";
import { gaussian } from "../pixels/gaussian.ts";

/** A cell is softened by this part of its side: the steps by which a twill climbs then run into a line. */
const SOFT = 1 / 20;

/**
 * How far the edges of a picture lean one way rather than the other, -1 to 1: of its gradient (x, y) twice the mean of x times y over
 * the mean of both squares, the picture softened by a part of the side of its cell, in pixels. A pattern that an upright or level mirror or a quarter turn brings onto itself has none, a twill line all.
 */
export function slantOf({ width, height, channels }: Field, cellPx: number): number {
  let [both, squares] = [0, 0];
  for (const sharp of channels) {
    const channel = gaussian(sharp, width, height, Math.max(1, SOFT * cellPx));
    for (let y = 1; y < height - 1; y++) {
      for (let x = 1; x < width - 1; x++) {
        const p = y * width + x;
        const right = (channel[p + 1] as number) - (channel[p - 1] as number);
        const down = (channel[p + width] as number) - (channel[p - width] as number);
        both += right * down;
        squares += right * right + down * down;
      }
    }
  }
  return squares > 0 ? (2 * both) / squares : 0;
}
