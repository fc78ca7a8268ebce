// The kernels against what they stand for: fft.js (npm, MIT) for the Fourier transform, plain sums for the rest.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import FFT from "fft.js";
import { expect, test } from "vitest";
import { powerOf, productsOf, transformed } from "../../src/cloth/kernels/fourier.ts";
import { windowsOf } from "../../src/cloth/kernels/windowsOf.ts";
import { seeded } from "../cloth/made.ts";
import { compileKernels, moduleText } from "./compile.ts";

test("the compiled kernels are those of their sources; else `npm run kernels` writes them anew", async () => {
  const kept = readFileSync(join(import.meta.dirname, "../../src/cloth/kernels/code.ts"), "utf8");
  expect(moduleText(await compileKernels()) === kept).toBe(true);
}, 60_000);

const noise = (seed: number, count: number) => {
  const random = seeded(seed);
  return Float32Array.from({ length: count }, () => 2 * random() - 1);
};

/** Rows, then columns, by fft.js. */
function byFftJs(re: Float32Array, im: Float32Array, across: number, down: number): number[][] {
  const field = Array.from(re, (v, p) => [v, im[p] as number]);
  const lines = (count: number, of: (i: number) => number, other: number, step: number) => {
    const fft = new FFT(count);
    for (let n = 0; n < other; n++) {
      const line = Array.from({ length: count }, (_, i) => field[of(n) + i * step] as number[]);
      const out = new Float64Array(2 * count);
      fft.transform(out, line.flat());
      for (let i = 0; i < count; i++)
        field[of(n) + i * step] = [out[2 * i] as number, out[2 * i + 1] as number];
    }
  };
  lines(across, (y) => y * across, down, 1);
  lines(down, (x) => x, across, across);
  return field;
}

test.each([
  [4, 4],
  [8, 4],
  [16, 128],
  [64, 32],
  [256, 8],
])("the Fourier transform of %i by %i numbers as fft.js has it", (across, down) => {
  const [re, im] = [noise(1, across * down), noise(2, across * down)];
  const [foundRe, foundIm] = transformed(re, im, across, down);
  const scale = Math.sqrt(across * down);
  for (const [p, [wantedRe = 0, wantedIm = 0]] of byFftJs(re, im, across, down).entries()) {
    expect((foundRe[p] as number) / scale).toBeCloseTo(wantedRe / scale, 5);
    expect((foundIm[p] as number) / scale).toBeCloseTo(wantedIm / scale, 5);
  }
});

test("power and products of two channels and a third, padded, by plain sums", () => {
  const size = { width: 9, height: 7, across: 16, down: 16 };
  const { width, height, across } = size;
  const channels = [3, 4, 5].map((seed) => noise(seed, width * height));
  const [a, b, c] = channels as [Float32Array, Float32Array, Float32Array];
  const pairs = [[a, b], [c]] as const;
  const power = powerOf(pairs, size).reduce((sum, v) => sum + v, 0);
  // Parseval's theorem.
  const squares = channels.flatMap((v) => [...v]).reduce((sum, v) => sum + v * v, 0);
  expect(power / (size.across * size.down)).toBeCloseTo(squares, 3);
  const products = productsOf(pairs, size, 5);
  for (const [dx, dy] of [
    [0, 0],
    [3, 0],
    [-4, 1],
    [2, 4],
  ] as const) {
    let wanted = 0;
    for (const channel of channels)
      for (let y = 0; y + dy < height; y++)
        for (let x = Math.max(0, -dx); x < width - Math.max(0, dx); x++)
          wanted +=
            (channel[y * width + x] as number) * (channel[(y + dy) * width + x + dx] as number);
    expect(products[dy * across + ((dx + across) % across)]).toBeCloseTo(wanted, 4);
  }
});

test.each([
  [5, 1, 5],
  [7, 2, 9],
])("products of windows, %i places to a side and %i apart, by plain sums", (count, step, side) => {
  const [width, height] = [40, 32];
  const channels = [6, 7, 8].map((seed) => noise(seed, width * height)) as never;
  const windows = windowsOf({ width, height, channels }, side);
  const [own, first] = [3 * width + 4, 6 * width + 11];
  const found = windows.products(own, first, count, step);
  for (let dy = 0; dy < side; dy++) {
    for (let dx = 0; dx < side; dx++) {
      let wanted = 0;
      for (const channel of channels as Float32Array[])
        for (let v = 0; v < count; v++)
          for (let u = 0; u < count; u++) {
            const at = (v * width + u) * step;
            const other = channel[first + dy * width + dx + at] as number;
            wanted += (channel[own + at] as number) * other;
          }
      expect(found[dy * windows.stride + dx]).toBeCloseTo(wanted, 4);
    }
  }
});
