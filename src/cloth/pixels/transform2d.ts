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
  const upIn = new Float64Array(down * 2);
  const upOut = new Float64Array(down * 2);
  for (let x = 0; x < across; x++) {
    for (let y = 0; y < down; y++) {
      upIn[y * 2] = field[(y * across + x) * 2] as number;
      upIn[y * 2 + 1] = field[(y * across + x) * 2 + 1] as number;
    }
    if (back) columns.inverseTransform(upOut, upIn);
    else columns.transform(upOut, upIn);
    for (let y = 0; y < down; y++) {
      field[(y * across + x) * 2] = upOut[y * 2] as number;
      field[(y * across + x) * 2 + 1] = upOut[y * 2 + 1] as number;
    }
  }
}
