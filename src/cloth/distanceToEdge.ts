const FAR = 1e12;

/**
 * For each place of a mask the distance in pixels to the nearest place outside it, 0 outside; what lies beyond the picture
 * counts as inside, so that a motif cut by the border is not taken for a thin one. Exact Euclidean distance (Felzenszwalb and
 * Huttenlocher 2012, Distance Transforms of Sampled Functions).
 */
export function distanceToEdge(mask: Uint8Array, width: number, height: number): Float32Array {
  const square = new Float64Array(mask.length);
  for (let p = 0; p < mask.length; p++) square[p] = mask[p] ? FAR : 0;
  const length = Math.max(width, height);
  const line = new Float64Array(length);
  const work = { at: new Int32Array(length), bound: new Float64Array(length + 1) };
  for (let x = 0; x < width; x++) transform(square, x, width, height, line, work);
  for (let y = 0; y < height; y++) transform(square, y * width, 1, width, line, work);
  const distance = new Float32Array(mask.length);
  for (let p = 0; p < mask.length; p++)
    distance[p] = Math.sqrt(Math.min(square[p] as number, length * length));
  return distance;
}

interface Work {
  readonly at: Int32Array;
  readonly bound: Float64Array;
}

/** One row or column: the lower envelope of the parabolas over its places. */
function transform(
  square: Float64Array,
  start: number,
  step: number,
  count: number,
  line: Float64Array,
  { at, bound }: Work,
): void {
  for (let i = 0; i < count; i++) line[i] = square[start + i * step] as number;
  const meet = (i: number, j: number) =>
    ((line[i] as number) + i * i - ((line[j] as number) + j * j)) / (2 * (i - j));
  let last = 0;
  at[0] = 0;
  bound[0] = -FAR;
  bound[1] = FAR;
  for (let i = 1; i < count; i++) {
    let s = meet(i, at[last] as number);
    while (last > 0 && s <= (bound[last] as number)) {
      last--;
      s = meet(i, at[last] as number);
    }
    last++;
    at[last] = i;
    bound[last] = s;
    bound[last + 1] = FAR;
  }
  for (let i = 0, k = 0; i < count; i++) {
    while ((bound[k + 1] as number) < i) k++;
    const nearest = at[k] as number;
    square[start + i * step] = (i - nearest) ** 2 + (line[nearest] as number);
  }
}
