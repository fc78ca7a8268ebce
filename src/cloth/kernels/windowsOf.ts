import type { Field } from "../pixels/field.ts";
import { kernels, layOut } from "./kernels.ts";

/** A field whose windows are multiplied with each other. */
export interface Windows {
  /**
   * Sums of the products of a square window with others of it, one for each place of a square: the numbers of the window's own first
   * place and of the first place of the first other one, how many places are taken along a side, and how far apart.
   */
  products(own: number, first: number, count: number, step: number): Float32Array;
  /** Sums from one row of them to the next. */
  readonly stride: number;
}

/** Windows of a field, compared with `side` times `side` others at a time; good until the kernels are used for something else. */
export function windowsOf({ channels, width, height }: Field, side: number): Windows {
  const places = width * height;
  const stride = 4 * Math.ceil(side / 4);
  const [all, sums] = layOut(3 * places, side * stride) as [Float32Array, Float32Array];
  for (const [c, channel] of channels.entries()) all.set(channel, c * places);
  return {
    stride,
    products(own, first, count, step) {
      const [from, to] = [all.byteOffset, sums.byteOffset];
      kernels.windowProducts(from, places, width, own, first, count, step, side, to);
      return sums;
    },
  };
}
