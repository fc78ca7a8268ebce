import type { Field } from "../pixels/field.ts";
import type { Shift } from "../repeat/lattice.ts";

/** How far a picture is made by bands that run up and bands that run across. */
export interface Crossing {
  /** Part of its variance that is a sum of upright and level bands, as warp and weft make it. */
  readonly sum: number;
  /** Part that is one pattern of upright bands times one of level bands, as the squares of a chequerboard are. */
  readonly product: number;
  /** Variance of the lesser of both sets of bands over that of the greater. */
  readonly balance: number;
}

/** Places along each side of the window. */
const SIDE = 96;
/** Least and most of the picture's lesser side that the window spans. */
const LEAST = 0.3;
const MOST = 0.85;

/**
 * Bands in a window about the picture's middle, some whole repeats wide. `up` and `across` are shifts of the lattice in pixels of
 * the field, which say how the cloth's own warp and weft lie in the picture; without a lattice they are the picture's own sides.
 */
export function crossingOf(field: Field, up: Shift | null, across: Shift | null): Crossing {
  const { width, height, channels } = field;
  const least = Math.min(width, height);
  const spanned = (shift: Shift | null, fallback: Shift): Shift => {
    const [x, y] = shift ?? fallback;
    const length = Math.hypot(x, y);
    const wanted =
      shift === null ? MOST * least : Math.max(1, Math.ceil((LEAST * least) / length)) * length;
    const fits = Math.min(wanted, MOST * least);
    return [(x / length) * fits, (y / length) * fits];
  };
  const [ux, uy] = spanned(across, [1, 0]);
  const [vx, vy] = spanned(up, [0, 1]);
  let [all, rest, top, upright, level] = [0, 0, 0, 0, 0];
  for (const channel of channels) {
    const values = new Float64Array(SIDE * SIDE);
    for (let j = 0, k = 0; j < SIDE; j++) {
      for (let i = 0; i < SIDE; i++, k++) {
        const s = (i + 0.5) / SIDE - 0.5;
        const t = (j + 0.5) / SIDE - 0.5;
        const x = Math.round((width - 1) / 2 + s * ux + t * vx);
        const y = Math.round((height - 1) / 2 + s * uy + t * vy);
        values[k] = channel[
          Math.min(height - 1, Math.max(0, y)) * width + Math.min(width - 1, Math.max(0, x))
        ] as number;
      }
    }
    const parts = split(values);
    all += parts.all;
    rest += parts.rest;
    top += parts.top;
    upright += parts.upright;
    level += parts.level;
  }
  return {
    sum: all > 0 ? 1 - rest / all : 0,
    product: all > 0 ? top / all : 0,
    balance: Math.min(upright, level) / Math.max(upright, level, 1e-12),
  };
}

/** Splits a square of values into means of its columns and rows, the best product of a column by a row in what is left, and the rest. */
function split(values: Float64Array) {
  const rows = new Float64Array(SIDE);
  const columns = new Float64Array(SIDE);
  let mean = 0;
  for (let j = 0, k = 0; j < SIDE; j++) {
    for (let i = 0; i < SIDE; i++, k++) {
      const value = values[k] as number;
      rows[j] = (rows[j] as number) + value / SIDE;
      columns[i] = (columns[i] as number) + value / SIDE;
      mean += value / (SIDE * SIDE);
    }
  }
  let [all, rest, upright, level] = [0, 0, 0, 0];
  for (let j = 0, k = 0; j < SIDE; j++) {
    for (let i = 0; i < SIDE; i++, k++) {
      const value = values[k] as number;
      all += (value - mean) ** 2;
      const left = value - (rows[j] as number) - (columns[i] as number) + mean;
      rest += left * left;
      values[k] = left;
    }
  }
  for (let i = 0; i < SIDE; i++) {
    upright += SIDE * ((columns[i] as number) - mean) ** 2;
    level += SIDE * ((rows[i] as number) - mean) ** 2;
  }
  return { all, rest, upright, level, top: greatestProduct(values) };
}

/** Energy of the best product of a column by a row: the square of the greatest singular value, by power iteration. */
function greatestProduct(values: Float64Array): number {
  let row = Float64Array.from({ length: SIDE }, (_, i) => 1 + 0.5 * Math.sin(1.7 * i));
  let energy = 0;
  for (let round = 0; round < 12; round++) {
    const column = new Float64Array(SIDE);
    for (let j = 0, k = 0; j < SIDE; j++)
      for (let i = 0; i < SIDE; i++, k++)
        column[j] = (column[j] as number) + (values[k] as number) * (row[i] as number);
    const size = Math.hypot(...column);
    if (size === 0) return 0;
    const next = new Float64Array(SIDE);
    for (let j = 0, k = 0; j < SIDE; j++)
      for (let i = 0; i < SIDE; i++, k++)
        next[i] = (next[i] as number) + ((values[k] as number) * (column[j] as number)) / size;
    const length = Math.hypot(...next);
    energy = length * length;
    row = next.map((x) => x / Math.max(length, 1e-12));
  }
  return energy;
}

/** The shortest shift of a lattice that lies within some degrees of upright, or of level; null where there is none. */
export function shiftAlong(
  [a, b]: readonly [Shift, Shift],
  upright: boolean,
  withinDeg: number,
): Shift | null {
  let best: Shift | null = null;
  for (let i = -4; i <= 4; i++) {
    for (let j = -4; j <= 4; j++) {
      const [x, y] = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
      const [along, off] = upright ? [y, x] : [x, y];
      if (along <= 0 || Math.abs(off) > along * Math.tan((withinDeg * Math.PI) / 180)) continue;
      if (!best || Math.hypot(x, y) < Math.hypot(...best)) best = [x, y];
    }
  }
  return best;
}
