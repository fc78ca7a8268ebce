/**
 * Solves a small symmetric system (normal equations) by elimination with pivoting. Null where it has no single answer.
 * `matrix` is square, row by row.
 */
export function solve(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): number[] | null {
  const n = right.length;
  const rows = matrix.map((row, i) => [...row, right[i] as number]);
  for (let c = 0; c < n; c++) {
    let pivot = c;
    for (let r = c + 1; r < n; r++) {
      if (Math.abs(rows[r]?.[c] as number) > Math.abs(rows[pivot]?.[c] as number)) pivot = r;
    }
    const top = rows[pivot] as number[];
    rows[pivot] = rows[c] as number[];
    rows[c] = top;
    const head = top[c] as number;
    if (Math.abs(head) < 1e-12) return null;
    for (let r = 0; r < n; r++) {
      if (r === c) continue;
      const row = rows[r] as number[];
      const factor = (row[c] as number) / head;
      for (let k = c; k <= n; k++) row[k] = (row[k] as number) - factor * (top[k] as number);
    }
  }
  return rows.map((row, i) => (row[n] as number) / (row[i] as number));
}

/** Sums for a least-squares fit of a few terms; a little ridge keeps terms that the places cannot tell apart at rest. */
export function leastSquares(terms: number, ridge: number) {
  const matrix = new Float64Array(terms * terms);
  const right = new Float64Array(terms);
  let count = 0;
  return {
    add(values: readonly number[], target: number): void {
      count++;
      for (let i = 0, at = 0; i < terms; i++) {
        const own = values[i] as number;
        right[i] = (right[i] as number) + own * target;
        for (let j = 0; j < terms; j++, at++)
          matrix[at] = (matrix[at] as number) + own * (values[j] as number);
      }
    },
    solve(): number[] | null {
      const damped = Array.from({ length: terms }, (_, i) =>
        Array.from(matrix.subarray(i * terms, (i + 1) * terms), (v, j) =>
          i === j && i > 0 ? v + ridge * count : v,
        ),
      );
      return solve(damped, [...right]);
    },
  };
}
