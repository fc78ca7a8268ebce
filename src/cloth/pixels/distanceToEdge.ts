const FAR = 1e9;

/**
 * For each place of a mask the distance in pixels to the nearest place outside it, 0 outside; what lies beyond the picture
 * counts as inside, so that a motif cut by the border is not taken for a thin one. Exact Euclidean distance: down the columns by
 * counting, then along the rows by the lower envelope of parabolas (Meijster, Roerdink and Hesselink 2000, A General Algorithm for
 * Computing Distance Transforms in Linear Time; Felzenszwalb and Huttenlocher 2012, Distance Transforms of Sampled Functions).
 */
export function distanceToEdge(mask: Uint8Array, width: number, height: number): Float32Array {
  const distance = new Float32Array(mask.length);
  countDown(mask, width, distance);
  const most = Math.hypot(width, height);
  const line = new Float64Array(width);
  const at = new Int32Array(width);
  const bound = new Float64Array(width + 1);
  for (let start = 0; start < mask.length; start += width) {
    // A row that holds no edge and has none in reach above or below needs no envelope; nor has one that lies wholly outside.
    let inside = false;
    for (let x = 0; x < width; x++) {
      const d = distance[start + x] as number;
      if (d > 0) inside = true;
      line[x] = d * d;
    }
    if (inside) alongRow(distance, start, width, line, at, bound, most);
  }
  return distance;
}

/** For each place the distance to the nearest outside place of its own column, `FAR` where there is none. */
function countDown(mask: Uint8Array, width: number, distance: Float32Array): void {
  for (let p = 0; p < mask.length; p++) {
    if (!mask[p]) distance[p] = 0;
    else distance[p] = p < width ? FAR : (distance[p - width] as number) + 1;
  }
  for (let p = mask.length - 1 - width; p >= 0; p--) {
    const below = (distance[p + width] as number) + 1;
    if (below < (distance[p] as number)) distance[p] = below;
  }
}

/** One row: the lower envelope of the parabolas that stand on the squared distances of its columns. */
function alongRow(
  distance: Float32Array,
  start: number,
  width: number,
  line: Float64Array,
  at: Int32Array,
  bound: Float64Array,
  most: number,
): void {
  let last = 0;
  at[0] = 0;
  bound[0] = -FAR;
  bound[1] = FAR;
  for (let i = 1; i < width; i++) {
    const own = (line[i] as number) + i * i;
    let k = at[last] as number;
    let s = (own - (line[k] as number) - k * k) / (2 * (i - k));
    while (last > 0 && s <= (bound[last] as number)) {
      last--;
      k = at[last] as number;
      s = (own - (line[k] as number) - k * k) / (2 * (i - k));
    }
    last++;
    at[last] = i;
    bound[last] = s;
    bound[last + 1] = FAR;
  }
  for (let i = 0, k = 0; i < width; i++) {
    while ((bound[k + 1] as number) < i) k++;
    if ((distance[start + i] as number) === 0) continue;
    const nearest = at[k] as number;
    const off = i - nearest;
    distance[start + i] = Math.min(most, Math.sqrt(off * off + (line[nearest] as number)));
  }
}
