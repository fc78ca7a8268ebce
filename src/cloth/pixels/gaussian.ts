/** Running means of which three make a Gaussian. */
const TIMES = 3;

/** Mean under a Gaussian, as three running means; near the border over what is there. */
export function gaussian(
  values: Float32Array,
  width: number,
  height: number,
  sigma: number,
): Float32Array {
  const radius = Math.max(1, Math.round((Math.sqrt(4 * sigma * sigma + 1) - 1) / 2));
  const rows = new Float32Array(values.length);
  const out = new Float32Array(values.length);
  const sums = new Float64Array(width);
  for (let round = 0; round < TIMES; round++) {
    const from = round === 0 ? values : out;
    for (let y = 0; y < height; y++) alongRow(from, rows, y * width, width, radius);
    downColumns(rows, out, width, height, radius, sums);
  }
  return out;
}

/** Parted where the window leaves the row, so that most places are reached without asking whether it does. */
function alongRow(
  from: Float32Array,
  to: Float32Array,
  start: number,
  count: number,
  radius: number,
): void {
  let sum = 0;
  const first = Math.min(count, radius);
  for (let i = 0; i < first; i++) sum += from[start + i] as number;
  let n = first;
  const end = start + count;
  // Until the window lies in the row on its left.
  const grown = Math.min(count, radius + 1);
  for (let p = start; p < start + grown; p++) {
    if (p + radius < end) {
      sum += from[p + radius] as number;
      n++;
    }
    to[p] = sum / n;
  }
  const whole = Math.max(grown, count - radius);
  for (let p = start + grown; p < start + whole; p++) {
    sum += from[p + radius] as number;
    sum -= from[p - radius - 1] as number;
    to[p] = sum / n;
  }
  for (let p = start + whole; p < end; p++) {
    sum -= from[p - radius - 1] as number;
    n--;
    to[p] = sum / n;
  }
}

/** All columns at once, row by row: one column after the other would meet every line of the cache for each of its places. */
function downColumns(
  from: Float32Array,
  to: Float32Array,
  width: number,
  height: number,
  radius: number,
  sums: Float64Array,
): void {
  sums.fill(0);
  let n = Math.min(height, radius);
  for (let y = 0, p = 0; y < n; y++)
    for (let x = 0; x < width; x++, p++) sums[x] = (sums[x] as number) + (from[p] as number);
  for (let y = 0; y < height; y++) {
    const enters = y + radius < height;
    const leaves = y > radius;
    if (enters) n++;
    if (leaves) n--;
    const p = y * width;
    const entering = p + radius * width;
    const leaving = p - (radius + 1) * width;
    if (enters && leaves) {
      for (let x = 0; x < width; x++) {
        const sum =
          (sums[x] as number) + (from[entering + x] as number) - (from[leaving + x] as number);
        sums[x] = sum;
        to[p + x] = sum / n;
      }
      continue;
    }
    for (let x = 0; x < width; x++) {
      let sum = sums[x] as number;
      if (enters) sum += from[entering + x] as number;
      if (leaves) sum -= from[leaving + x] as number;
      sums[x] = sum;
      to[p + x] = sum / n;
    }
  }
}
