import sharp from "sharp";
import type { Bytes } from "../../cloth/pixels/pixels.ts";

/** A step on a photograph, in its pixels: right and down. */
export type Step = readonly [x: number, y: number];

/** A picture's fine differences of light, small: what is compared, since slow shades say nothing of a pattern. */
interface Detail {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
  /** Pixels of it to one of the photograph. */
  readonly scale: number;
}

/** A step that was found, and how well the cloth agrees with itself there: one is wholly. */
export interface FoundStep {
  readonly step: Step;
  readonly agrees: number;
}

/** How far about a step it is looked for, as parts of its length: along it and across it (a photograph may be turned by hand). */
export interface Search {
  readonly along: number;
  readonly across: number;
}

const COARSE_PX = 280;
const FINE_PX = 1100;
/** A step is trusted where at least so much of the picture's width and height lies on both its ends. */
const LEAST_OVERLAP = 0.015;
const LEAST_OVERLAP_PX = 8;

/** The detail of raw RGB pixels, its longer side at most `px`. */
async function detailOf({ data, width, height }: Bytes, px: number): Promise<Detail> {
  const scale = Math.min(1, px / Math.max(width, height));
  const [w, h] = [Math.max(1, Math.round(width * scale)), Math.max(1, Math.round(height * scale))];
  const grey = await sharp(data, { raw: { width, height, channels: 3 } })
    .resize(w, h, { fit: "fill", kernel: "cubic" })
    .greyscale()
    .raw()
    .toBuffer();
  const slow = await sharp(grey, { raw: { width: w, height: h, channels: 1 } })
    .blur(Math.max(1, Math.max(w, h) / 28))
    .greyscale()
    .raw()
    .toBuffer();
  // A loop: `Float32Array.from` with a function takes many times as long.
  const values = new Float32Array(grey.length);
  for (let i = 0; i < values.length; i++) values[i] = (grey[i] as number) - (slow[i] as number);
  return { width: w, height: h, values, scale };
}

/** The correlation of a picture with itself a whole step further on, over all places that have both; null where too few have. */
function agreement(d: Detail, dx: number, dy: number): number | null {
  const x0 = Math.max(0, -dx);
  const x1 = Math.min(d.width, d.width - dx);
  const y0 = Math.max(0, -dy);
  const y1 = Math.min(d.height, d.height - dy);
  const least = (side: number): number =>
    Math.max(LEAST_OVERLAP * side, LEAST_OVERLAP_PX * d.scale);
  if (x1 - x0 < least(d.width) || y1 - y0 < least(d.height)) return null;
  // Enough places for a sure answer, however large the picture.
  const stride = Math.max(1, Math.floor(Math.sqrt(((x1 - x0) * (y1 - y0)) / 40_000)));
  const { values, width } = d;
  let [pq, pp, qq] = [0, 0, 0];
  for (let y = y0; y < y1; y += stride) {
    const from = y * width;
    const to = (y + dy) * width + dx;
    for (let x = x0; x < x1; x += stride) {
      const p = values[from + x] as number;
      const q = values[to + x] as number;
      pq += p * q;
      pp += p * p;
      qq += q * q;
    }
  }
  return pp > 0 && qq > 0 ? pq / Math.sqrt(pp * qq) : null;
}

/** The best whole step near one, within `reach` to each side; null where none has overlap enough. */
function best(
  d: Detail,
  near: Step,
  reach: readonly [x: number, y: number],
): { dx: number; dy: number; agrees: number } | null {
  let found: { dx: number; dy: number; agrees: number } | null = null;
  const [cx, cy] = [Math.round(near[0]), Math.round(near[1])];
  for (let dy = cy - reach[1]; dy <= cy + reach[1]; dy++)
    for (let dx = cx - reach[0]; dx <= cx + reach[0]; dx++) {
      const agrees = agreement(d, dx, dy);
      if (agrees !== null && (!found || agrees > found.agrees)) found = { dx, dy, agrees };
    }
  return found;
}

/** The top of a parabola through three values one apart, from the middle one: between -1/2 and 1/2. */
function top(before: number | null, at: number, after: number | null): number {
  if (before === null || after === null) return 0;
  const bend = before - 2 * at + after;
  return bend < 0 ? Math.max(-0.5, Math.min(0.5, (before - after) / (2 * bend))) : 0;
}

/**
 * Looks for the steps at which a photograph agrees with itself, near the steps that it should have by its card. A photograph that is
 * a little turned, or shows a little more than was said, has them elsewhere. Null for a step that too little of the picture can tell of.
 */
export async function stepFinder(
  picture: Bytes,
): Promise<(wanted: Step, search: Search) => FoundStep | null> {
  const coarse = await detailOf(picture, COARSE_PX);
  const fine = await detailOf(picture, FINE_PX);
  return (wanted, search) => {
    const length = Math.hypot(...wanted);
    const level = Math.abs(wanted[0]) >= Math.abs(wanted[1]);
    const reach = (part: number): number => Math.max(2, Math.ceil(part * length * coarse.scale));
    const [along, across] = [reach(search.along), reach(search.across)];
    const rough = best(
      coarse,
      [wanted[0] * coarse.scale, wanted[1] * coarse.scale],
      level ? [along, across] : [across, along],
    );
    if (!rough) return null;
    const up = fine.scale / coarse.scale;
    const near = Math.ceil(up) + 1;
    const sharp = best(fine, [rough.dx * up, rough.dy * up], [near, near]);
    if (!sharp) return null;
    const { dx, dy, agrees } = sharp;
    const x = dx + top(agreement(fine, dx - 1, dy), agrees, agreement(fine, dx + 1, dy));
    const y = dy + top(agreement(fine, dx, dy - 1), agrees, agreement(fine, dx, dy + 1));
    return { step: [x / fine.scale, y / fine.scale], agrees };
  };
}
