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

function alongRow(
  from: Float32Array,
  to: Float32Array,
  start: number,
  count: number,
  radius: number,
): void {
  let sum = 0;
  let n = 0;
  const first = Math.min(count, radius);
  for (let i = 0; i < first; i++) sum += from[start + i] as number;
  n = first;
  for (let i = 0; i < count; i++) {
    if (i + radius < count) {
      sum += from[start + i + radius] as number;
      n++;
    }
    if (i > radius) {
      sum -= from[start + i - radius - 1] as number;
      n--;
    }
    to[start + i] = sum / n;
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
    if (y + radius < height) {
      for (let x = 0, p = (y + radius) * width; x < width; x++, p++)
        sums[x] = (sums[x] as number) + (from[p] as number);
      n++;
    }
    if (y > radius) {
      for (let x = 0, p = (y - radius - 1) * width; x < width; x++, p++)
        sums[x] = (sums[x] as number) - (from[p] as number);
      n--;
    }
    for (let x = 0, p = y * width; x < width; x++, p++) to[p] = (sums[x] as number) / n;
  }
}
