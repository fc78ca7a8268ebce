import { linearOfChannel } from "../../colour/linear.ts";
import { luminanceOfLinear } from "../../colour/luminance.ts";
import { rgbOfOklab } from "../../colour/oklab.ts";
import type { Separation } from "../palette/clothColours.ts";
import { separateColours } from "../palette/palette.ts";
import type { Pixels } from "../pixels/pixels.ts";

/** Lights and darks on less than this share of the area do not make the contrast. */
const LEAST_SHARE = 0.02;

/**
 * Contrast of a cloth's pattern, 0 to 1: Michelson's (light - dark) / (light + dark) on linear-light Y, between its lightest
 * and darkest colours, each taken where two per cent of the area is lighter or darker. A plain has 0; its weave does not count.
 */
export function contrast(pixels: Pixels): number {
  return contrastOf(separateColours(pixels).separation);
}

/** The contrast of colours that are separated already. */
export function contrastOf({ centres, labels }: Separation): number {
  const total = labels.counts.reduce((sum, n) => sum + n, 0);
  const tones = centres
    .map((lab, g) => ({ y: luminanceOfOklab(lab), share: (labels.counts[g] as number) / total }))
    .sort((a, b) => a.y - b.y);
  const dark = atShare(tones);
  const light = atShare(tones.reverse());
  return light + dark > 0 ? Math.max(0, (light - dark) / (light + dark)) : 0;
}

/** The first tone, from the start of the list, at which the share that counts is reached. */
function atShare(tones: readonly { y: number; share: number }[]): number {
  let sum = 0;
  for (const { y, share } of tones) {
    sum += share;
    if (sum >= LEAST_SHARE) return y;
  }
  return tones.at(-1)?.y ?? 0;
}

function luminanceOfOklab(lab: readonly [number, number, number]): number {
  const [r, g, b] = rgbOfOklab(lab).map((v) => linearOfChannel(Math.min(255, Math.max(0, v))));
  return luminanceOfLinear(r ?? 0, g ?? 0, b ?? 0);
}
