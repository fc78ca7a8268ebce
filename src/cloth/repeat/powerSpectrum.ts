import { transformOfSize } from "../pixels/transform2d.ts";

/**
 * Power of some real channels, each padded with noughts to `across` by `down` places, summed over them: for each wave across, 0 to
 * half of `across`, its waves down one after the other. What is real has the other half for its mirror image.
 */
export function realPower(
  channels: readonly Float32Array[],
  width: number,
  height: number,
  across: number,
  down: number,
): Float64Array {
  const half = across / 2 + 1;
  const power = new Float64Array(half * down);
  const rows = transformOfSize(across);
  const columns = transformOfSize(down);
  const rowIn = new Float64Array(across);
  const rowOut = new Float64Array(across * 2);
  // Each row's waves lie together, with a little room, so that a column's places do not share one line of the cache.
  const stride = 2 * half + 6;
  const spectrum = new Float64Array(stride * height);
  const columnIn = new Float64Array(down * 2);
  const columnOut = new Float64Array(down * 2);
  for (const channel of channels) {
    // A channel that was left out adds nothing.
    if (channel.every((value) => value === 0)) continue;
    for (let y = 0; y < height; y++) {
      rowIn.set(channel.subarray(y * width, (y + 1) * width));
      rows.realTransform(rowOut, rowIn);
      spectrum.set(rowOut.subarray(0, 2 * half), y * stride);
    }
    for (let k = 0; k < half; k++) {
      for (let y = 0, p = 2 * k; y < height; y++, p += stride) {
        columnIn[2 * y] = spectrum[p] as number;
        columnIn[2 * y + 1] = spectrum[p + 1] as number;
      }
      columns.transform(columnOut, columnIn);
      for (let n = 0, q = k * down; n < down; n++, q++) {
        const re = columnOut[2 * n] as number;
        const im = columnOut[2 * n + 1] as number;
        power[q] = (power[q] as number) + re * re + im * im;
      }
    }
  }
  return power;
}

/**
 * Back from a power to the sums of products at each shift, as `realPower` lays it out: the first `kept` rows of shifts down, each of
 * `across` places. Both ways back are of real numbers, since a power is real and its own mirror image.
 */
export function productsOf(
  power: Float64Array,
  across: number,
  down: number,
  kept: number,
): Float64Array {
  const half = across / 2 + 1;
  const columns = transformOfSize(down);
  const rows = transformOfSize(across);
  const columnOut = new Float64Array(down * 2);
  const stride = 2 * half + 6;
  const between = new Float64Array(stride * kept);
  const size = across * down;
  for (let k = 0; k < half; k++) {
    columns.realTransform(columnOut, power.subarray(k * down, (k + 1) * down));
    // The inverse of real numbers is the transform's own, its second part reversed.
    for (let y = 0, p = 2 * k; y < kept; y++, p += stride) {
      between[p] = (columnOut[2 * y] as number) / size;
      between[p + 1] = -(columnOut[2 * y + 1] as number) / size;
    }
  }
  const products = new Float64Array(across * kept);
  const pair = new Float64Array(across * 2);
  const pairOut = new Float64Array(across * 2);
  // Two rows of real shifts go through one complex transform: the second as the imaginary part. (`* across`: its inverse divides.)
  for (let y = 0; y < kept; y += 2) {
    const one = y * stride;
    const two = one + stride;
    const isPair = y + 1 < kept;
    for (let k = 0; k < half; k++) {
      const a = between[one + 2 * k] as number;
      const b = between[one + 2 * k + 1] as number;
      const c = isPair ? (between[two + 2 * k] as number) : 0;
      const d = isPair ? (between[two + 2 * k + 1] as number) : 0;
      pair[2 * k] = (a - d) * across;
      pair[2 * k + 1] = (b + c) * across;
      if (k === 0 || k === across / 2) continue;
      const mirror = 2 * (across - k);
      pair[mirror] = (a + d) * across;
      pair[mirror + 1] = (c - b) * across;
    }
    rows.inverseTransform(pairOut, pair);
    for (let x = 0, q = y * across; x < across; x++, q++) {
      products[q] = pairOut[2 * x] as number;
      if (isPair) products[q + across] = pairOut[2 * x + 1] as number;
    }
  }
  return products;
}
