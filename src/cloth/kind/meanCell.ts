import type { Field } from "../pixels/field.ts";
import type { Shift } from "../repeat/lattice.ts";

/** Places along each side of a mean cell. */
export const CELL_SIDE = 128;
/** Most cells that are laid over each other, those nearest to the middle of the picture. */
const MOST_CELLS = 16;
/** A cell is looked for within this part of its side: perspective moves it. */
const LOOSE = 0.06;
/** Part of a cell that must be seen. */
const COVERED = 0.9;
/** Places along a side that are compared when a cell is looked for. */
const LOOKED = 16;

/** One cell of a repeat, the mean of all that are seen: grain, weave and uneven light go out of it. */
export interface MeanCell {
  /** Rows run along the second vector of the basis, places in a row along the first; each channel wavers about nought. */
  readonly channels: readonly [Float32Array, Float32Array, Float32Array];
  /** Covariance between the cells over the variance within one, -1 to 1: how far the cells are one cell. */
  readonly agreement: number;
  readonly cells: number;
}

/** Lays the cells of a lattice over each other, each where it fits best; null where the picture holds less than one. */
export function meanCell(field: Field, [a, b]: readonly [Shift, Shift]): MeanCell | null {
  const { width, height } = field;
  const [mx, my] = [(width - 1) / 2, (height - 1) / 2];
  const rim = 0.5 * Math.min(Math.hypot(...a), Math.hypot(...b));
  const places: { x: number; y: number }[] = [];
  for (let i = -8; i <= 8; i++) {
    for (let j = -8; j <= 8; j++) {
      // The corner of each cell, the first one's middle at the picture's.
      const x = mx + (i - 0.5) * a[0] + (j - 0.5) * b[0];
      const y = my + (i - 0.5) * a[1] + (j - 0.5) * b[1];
      const [cx, cy] = [x + (a[0] + b[0]) / 2, y + (a[1] + b[1]) / 2];
      // Of a cell that is cut by the rim the part that is seen counts as well.
      if (cx > -rim && cy > -rim && cx < width + rim && cy < height + rim) places.push({ x, y });
    }
  }
  const fromMiddle = ({ x, y }: { x: number; y: number }) =>
    Math.hypot(x + (a[0] + b[0]) / 2 - mx, y + (a[1] + b[1]) / 2 - my);
  places.sort((p, q) => fromMiddle(p) - fromMiddle(q));
  const n = CELL_SIDE * CELL_SIDE;
  const sums = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  const squares = new Float64Array(n);
  const counts = new Uint16Array(n);
  const side = Math.sqrt(Math.abs(a[0] * b[1] - a[1] * b[0]));
  const reach = Math.min(5, Math.max(1, Math.round(LOOSE * side)));
  let cells = 0;
  for (const place of places.slice(0, MOST_CELLS)) {
    const [dx, dy] = cells === 0 ? [0, 0] : bestFit(field, place, a, b, sums, counts, reach);
    for (let v = 0, k = 0; v < CELL_SIDE; v++) {
      for (let u = 0; u < CELL_SIDE; u++, k++) {
        const x = place.x + dx + (u * a[0] + v * b[0]) / CELL_SIDE;
        const y = place.y + dy + (u * a[1] + v * b[1]) / CELL_SIDE;
        if (x < 0 || y < 0 || x > width - 1 || y > height - 1) continue;
        for (let c = 0; c < 3; c++) {
          const value = sample(field, c, x, y);
          const sum = sums[c] as Float64Array;
          sum[k] = (sum[k] as number) + value;
          squares[k] = (squares[k] as number) + value * value;
        }
        counts[k] = (counts[k] as number) + 1;
      }
    }
    cells++;
  }
  return cells > 0 ? finish(sums, squares, counts, cells) : null;
}

function finish(
  sums: readonly Float64Array[],
  squares: Float64Array,
  counts: Uint16Array,
  cells: number,
): MeanCell | null {
  const n = counts.length;
  const covered = counts.filter((count) => count > 0).length;
  if (covered < COVERED * n) return null;
  const channels = sums.map((sum) =>
    Float32Array.from(sum, (s, k) => s / Math.max(1, counts[k] as number)),
  );
  const means = channels.map((channel) => channel.reduce((s, v) => s + v, 0) / covered);
  let [together, within, used] = [0, 0, 0];
  for (let k = 0; k < n; k++) {
    const count = counts[k] as number;
    if (count < 2) continue;
    let [whole, own] = [0, squares[k] as number];
    for (let c = 0; c < 3; c++) {
      const [sum, mean] = [sums[c]?.[k] as number, means[c] as number];
      whole += (sum - count * mean) ** 2;
      own += count * mean * mean - 2 * mean * sum;
    }
    together += (whole - own) / (count * (count - 1));
    within += own / count;
    used++;
  }
  for (const [c, channel] of channels.entries())
    for (let k = 0; k < n; k++)
      channel[k] = (counts[k] as number) > 0 ? (channel[k] as number) - (means[c] as number) : 0;
  const [l = new Float32Array(n), g = l, b = l] = channels;
  const agreement = used > 0.15 * n && within > 0 ? together / within : 0;
  return { channels: [l, g, b], agreement, cells };
}

/** The shift, in whole pixels, at which a cell is most like those that were laid down. */
function bestFit(
  field: Field,
  { x, y }: { x: number; y: number },
  a: Shift,
  b: Shift,
  sums: readonly Float64Array[],
  counts: Uint16Array,
  reach: number,
): readonly [number, number] {
  let best: readonly [number, number] = [0, 0];
  let least = Number.POSITIVE_INFINITY;
  const step = CELL_SIDE / LOOKED;
  for (let dy = -reach; dy <= reach; dy++) {
    for (let dx = -reach; dx <= reach; dx++) {
      let [off, used] = [0, 0];
      for (let v = 0; v < CELL_SIDE; v += step) {
        for (let u = 0; u < CELL_SIDE; u += step) {
          const k = v * CELL_SIDE + u;
          const count = counts[k] as number;
          const px = x + dx + (u * a[0] + v * b[0]) / CELL_SIDE;
          const py = y + dy + (u * a[1] + v * b[1]) / CELL_SIDE;
          if (count === 0 || px < 0 || py < 0 || px > field.width - 1 || py > field.height - 1)
            continue;
          for (let c = 0; c < 3; c++)
            off += (sample(field, c, px, py) - (sums[c]?.[k] as number) / count) ** 2;
          used++;
        }
      }
      // Of equal fits the one that moves least.
      const mean = (off / Math.max(1, used)) * (1 + 0.01 * Math.hypot(dx, dy));
      if (used > 0.2 * LOOKED * LOOKED && mean < least) {
        least = mean;
        best = [dx, dy];
      }
    }
  }
  return best;
}

function sample({ width, height, channels }: Field, c: number, x: number, y: number): number {
  const channel = channels[c] as Float32Array;
  const [x0, y0] = [Math.min(width - 2, Math.floor(x)), Math.min(height - 2, Math.floor(y))];
  const [u, v] = [x - x0, y - y0];
  const p = y0 * width + x0;
  return (
    (1 - v) * ((1 - u) * (channel[p] as number) + u * (channel[p + 1] as number)) +
    v * ((1 - u) * (channel[p + width] as number) + u * (channel[p + width + 1] as number))
  );
}

/** A mean cell laid side by side over a picture of its own scale. */
export function laidOut(
  cell: MeanCell,
  [a, b]: readonly [Shift, Shift],
  width: number,
  height: number,
): Field {
  const det = a[0] * b[1] - a[1] * b[0];
  const n = CELL_SIDE;
  const round = (place: number) => ((place % n) + n) % n;
  const channels = cell.channels.map((channel) => {
    const out = new Float32Array(width * height);
    for (let y = 0, p = 0; y < height; y++) {
      for (let x = 0; x < width; x++, p++) {
        const u = ((x * b[1] - y * b[0]) / det) * n;
        const v = ((y * a[0] - x * a[1]) / det) * n;
        const [u0, v0] = [Math.floor(u), Math.floor(v)];
        const [s, t] = [u - u0, v - v0];
        const [left, right] = [round(u0), round(u0 + 1)];
        const [top, foot] = [round(v0) * n, round(v0 + 1) * n];
        out[p] =
          (1 - t) *
            ((1 - s) * (channel[top + left] as number) + s * (channel[top + right] as number)) +
          t * ((1 - s) * (channel[foot + left] as number) + s * (channel[foot + right] as number));
      }
    }
    return out;
  });
  return { width, height, channels: channels as [Float32Array, Float32Array, Float32Array] };
}
