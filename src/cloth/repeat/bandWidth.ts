import type { Pixels } from "../pixels/pixels.ts";

/** Part of the strongest band's difference from the ground at which a band begins. */
const EDGE = 0.35;

/**
 * Width of the bands of a stripe in pixels, the mean over the area that they cover: the picture is averaged along the run into
 * one line across it, the commonest colour of the line is the ground, and what stands off it are the bands, which may be woven
 * of dots. Null where the line shows no whole band. `directionDeg` is the run, anticlockwise from horizontal.
 */
export function bandWidth(
  { width, height }: Pixels,
  oklab: Float32Array,
  directionDeg: number,
): number | null {
  const turn = ((directionDeg - 90) * Math.PI) / 180;
  const [ax, ay] = [Math.cos(turn), -Math.sin(turn)];
  const line = profile(width, height, oklab, ax, ay);
  const ground = commonest(line);
  const off = line.map((v) => distance(v, ground));
  const most = Math.max(...off);
  const runs: number[] = [];
  let start = -1;
  for (let i = 0; i < off.length; i++) {
    const inBand = (off[i] as number) > EDGE * most;
    if (inBand && start < 0) start = i;
    if (!inBand && start >= 0) {
      // A band cut by the border has no whole width.
      if (start > 0) runs.push(i - start);
      start = -1;
    }
  }
  const total = runs.reduce((sum, w) => sum + w, 0);
  return total > 0 ? runs.reduce((sum, w) => sum + w * w, 0) / total : null;
}

type Mean = readonly [number, number, number];

/** Mean Oklab at each place across the run. */
function profile(
  width: number,
  height: number,
  oklab: Float32Array,
  ax: number,
  ay: number,
): Mean[] {
  const corners = [0, (width - 1) * ax, (height - 1) * ay, (width - 1) * ax + (height - 1) * ay];
  const first = Math.min(...corners);
  const count = Math.ceil(Math.max(...corners) - first) + 1;
  const sums = new Float64Array(count * 4);
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0; x < width; x++, p++) {
      const place = x * ax + y * ay - first;
      // Shared between the two nearest places, so that none is left out.
      const low = Math.min(count - 2, Math.floor(place));
      for (const [at, w] of [
        [low, 1 - (place - low)],
        [low + 1, place - low],
      ] as const) {
        (sums[at * 4] as number) += w;
        for (let c = 0; c < 3; c++)
          (sums[at * 4 + 1 + c] as number) += w * (oklab[p * 3 + c] as number);
      }
    }
  }
  const line: Mean[] = [];
  // Corners of a slanting stripe hold few pixels and would be all grain.
  const least = 0.15 * Math.min(width, height);
  for (let i = 0; i < count; i++) {
    const n = sums[i * 4] as number;
    if (n < least) continue;
    line.push([
      (sums[i * 4 + 1] as number) / n,
      (sums[i * 4 + 2] as number) / n,
      (sums[i * 4 + 3] as number) / n,
    ]);
  }
  return line;
}

/** The value with the most others near it. */
function commonest(line: readonly Mean[]): Mean {
  let best: Mean = line[0] ?? [0, 0, 0];
  let most = -1;
  for (const one of line) {
    const near = line.filter((other) => distance(one, other) < 0.04).length;
    if (near > most) {
      most = near;
      best = one;
    }
  }
  return best;
}

function distance(a: Mean, b: Mean): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
