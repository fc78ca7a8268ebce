import type { Field } from "../pixels/field.ts";
import { area, type Basis } from "../repeat/lattice.ts";
import { crossingAlong, softField } from "./kindSigns.ts";

/** A cell is softened by this part of its side: the steps by which a twill climbs then run into a line. */
const SOFT = 1 / 20;
/** And by this part until the lines of a twill are gone, of which a band of a houndstooth has one or two. */
const AFAR = 1 / 6;

/** A field softened by a part of the side of its cell, grain at the least. */
function softBy(part: number, field: Field, cellPx: number): Field {
  return softField(field, Math.max(1, part * cellPx));
}

/** Part of the variance that is a sum of bands up and across once all that is finer than a band is gone, 0 to 1. */
export function sumFromAfar(field: Field, basis: Basis): number {
  return crossingAlong(softBy(AFAR, field, Math.sqrt(area(basis))), basis).sum;
}

/**
 * How far the edges of a picture lean one way rather than the other, -1 to 1: of its gradient (x, y) twice the mean of x times y over
 * the mean of both squares, the picture softened by a part of the side of its cell, in pixels. A pattern that an upright or level
 * mirror or a quarter turn brings onto itself has none, a twill line all.
 */
export function slantOf(field: Field, cellPx: number): number {
  const { width, height, channels } = softBy(SOFT, field, cellPx);
  let [both, squares] = [0, 0];
  for (const channel of channels) {
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
