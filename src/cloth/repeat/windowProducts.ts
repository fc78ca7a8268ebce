/** Two square windows of a channel: the numbers of their first places, and how many places, `step` apart, stand along a side. */
export interface Windows {
  readonly first: number;
  readonly second: number;
  /** Of the channel. */
  readonly width: number;
  readonly step: number;
  readonly count: number;
}

/** Windows that are multiplied at once. */
const TOGETHER = 5;

/**
 * The sums of the products of one window with as many others as `products` has places, five or more, each one place further than the
 * last. Five at once, so that the first window is read once for them: most of the time of finding a tilt is spent here. The last five
 * may begin before the others end; what is reckoned twice is the same.
 */
export function windowProducts(
  products: Float64Array,
  channel: Float32Array,
  { first, second, width, step, count }: Windows,
): void {
  const last = products.length - TOGETHER;
  for (let at = 0; ; at = Math.min(at + TOGETHER, last)) {
    fiveProducts(products, at, channel, first, second + at, width, step, count);
    if (at === last) return;
  }
}

function fiveProducts(
  products: Float64Array,
  at: number,
  channel: Float32Array,
  one: number,
  two: number,
  width: number,
  step: number,
  count: number,
): void {
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  let e = 0;
  const down = step * width;
  const length = count * step;
  for (let v = 0, p = one, q = two; v < count; v++, p += down, q += down) {
    for (let u = 0; u < length; u += step) {
      const own = channel[p + u] as number;
      a += own * (channel[q + u] as number);
      b += own * (channel[q + u + 1] as number);
      c += own * (channel[q + u + 2] as number);
      d += own * (channel[q + u + 3] as number);
      e += own * (channel[q + u + 4] as number);
    }
  }
  products[at] = a;
  products[at + 1] = b;
  products[at + 2] = c;
  products[at + 3] = d;
  products[at + 4] = e;
}
