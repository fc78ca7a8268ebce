/** A matrix of whole numbers, row by row, that brings a lattice onto itself; its determinant is one or minus one. */
export type Whole = readonly [number, number, number, number];

/**
 * Adds the spectrum of the correlation of a cell with its image under a matrix, times the imaginary unit where it is the `second` of
 * two. The cell is a square of a power of two of places in its lattice's own coordinates. The image's own spectrum is the cell's, its
 * waves moved by the inverse of the matrix, transposed; all shifts are tried at once by one transform back.
 */
export function addProducts(
  products: Float64Array,
  spectrum: Float64Array,
  [p, q, r, s]: Whole,
  side: number,
  second = false,
): void {
  // A power of two, so that the rest of a division is its last bits.
  const last = side - 1;
  const det = p * s - q * r;
  for (let v = 0, k = 0; v < side; v++) {
    for (let u = 0; u < side; u++, k++) {
      const i = 2 * k;
      const row = (det * (p * v - q * u)) & last;
      const j = 2 * (row * side + ((det * (s * u - r * v)) & last));
      const ownRe = spectrum[i] as number;
      const ownIm = spectrum[i + 1] as number;
      const otherRe = spectrum[j] as number;
      const otherIm = spectrum[j + 1] as number;
      const re = ownRe * otherRe + ownIm * otherIm;
      const im = ownIm * otherRe - ownRe * otherIm;
      products[i] = (products[i] as number) + (second ? -im : re);
      products[i + 1] = (products[i + 1] as number) + (second ? re : im);
    }
  }
}

/** The greatest of every second number from the first or the second on, nought at least. */
export function greatest(numbers: Float64Array, from: number): number {
  let most = 0;
  for (let i = from; i < numbers.length; i += 2) most = Math.max(most, numbers[i] as number);
  return most;
}
