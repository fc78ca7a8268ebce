import { once } from "../once.ts";
import type { ScaledField } from "../pixels/field.ts";
import { gaussian } from "../pixels/gaussian.ts";
import { type Relief, reliefOf } from "../pixels/reliefOf.ts";

/** What wavers in a cloth's lightness and hue, root mean square in Oklab. */
export interface Surface {
  /** All that wavers, grain with it. */
  readonly all: number;
  /** What wavers over more than a grain. */
  readonly texture: number;
  /** What wavers in waves that a grain has not. */
  readonly coarse: number;
}

/** Pixels of the relief over which a weave's grain is gone. */
const GRAIN = 2;

/** The surface of a field; each of its figures is reckoned when it is first asked for, since most patterns are told without. */
export function surfaceOf(field: ScaledField): Surface {
  const relief = once(() => reliefOf(field));
  const all = once(() => rootMeanSquare(relief().channels));
  const texture = once(() => textureOf(relief()));
  const coarse = once(() => {
    const { width, height, channels } = relief();
    return rootMeanSquare(channels.map((channel) => gaussian(channel, width, height, GRAIN)));
  });
  return {
    get all() {
      return all();
    },
    get texture() {
      return texture();
    },
    get coarse() {
      return coarse();
    },
  };
}

/** Over all places, of the channels together. */
function rootMeanSquare(channels: readonly Float32Array[]): number {
  let sum = 0;
  for (const channel of channels)
    for (let p = 0; p < channel.length; p++) sum += (channel[p] as number) ** 2;
  return Math.sqrt(sum / Math.max(1, channels[0]?.length ?? 1));
}

/** The picture against itself a few pixels off: there is no grain in what is left. */
function textureOf({ channels, width, height }: Relief): number {
  let sum = 0;
  for (const off of [4, 5]) {
    let product = 0;
    for (const channel of channels) {
      for (let y = 0; y < height - off; y++) {
        for (let x = 0, p = y * width; x < width - off; x++, p++) {
          const here = channel[p] as number;
          product += here * ((channel[p + off] as number) + (channel[p + off * width] as number));
        }
      }
    }
    sum += product / (4 * (width - off) * (height - off));
  }
  return Math.sqrt(Math.max(0, sum));
}
