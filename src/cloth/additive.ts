import { between, type Correlation } from "./autocorrelation.ts";

/**
 * How far a pattern is the sum of a pattern across and a pattern up and down, 0 to 1: what warp and weft of a check make.
 * Read from the correlation over one repeat each way, whose value at (x, y) is then a function of x and one of y; the middle,
 * where the grain of the cloth agrees with itself, is left out. `turnDeg` is how far the cloth lies turned, anticlockwise.
 */
export function additivity(correlation: Correlation, spanPx: number, turnDeg: number): number {
  const { reachX, reachY } = correlation;
  // A turned square must lie within the reach.
  const span = Math.max(
    8,
    Math.min(Math.floor(spanPx), Math.floor(0.9 * Math.min(reachX, reachY))),
  );
  const [c, s] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  const valueAt = (x: number, y: number) =>
    between(correlation, (x - span) * c + (y - span) * s, (y - span) * c - (x - span) * s);
  const size = 2 * span + 1;
  const rows = new Float64Array(size);
  const columns = new Float64Array(size);
  let mean = 0;
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const value = valueAt(x, y);
      (rows[y] as number) += value / size;
      (columns[x] as number) += value / size;
      mean += value / (size * size);
    }
  }
  let all = 0;
  let rest = 0;
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      if (Math.max(Math.abs(x - span), Math.abs(y - span)) <= 3) continue;
      const value = valueAt(x, y);
      all += (value - mean) ** 2;
      rest += (value - (rows[y] as number) - (columns[x] as number) + mean) ** 2;
    }
  }
  return all > 0 ? Math.max(0, 1 - rest / all) : 0;
}
