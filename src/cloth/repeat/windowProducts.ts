/** Two square windows of a channel: the numbers of their first places, and how many places, `step` apart, stand along a side. */
export interface Windows {
  readonly first: number;
  readonly second: number;
  /** Of the channel. */
  readonly width: number;
  readonly step: number;
  readonly count: number;
}

/**
 * Adds the sums of the products of one window with `many` others, each one place further than the last, to as many scores from `at`
 * on. Some at once, so that the first window is read once for them: most of the time of finding a tilt is spent here.
 */
export function addProducts(
  scores: Float64Array,
  at: number,
  many: number,
  channel: Float32Array,
  windows: Windows,
): void {
  for (let done = 0; done < many; ) {
    const left = many - done;
    const together = left >= 5 ? 5 : left === 4 ? 4 : left >= 2 ? 2 : 1;
    const { first, second, width, step, count } = windows;
    const add =
      together === 5 ? addFive : together === 4 ? addFour : together === 2 ? addTwo : addOne;
    add(scores, at + done, channel, first, second + done, width, step, count);
    done += together;
  }
}

function addOne(
  scores: Float64Array,
  at: number,
  channel: Float32Array,
  one: number,
  two: number,
  width: number,
  step: number,
  count: number,
): void {
  let a = 0;
  const down = step * width;
  const length = count * step;
  for (let v = 0, p = one, q = two; v < count; v++, p += down, q += down) {
    for (let u = 0; u < length; u += step)
      a += (channel[p + u] as number) * (channel[q + u] as number);
  }
  scores[at] = (scores[at] as number) + a;
}

function addTwo(
  scores: Float64Array,
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
  const down = step * width;
  const length = count * step;
  for (let v = 0, p = one, q = two; v < count; v++, p += down, q += down) {
    for (let u = 0; u < length; u += step) {
      const own = channel[p + u] as number;
      a += own * (channel[q + u] as number);
      b += own * (channel[q + u + 1] as number);
    }
  }
  scores[at] = (scores[at] as number) + a;
  scores[at + 1] = (scores[at + 1] as number) + b;
}

function addFour(
  scores: Float64Array,
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
  const down = step * width;
  const length = count * step;
  for (let v = 0, p = one, q = two; v < count; v++, p += down, q += down) {
    for (let u = 0; u < length; u += step) {
      const own = channel[p + u] as number;
      a += own * (channel[q + u] as number);
      b += own * (channel[q + u + 1] as number);
      c += own * (channel[q + u + 2] as number);
      d += own * (channel[q + u + 3] as number);
    }
  }
  scores[at] = (scores[at] as number) + a;
  scores[at + 1] = (scores[at + 1] as number) + b;
  scores[at + 2] = (scores[at + 2] as number) + c;
  scores[at + 3] = (scores[at + 3] as number) + d;
}

function addFive(
  scores: Float64Array,
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
  scores[at] = (scores[at] as number) + a;
  scores[at + 1] = (scores[at + 1] as number) + b;
  scores[at + 2] = (scores[at + 2] as number) + c;
  scores[at + 3] = (scores[at + 3] as number) + d;
  scores[at + 4] = (scores[at + 4] as number) + e;
}
