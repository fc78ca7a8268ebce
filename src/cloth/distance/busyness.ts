import { rgbOfHex } from "../../colour/hex.ts";
import type { Oklab } from "../../colour/oklab.ts";
import { hexOfOklab } from "../../colour/oklab.ts";
import { oklabOfPixels } from "../../colour/oklabOfPixels.ts";
import type { Separation } from "../palette/clothColours.ts";
import type { Pixels } from "../pixels/pixels.ts";
import { shrink } from "../pixels/shrink.ts";

/** Finest thing that counts, in millimetres: what is finer is texture across a room. */
const FINEST_MM = 4;
/** Change over 100 mm, in Oklab, of a cloth of middling busyness. */
const MIDDLING = 1.2;

/**
 * How busy a cloth is, 0 (a plain) to 1: the change of colour that the eye meets along 100 mm of it, across and down, as the sum
 * of the steps in Oklab between its separated colours, seen without what is finer than 4 mm. Half is `MIDDLING`, about what a
 * gingham of 25 mm in middling contrast has. Our own measure, no source.
 */
export function busynessOf(
  { width, height }: Pixels,
  { centres, labels }: Separation,
  mmPerPx: number,
): number {
  if (centres.length < 2) return 0;
  const inks = Uint8Array.from(centres.flatMap((lab: Oklab) => rgbOfHex(hexOfOklab(lab))));
  const { label } = labels;
  const data = new Uint8Array(label.length * 3);
  for (let p = 0, i = 0; p < label.length; p++, i += 3) {
    const ink = (label[p] as number) * 3;
    data[i] = inks[ink] as number;
    data[i + 1] = inks[ink + 1] as number;
    data[i + 2] = inks[ink + 2] as number;
  }
  const factor = Math.max(1, FINEST_MM / mmPerPx);
  const flat = shrink({ width, height, data }, width / factor, height / factor);
  const oklab = oklabOfPixels(flat.data);
  const mm = (mmPerPx * width) / flat.width;
  const across = steps(oklab, flat.width, flat.height, 1, flat.width);
  const down = steps(oklab, flat.height, flat.width, flat.width, 1);
  const per100 = (((across + down) / 2) * 100) / mm;
  return per100 / (per100 + MIDDLING);
}

/** Mean step between neighbours along lines of `count` places, `step` apart, lines `between` apart. */
function steps(
  oklab: Float32Array,
  count: number,
  lines: number,
  step: number,
  between: number,
): number {
  let sum = 0;
  for (let line = 0; line < lines; line++) {
    for (let i = 0; i < count - 1; i++) {
      const p = (line * between + i * step) * 3;
      const q = p + step * 3;
      const l = (oklab[p] as number) - (oklab[q] as number);
      const a = (oklab[p + 1] as number) - (oklab[q + 1] as number);
      const b = (oklab[p + 2] as number) - (oklab[q + 2] as number);
      sum += Math.sqrt(l * l + a * a + b * b);
    }
  }
  return count > 1 ? sum / (lines * (count - 1)) : 0;
}
