/** A square matrix, row by row, times a vector. */
export function multiply(matrix: Float64Array, vector: Float64Array, size: number): Float64Array {
  const product = new Float64Array(size);
  for (let r = 0; r < size; r++) {
    let sum = 0;
    for (let c = 0; c < size; c++) {
      sum += (matrix[r * size + c] as number) * (vector[c] as number);
    }
    product[r] = sum;
  }
  return product;
}

/** Smaller entries are taken for the rounding of a zero: kept, they would fill the matrix and cost time. */
const NOTHING = 1e-11;

/**
 * One step of the revised simplex: brings the inverse of the basis and the basic values up to date when the column whose
 * direction is given takes the place of row `leaving`.
 */
export function pivot(
  inverse: Float64Array,
  values: Float64Array,
  direction: Float64Array,
  leaving: number,
  size: number,
): void {
  const by = direction[leaving] as number;
  const at = leaving * size;
  const used: number[] = [];
  for (let c = 0; c < size; c++) {
    const value = inverse[at + c] as number;
    if (Math.abs(value) < NOTHING) {
      inverse[at + c] = 0;
      continue;
    }
    inverse[at + c] = value / by;
    used.push(c);
  }
  values[leaving] = (values[leaving] as number) / by;
  for (let r = 0; r < size; r++) {
    const d = direction[r] as number;
    if (r === leaving || Math.abs(d) < NOTHING) continue;
    const row = r * size;
    for (let i = 0; i < used.length; i++) {
      const c = used[i] as number;
      inverse[row + c] = (inverse[row + c] as number) - d * (inverse[at + c] as number);
    }
    values[r] = (values[r] as number) - d * (values[leaving] as number);
  }
}
