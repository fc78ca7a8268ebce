import sharp from "sharp";
import { leastSquares } from "../../cloth/pixels/leastSquares.ts";
import type { Bytes } from "../../cloth/pixels/pixels.ts";
import { LINEAR_OF_BYTE } from "../../colour/linear.ts";
import type { Step } from "./findStep.ts";

/** How much brighter a place must be made for the light to be as it is in the picture's middle; places from -1 to 1. */
export type Gain = (u: number, v: number) => number;

/** The gain of a picture whose light is even. */
export const EVEN: Gain = () => 1;

const SMALL_PX = 96;
/** Keeps at rest what the places cannot tell; the bend of the light is told by few places where a picture shows little over one step. */
const RIDGE = 3e-4;
/** A photograph's light never varies so much that more than this would be put right. */
const MOST = 0.5;

/** Terms of a light that leans and bends, about the middle; places from -1 to 1. */
const terms = (u: number, v: number): number[] => [u, v, u * u, u * v, v * v];

/**
 * The light that falls over a photograph, as a smooth surface through the logarithm of its light. Where the cloth comes again by
 * steps, only places one step apart are compared, which show the same of the pattern, so that what is dark in the pattern stays so;
 * a plain is compared with itself everywhere. Raw RGB, in linear light.
 */
export async function lightBySteps(
  { data, width, height }: Bytes,
  steps: readonly Step[],
): Promise<Gain> {
  const scale = SMALL_PX / Math.max(width, height);
  const [w, h] = [Math.max(2, Math.round(width * scale)), Math.max(2, Math.round(height * scale))];
  const small = await sharp(data, { raw: { width, height, channels: 3 } })
    .resize(w, h, { fit: "fill", kernel: "cubic" })
    .blur(1)
    .greyscale()
    .raw()
    .toBuffer();
  const light = Float64Array.from(small, (v) =>
    Math.log(Math.max(0.002, LINEAR_OF_BYTE[v] as number)),
  );
  const at = (x: number, y: number): readonly [u: number, v: number] => [
    (2 * (x + 0.5)) / w - 1,
    (2 * (y + 0.5)) / h - 1,
  ];
  const fit = leastSquares(steps.length > 0 ? 6 : 7, RIDGE);
  if (steps.length === 0) {
    for (let y = 0; y < h; y++)
      for (let x = 0; x < w; x++)
        fit.add([1, 1, ...terms(...at(x, y))].slice(0, 7), light[y * w + x] as number);
  } else {
    for (const [sx, sy] of steps) {
      const [dx, dy] = [Math.round(sx * scale), Math.round(sy * scale)];
      for (let y = Math.max(0, -dy); y < Math.min(h, h - dy); y++)
        for (let x = Math.max(0, -dx); x < Math.min(w, w - dx); x++) {
          const here = terms(...at(x, y));
          const there = terms(...at(x + dx, y + dy));
          const change = (light[(y + dy) * w + x + dx] as number) - (light[y * w + x] as number);
          fit.add([0, ...there.map((t, k) => t - (here[k] as number))], change);
        }
    }
  }
  const found = fit.solve();
  const c = (found ?? []).slice(-5);
  if (c.length < 5 || c.some((v) => !Number.isFinite(v))) return EVEN;
  const [cu, cv, cuu, cuv, cvv] = c as [number, number, number, number, number];
  return (u, v) => {
    const log = cu * u + cv * v + cuu * u * u + cuv * u * v + cvv * v * v;
    return Math.exp(-Math.max(-MOST, Math.min(MOST, log)));
  };
}
