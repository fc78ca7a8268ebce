import { oklabOfPixels } from "../../colour/oklabOfPixels.ts";
import type { Pixels } from "../pixels/pixels.ts";
import { shrinkToSide } from "../pixels/shrink.ts";

/** Longer side that the search is made at. */
const SIDE = 160;
/** The motif stands out from what surrounds it, in a window so many times its size. */
const AROUND = 1.7;
/** Oklab distance from the mean that counts half: a solid flower tells more than a few dark leaves. */
const HALF = 0.12;

/** Running mean over a square window of `radius`, along one axis. */
function boxBlur(
  values: Float32Array,
  width: number,
  height: number,
  radius: number,
): Float32Array {
  const pass = (
    from: Float32Array,
    step: number,
    count: number,
    lines: number,
    lineStep: number,
  ): Float32Array => {
    const out = new Float32Array(from.length);
    for (let line = 0; line < lines; line++) {
      const base = line * lineStep;
      let sum = 0;
      let n = 0;
      for (let i = 0; i < Math.min(radius, count); i++) {
        sum += from[base + i * step] as number;
        n++;
      }
      for (let i = 0; i < count; i++) {
        if (i + radius < count) {
          sum += from[base + (i + radius) * step] as number;
          n++;
        }
        if (i - radius - 1 >= 0) {
          sum -= from[base + (i - radius - 1) * step] as number;
          n--;
        }
        out[base + i * step] = sum / n;
      }
    }
    return out;
  };
  return pass(pass(values, 1, width, height, width), width, height, width, 1);
}

/**
 * The middle of the most telling motif, as parts of the picture's width and height: where, within a window of the motif's size that
 * lies wholly in the picture, most of it stands off the picture's mean colour (Oklab, chroma counted twice), more than what is
 * around it does. Null for a motif that does not fit. It chooses a crop for a board; nothing is cut by it.
 */
export function motifCentre(
  pixels: Pixels,
  motifMm: number,
  mmPerPx: number,
): { x: number; y: number } | null {
  const small = shrinkToSide(pixels, SIDE);
  const { width, height } = small;
  const ratio = width / pixels.width;
  const radius = Math.round((motifMm / mmPerPx) * ratio * 0.5);
  if (radius < 1 || radius * 2 >= width || radius * 2 >= height) return null;
  const lab = oklabOfPixels(small.data);
  const n = width * height;
  const mean = [0, 0, 0];
  for (let i = 0; i < n * 3; i++) mean[i % 3] = (mean[i % 3] as number) + (lab[i] as number) / n;
  const stands = new Float32Array(n);
  for (let i = 0; i < n; i++) {
    const dl = (lab[i * 3] as number) - (mean[0] as number);
    const da = 2 * ((lab[i * 3 + 1] as number) - (mean[1] as number));
    const db = 2 * ((lab[i * 3 + 2] as number) - (mean[2] as number));
    const away = dl * dl + da * da + db * db;
    stands[i] = away / (away + HALF * HALF);
  }
  const inner = boxBlur(stands, width, height, radius);
  const around = boxBlur(stands, width, height, Math.round(radius * AROUND));
  let best = -1;
  let at = -1;
  for (let y = radius; y < height - radius; y++) {
    for (let x = radius; x < width - radius; x++) {
      // Of equally telling places the one nearest to the middle, so that its neighbours show too.
      const away = Math.hypot(x / width - 0.5, y / height - 0.5);
      const own = inner[y * width + x] as number;
      const worth = (2 * own - (around[y * width + x] as number)) * (1 - 0.25 * away);
      if (worth > best) {
        best = worth;
        at = y * width + x;
      }
    }
  }
  return at < 0
    ? null
    : { x: ((at % width) + 0.5) / width, y: (Math.floor(at / width) + 0.5) / height };
}
