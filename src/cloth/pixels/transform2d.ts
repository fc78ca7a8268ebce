import FFT from "fft.js";

/** The least power of two, four or more, that is not under `least`. */
export function powerOfTwo(least: number): number {
  let size = 4;
  while (size < least) size *= 2;
  return size;
}

const known = new Map<number, FFT>();

/** The transform of one size; its tables are made once. */
export function transformOfSize(size: number): FFT {
  const made = known.get(size) ?? new FFT(size);
  known.set(size, made);
  return made;
}

/** Columns that are gathered at a time: a line of the cache holds so many complex numbers. */
const TOGETHER = 4;

/**
 * Two-dimensional Fourier transform in place, of complex numbers row by row; rows from `filled` on are all nought and skipped.
 * `back` is the inverse, with its division by the number of places.
 */
export function transform2d(
  field: Float64Array,
  across: number,
  down: number,
  back: boolean,
  filled = down,
): void {
  const rows = transformOfSize(across);
  const lineOut = new Float64Array(across * 2);
  for (let y = 0; y < filled; y++) {
    const line = field.subarray(y * across * 2, (y + 1) * across * 2);
    if (back) rows.inverseTransform(lineOut, line);
    else rows.transform(lineOut, line);
    line.set(lineOut);
  }
  const columns = transformOfSize(down);
  // Some columns at a time: one alone would meet a line of the cache for each of its places.
  const ins = Array.from({ length: TOGETHER }, () => new Float64Array(down * 2));
  const out = new Float64Array(down * 2);
  const stride = across * 2;
  for (let left = 0; left < across; left += TOGETHER) {
    const count = Math.min(TOGETHER, across - left);
    for (let y = 0, i = left * 2; y < down; y++, i += stride) {
      for (let n = 0; n < count; n++) {
        const column = ins[n] as Float64Array;
        column[y * 2] = field[i + n * 2] as number;
        column[y * 2 + 1] = field[i + n * 2 + 1] as number;
      }
    }
    for (let n = 0; n < count; n++) {
      const column = ins[n] as Float64Array;
      if (back) columns.inverseTransform(out, column);
      else columns.transform(out, column);
      column.set(out);
    }
    for (let y = 0, i = left * 2; y < down; y++, i += stride) {
      for (let n = 0; n < count; n++) {
        const column = ins[n] as Float64Array;
        field[i + n * 2] = column[y * 2] as number;
        field[i + n * 2 + 1] = column[y * 2 + 1] as number;
      }
    }
  }
}
