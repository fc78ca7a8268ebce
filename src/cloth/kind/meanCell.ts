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

type Sums = readonly [Float64Array, Float64Array, Float64Array];

interface Place {
  readonly x: number;
  readonly y: number;
}

/** Lays the cells of a lattice over each other, each where it fits best; null where the picture holds less than one. */
export function meanCell(field: Field, [a, b]: readonly [Shift, Shift]): MeanCell | null {
  const { width, height } = field;
  const [mx, my] = [(width - 1) / 2, (height - 1) / 2];
  const rim = 0.5 * Math.min(Math.hypot(...a), Math.hypot(...b));
  const places: Place[] = [];
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
  const fromMiddle = ({ x, y }: Place) =>
    Math.hypot(x + (a[0] + b[0]) / 2 - mx, y + (a[1] + b[1]) / 2 - my);
  places.sort((p, q) => fromMiddle(p) - fromMiddle(q));
  const n = CELL_SIDE * CELL_SIDE;
  const sums: Sums = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  const squares = new Float64Array(n);
  const counts = new Uint16Array(n);
  const side = Math.sqrt(Math.abs(a[0] * b[1] - a[1] * b[0]));
  const reach = Math.min(5, Math.max(1, Math.round(LOOSE * side)));
  let cells = 0;
  for (const place of places.slice(0, MOST_CELLS)) {
    const at = cells === 0 ? place : bestFit(field, place, a, b, sums, counts, reach);
    layDown(field, at, a, b, sums, squares, counts);
    cells++;
  }
  return cells > 0 ? finish(sums, squares, counts, cells) : null;
}

/** Adds a cell to the sums of those that lie there already. */
function layDown(
  { width, height, channels }: Field,
  { x: left, y: top }: Place,
  a: Shift,
  b: Shift,
  [sumsL, sumsA, sumsB]: Sums,
  squares: Float64Array,
  counts: Uint16Array,
): void {
  const [channelL, channelA, channelB] = channels;
  const [ax, ay] = a;
  const [bx, by] = b;
  for (let v = 0, k = 0; v < CELL_SIDE; v++) {
    for (let u = 0; u < CELL_SIDE; u++, k++) {
      const x = left + (u * ax + v * bx) / CELL_SIDE;
      const y = top + (u * ay + v * by) / CELL_SIDE;
      if (x < 0 || y < 0 || x > width - 1 || y > height - 1) continue;
      const x0 = Math.min(width - 2, x | 0);
      const y0 = Math.min(height - 2, y | 0);
      const p = y0 * width + x0;
      const valueL = bilinear(channelL, p, width, x - x0, y - y0);
      const valueA = bilinear(channelA, p, width, x - x0, y - y0);
      const valueB = bilinear(channelB, p, width, x - x0, y - y0);
      sumsL[k] = (sumsL[k] as number) + valueL;
      sumsA[k] = (sumsA[k] as number) + valueA;
      sumsB[k] = (sumsB[k] as number) + valueB;
      squares[k] = (squares[k] as number) + valueL * valueL + valueA * valueA + valueB * valueB;
      counts[k] = (counts[k] as number) + 1;
    }
  }
}

function finish(
  sums: Sums,
  squares: Float64Array,
  counts: Uint16Array,
  cells: number,
): MeanCell | null {
  const n = counts.length;
  let covered = 0;
  for (let k = 0; k < n; k++) if ((counts[k] as number) > 0) covered++;
  if (covered < COVERED * n) return null;
  const [l, g, b] = [meanOf(sums[0], counts), meanOf(sums[1], counts), meanOf(sums[2], counts)];
  const means = [l, g, b].map((channel) => total(channel) / covered);
  const [meanL = 0, meanA = 0, meanB = 0] = means;
  const middle = meanL * meanL + meanA * meanA + meanB * meanB;
  let together = 0;
  let within = 0;
  let used = 0;
  for (let k = 0; k < n; k++) {
    const count = counts[k] as number;
    if (count < 2) continue;
    const sumL = sums[0][k] as number;
    const sumA = sums[1][k] as number;
    const sumB = sums[2][k] as number;
    const offL = sumL - count * meanL;
    const offA = sumA - count * meanA;
    const offB = sumB - count * meanB;
    const whole = offL * offL + offA * offA + offB * offB;
    const own =
      (squares[k] as number) + count * middle - 2 * (meanL * sumL + meanA * sumA + meanB * sumB);
    together += (whole - own) / (count * (count - 1));
    within += own / count;
    used++;
  }
  for (const [c, channel] of [l, g, b].entries()) {
    const mean = means[c] as number;
    for (let k = 0; k < n; k++)
      channel[k] = (counts[k] as number) > 0 ? (channel[k] as number) - mean : 0;
  }
  const agreement = used > 0.15 * n && within > 0 ? together / within : 0;
  return { channels: [l, g, b], agreement, cells };
}

function meanOf(sums: Float64Array, counts: Uint16Array): Float32Array {
  const mean = new Float32Array(sums.length);
  for (let k = 0; k < mean.length; k++)
    mean[k] = (sums[k] as number) / Math.max(1, counts[k] as number);
  return mean;
}

function total(values: Float32Array): number {
  let sum = 0;
  for (let k = 0; k < values.length; k++) sum += values[k] as number;
  return sum;
}

/** Where a cell, moved by whole pixels, is most like those that were laid down. */
function bestFit(
  field: Field,
  { x, y }: Place,
  a: Shift,
  b: Shift,
  sums: Sums,
  counts: Uint16Array,
  reach: number,
): Place {
  const looked = lookedAt(a, b, sums, counts);
  let [bestX, bestY] = [0, 0];
  let least = Number.POSITIVE_INFINITY;
  // No shift need be looked at to its end that is already worse than no shift at all.
  const still = misfit(field, x, y, looked, Number.POSITIVE_INFINITY);
  for (let dy = -reach; dy <= reach; dy++) {
    for (let dx = -reach; dx <= reach; dx++) {
      // Of equal fits the one that moves least.
      const dearer = 1 + 0.01 * Math.hypot(dx, dy);
      const mean = dearer * misfit(field, x + dx, y + dy, looked, Math.min(least, still) / dearer);
      if (mean < least) {
        least = mean;
        bestX = dx;
        bestY = dy;
      }
    }
  }
  return { x: x + bestX, y: y + bestY };
}

/** Numbers a place that is looked at: its shift from the cell's corner, and the means of what lies there. */
const LOOKED_NUMBERS = 5;

/** The places of a cell at which fits are judged, those alone where something lies. */
function lookedAt(a: Shift, b: Shift, sums: Sums, counts: Uint16Array): Float64Array {
  const step = CELL_SIDE / LOOKED;
  const places = new Float64Array(LOOKED * LOOKED * LOOKED_NUMBERS);
  let n = 0;
  for (let v = 0; v < CELL_SIDE; v += step) {
    for (let u = 0; u < CELL_SIDE; u += step) {
      const k = v * CELL_SIDE + u;
      const count = counts[k] as number;
      if (count === 0) continue;
      places[n++] = (u * a[0] + v * b[0]) / CELL_SIDE;
      places[n++] = (u * a[1] + v * b[1]) / CELL_SIDE;
      for (const sum of sums) places[n++] = (sum[k] as number) / count;
    }
  }
  return places.subarray(0, n);
}

/** Mean square by which a cell at a place is off; infinite where too little of it is seen, or where it is sure to be over `most`. */
function misfit(
  { width, height, channels }: Field,
  left: number,
  top: number,
  looked: Float64Array,
  most: number,
): number {
  const [channelL, channelA, channelB] = channels;
  const enough = most * 1.000001 * (looked.length / LOOKED_NUMBERS);
  let off = 0;
  let used = 0;
  for (let n = 0; n < looked.length; n += LOOKED_NUMBERS) {
    const x = left + (looked[n] as number);
    const y = top + (looked[n + 1] as number);
    if (x < 0 || y < 0 || x > width - 1 || y > height - 1) continue;
    const x0 = Math.min(width - 2, x | 0);
    const y0 = Math.min(height - 2, y | 0);
    const p = y0 * width + x0;
    const offL = bilinear(channelL, p, width, x - x0, y - y0) - (looked[n + 2] as number);
    const offA = bilinear(channelA, p, width, x - x0, y - y0) - (looked[n + 3] as number);
    const offB = bilinear(channelB, p, width, x - x0, y - y0) - (looked[n + 4] as number);
    off += offL * offL + offA * offA + offB * offB;
    used++;
    if (off > enough) return Number.POSITIVE_INFINITY;
  }
  return used > 0.2 * LOOKED * LOOKED ? off / used : Number.POSITIVE_INFINITY;
}

function bilinear(channel: Float32Array, p: number, width: number, u: number, v: number): number {
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
  const [ax, ay] = a;
  const [bx, by] = b;
  const [cellL, cellA, cellB] = cell.channels;
  const outL = new Float32Array(width * height);
  const outA = new Float32Array(width * height);
  const outB = new Float32Array(width * height);
  // A power of two, so that the rest of a division is its last bits.
  const last = CELL_SIDE - 1;
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0; x < width; x++, p++) {
      const u = ((x * by - y * bx) / det) * CELL_SIDE;
      const v = ((y * ax - x * ay) / det) * CELL_SIDE;
      const u0 = Math.floor(u);
      const v0 = Math.floor(v);
      const left = u0 & last;
      const right = (u0 + 1) & last;
      const top = (v0 & last) * CELL_SIDE;
      const foot = ((v0 + 1) & last) * CELL_SIDE;
      const s = u - u0;
      const t = v - v0;
      outL[p] = corners(cellL, top + left, top + right, foot + left, foot + right, s, t);
      outA[p] = corners(cellA, top + left, top + right, foot + left, foot + right, s, t);
      outB[p] = corners(cellB, top + left, top + right, foot + left, foot + right, s, t);
    }
  }
  return { width, height, channels: [outL, outA, outB] };
}

function corners(
  cell: Float32Array,
  p: number,
  q: number,
  r: number,
  s: number,
  u: number,
  v: number,
): number {
  return (
    (1 - v) * ((1 - u) * (cell[p] as number) + u * (cell[q] as number)) +
    v * ((1 - u) * (cell[r] as number) + u * (cell[s] as number))
  );
}
