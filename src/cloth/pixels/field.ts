import type { Oklab } from "../../colour/oklab.ts";
import { oklabOfPixels } from "../../colour/oklabOfPixels.ts";
import type { Pixels } from "./pixels.ts";
import { shrink } from "./shrink.ts";

/** Three channels of a picture: lightness, green-red, blue-yellow. */
export interface Field {
  readonly width: number;
  readonly height: number;
  readonly channels: readonly [Float32Array, Float32Array, Float32Array];
}

/** A field with the pixels of the picture that one of its own stands for. */
export interface ScaledField extends Field {
  readonly scale: number;
}

/** Width, in pixels, at which a repeat is looked for. */
export const FIELD_WIDTH = 280;
/** Hue steps count double in Oklab here: a pattern of equal lightness is a pattern all the same. */
const HUE_WEIGHT = 2;

/** A colour in a field's channels. */
export function channelsOf([l, a, b]: Oklab): [l: number, a: number, b: number] {
  return [l, HUE_WEIGHT * a, HUE_WEIGHT * b];
}

/** The colour whose channels these are. */
export function oklabOfChannels([l = 0, a = 0, b = 0]: readonly number[]): Oklab {
  return [l, a / HUE_WEIGHT, b / HUE_WEIGHT];
}

/** A picture's three channels in Oklab, at most so many pixels wide. */
export function fieldOf(pixels: Pixels, widthPx = FIELD_WIDTH): ScaledField {
  const factor = Math.max(1, pixels.width / widthPx);
  const small = shrink(pixels, pixels.width / factor, pixels.height / factor);
  const { width, height } = small;
  const oklab = oklabOfPixels(small.data);
  const channel = (c: number) => {
    const values = new Float32Array(width * height);
    const weight = c === 0 ? 1 : HUE_WEIGHT;
    for (let p = 0; p < values.length; p++) values[p] = weight * (oklab[p * 3 + c] as number);
    return values;
  };
  return {
    width,
    height,
    channels: [channel(0), channel(1), channel(2)],
    scale: pixels.width / width,
  };
}
