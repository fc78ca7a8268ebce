import type { Relief } from "../pixels/reliefOf.ts";
import { powerOfTwo } from "../pixels/transform2d.ts";
import { productsOf, realPower } from "./powerSpectrum.ts";

/**
 * How alike a picture is to itself when it is shifted: -1 to 1 for each shift of `x` from -reachX to reachX and `y` from
 * -reachY to reachY, row by row; symmetrical about the middle.
 */
export interface Correlation {
  readonly reachX: number;
  readonly reachY: number;
  readonly values: Float32Array;
}

/** Shifts up to this part of each side: at the furthest corner a sixteenth of the picture still overlaps. */
const REACH = 0.75;

/**
 * Autocorrelation of a relief, its three channels taken together: by FFT of the picture padded with noughts, so that nothing
 * wraps, each shift divided by the energy of the two parts that overlap.
 */
export function autocorrelation({ width, height, channels }: Relief): Correlation {
  const reachX = Math.floor(REACH * width);
  const reachY = Math.floor(REACH * height);
  const across = powerOfTwo(width + reachX);
  const down = powerOfTwo(height + reachY);
  const power = realPower(channels, width, height, across, down);
  const products = productsOf(power, across, down, reachY + 1);
  const energy = energySums(channels, width, height);
  const rowLength = 2 * reachX + 1;
  const values = new Float32Array(rowLength * (2 * reachY + 1));
  for (let dy = 0; dy <= reachY; dy++) {
    for (let dx = -reachX; dx <= reachX; dx++) {
      const own = energy(Math.max(0, -dx), 0, width - Math.max(0, dx), height - dy);
      const other = energy(Math.max(0, dx), dy, width - Math.max(0, -dx), height);
      const share = Math.sqrt(own * other);
      const product = products[dy * across + ((dx + across) % across)] as number;
      const value = share > 1e-9 ? product / share : 0;
      values[(dy + reachY) * rowLength + dx + reachX] = value;
      values[(reachY - dy) * rowLength + reachX - dx] = value;
    }
  }
  return { reachX, reachY, values };
}

/** The correlation at a shift in whole pixels; 0 outside the reach. */
export function at({ reachX, reachY, values }: Correlation, x: number, y: number): number {
  if (Math.abs(x) > reachX || Math.abs(y) > reachY) return 0;
  return values[(y + reachY) * (2 * reachX + 1) + x + reachX] as number;
}

/** The correlation between whole pixels, linear in both directions. */
export function between(correlation: Correlation, x: number, y: number): number {
  const [x0, y0] = [Math.floor(x), Math.floor(y)];
  const [u, v] = [x - x0, y - y0];
  return (
    (1 - v) * ((1 - u) * at(correlation, x0, y0) + u * at(correlation, x0 + 1, y0)) +
    v * ((1 - u) * at(correlation, x0, y0 + 1) + u * at(correlation, x0 + 1, y0 + 1))
  );
}

/**
 * The correlation between whole pixels, by cubic convolution (Keys 1981, a = -1/2): a line from pixel to pixel would cut the top
 * off a peak that lies between them.
 */
export function cubicBetween(correlation: Correlation, x: number, y: number): number {
  const [x0, y0] = [Math.floor(x), Math.floor(y)];
  const across = cubicWeights(x - x0);
  const down = cubicWeights(y - y0);
  let sum = 0;
  for (let j = 0; j < 4; j++) {
    let row = 0;
    for (let i = 0; i < 4; i++)
      row += (across[i] as number) * at(correlation, x0 + i - 1, y0 + j - 1);
    sum += (down[j] as number) * row;
  }
  return sum;
}

/** Places to each side that a sinc is taken over, and the weights' own window (Lanczos). */
const LOBES = 3;

/**
 * The correlation between whole pixels by a windowed sinc (Lanczos, three lobes): waves hardly longer than three pixels keep their
 * height, which cubic convolution flattens.
 */
export function sincBetween(correlation: Correlation, x: number, y: number): number {
  const [x0, y0] = [Math.floor(x), Math.floor(y)];
  const across = sincWeights(x - x0);
  const down = sincWeights(y - y0);
  let sum = 0;
  for (let j = 0; j < 2 * LOBES; j++) {
    let row = 0;
    for (let i = 0; i < 2 * LOBES; i++)
      row += (across[i] as number) * at(correlation, x0 + i - LOBES + 1, y0 + j - LOBES + 1);
    sum += (down[j] as number) * row;
  }
  return sum;
}

/** Weights of the places about `t`, 0 to 1 behind the middle one, which sum to one. */
function sincWeights(t: number): Float64Array {
  const weights = new Float64Array(2 * LOBES);
  let all = 0;
  for (let i = 0; i < weights.length; i++) {
    const off = i - LOBES + 1 - t;
    const weight = sinc(off) * sinc(off / LOBES);
    weights[i] = weight;
    all += weight;
  }
  for (let i = 0; i < weights.length; i++) weights[i] = (weights[i] as number) / all;
  return weights;
}

function sinc(v: number): number {
  return v === 0 ? 1 : Math.sin(Math.PI * v) / (Math.PI * v);
}

function cubicWeights(t: number): [number, number, number, number] {
  const [t2, t3] = [t * t, t * t * t];
  return [
    (-t3 + 2 * t2 - t) / 2,
    (3 * t3 - 5 * t2 + 2) / 2,
    (-3 * t3 + 4 * t2 + t) / 2,
    (t3 - t2) / 2,
  ];
}

/** Sum of squares over any rectangle, from sums over all rectangles at the top left corner. */
function energySums(channels: Relief["channels"], width: number, height: number) {
  const sums = new Float64Array((width + 1) * (height + 1));
  for (let y = 0, p = 0; y < height; y++) {
    let row = 0;
    for (let x = 0; x < width; x++, p++) {
      for (const channel of channels) row += (channel[p] as number) ** 2;
      sums[(y + 1) * (width + 1) + x + 1] = (sums[y * (width + 1) + x + 1] as number) + row;
    }
  }
  const sum = (x: number, y: number) => sums[y * (width + 1) + x] as number;
  return (left: number, top: number, right: number, bottom: number) =>
    sum(right, bottom) - sum(left, bottom) - sum(right, top) + sum(left, top);
}
