// Quick ways to work on whole pictures against the slow and plain ones.
import { expect, test } from "vitest";
import { distanceToEdge } from "../../src/cloth/pixels/distanceToEdge.ts";
import { gaussian } from "../../src/cloth/pixels/gaussian.ts";
import { shrink } from "../../src/cloth/pixels/shrink.ts";
import { valueAt } from "../../src/cloth/pixels/valueAt.ts";
import { autocorrelation, at as correlationAt } from "../../src/cloth/repeat/autocorrelation.ts";
import { channelOfLinear, linearOfChannel } from "../../src/colour/linear.ts";
import { seeded } from "./made.ts";

test.each([
  [97, 61, 40, 23],
  [64, 48, 32, 24],
  [50, 30, 49, 29],
  [50, 30, 1, 1],
])(
  "%i x %i pixels shrunk to %i x %i are the mean light of what each covers",
  (width, height, w, h) => {
    const random = seeded(width + w);
    const data = Uint8Array.from({ length: width * height * 3 }, () => 256 * random());
    const small = shrink({ width, height, data }, w, h);
    expect([small.width, small.height, small.data.length]).toEqual([w, h, w * h * 3]);
    // How much of an old place lies between two edges.
    const part = (i: number, from: number, to: number) =>
      Math.max(0, Math.min(i + 1, to) - Math.max(i, from));
    for (let at = 0; at < w * h; at += 7) {
      const [x, y] = [at % w, Math.floor(at / w)];
      let [light, area] = [0, 0];
      for (let v = 0; v < height; v++) {
        for (let u = 0; u < width; u++) {
          const covered =
            part(u, (x * width) / w, ((x + 1) * width) / w) *
            part(v, (y * height) / h, ((y + 1) * height) / h);
          light += covered * linearOfChannel(data[(v * width + u) * 3] as number);
          area += covered;
        }
      }
      const code = channelOfLinear(light / area);
      expect(Math.abs((small.data[at * 3] as number) - code)).toBeLessThan(0.75);
    }
  },
);

test("distances to the nearest place outside, by trying all of them", () => {
  const [width, height] = [37, 29];
  const random = seeded(5);
  const masks = [0.98, 0.9, 0.5, 0].map((share) =>
    Uint8Array.from({ length: width * height }, () => (random() < share ? 1 : 0)),
  );
  for (const mask of masks) {
    const found = distanceToEdge(mask, width, height);
    const outside = [...mask.keys()].filter((p) => !mask[p]);
    for (const p of mask.keys()) {
      const [x, y] = [p % width, Math.floor(p / width)];
      const least = Math.min(
        ...outside.map((q) => Math.hypot(x - (q % width), y - Math.floor(q / width))),
      );
      expect(found[p]).toBeCloseTo(least, 4);
    }
  }
  // Nothing outside: as far as the picture goes.
  const all = distanceToEdge(new Uint8Array(width * height).fill(1), width, height);
  expect(Math.min(...all)).toBeGreaterThan(width);
});

test.each([
  [23, 17],
  [40, 31],
])("a relief of %i x %i is as alike to itself as sums over all its places say", (width, height) => {
  const random = seeded(width);
  const channel = () => Float32Array.from({ length: width * height }, () => random() - 0.5);
  const channels = [channel(), channel(), channel()] as const;
  const found = autocorrelation({ width, height, channels, scale: 1 });
  for (const [dx, dy] of [
    [0, 0],
    [3, 0],
    [-7, 4],
    [11, 9],
    [-found.reachX, found.reachY],
    [found.reachX, -3],
  ] as const) {
    let [product, own, other] = [0, 0, 0];
    for (const values of channels) {
      for (let y = Math.max(0, -dy); y < height - Math.max(0, dy); y++) {
        for (let x = Math.max(0, -dx); x < width - Math.max(0, dx); x++) {
          const [one, two] = [values[y * width + x], values[(y + dy) * width + x + dx]];
          product += (one as number) * (two as number);
          own += (one as number) ** 2;
          other += (two as number) ** 2;
        }
      }
    }
    expect(correlationAt(found, dx, dy)).toBeCloseTo(product / Math.sqrt(own * other), 5);
  }
});

test("a value's place among the others, by sorting them", () => {
  const random = seeded(9);
  for (const values of [
    Float32Array.from({ length: 5000 }, () => random() ** 4),
    Float32Array.from({ length: 700 }, () => Math.floor(4 * random())),
    Float32Array.of(3.5),
  ]) {
    const sorted = Float32Array.from(values).sort();
    for (const part of [0, 0.3, 0.5, 0.95, 0.9999]) {
      const place = Math.floor(part * values.length);
      expect(valueAt(values, place)).toBe(sorted[place]);
    }
  }
});

test("a Gaussian mean by three plain running means", () => {
  const [width, height] = [23, 17];
  const random = seeded(11);
  const values = Float32Array.from({ length: width * height }, random);
  for (const sigma of [0.8, 2, 9]) {
    const radius = Math.max(1, Math.round((Math.sqrt(4 * sigma * sigma + 1) - 1) / 2));
    let now = [...values];
    for (let pass = 0; pass < 6; pass++) {
      const [dx, dy] = pass % 2 === 0 ? [1, 0] : [0, 1];
      now = now.map((_, p) => {
        let [sum, n] = [0, 0];
        for (let r = -radius; r <= radius; r++) {
          const [x, y] = [(p % width) + r * dx, Math.floor(p / width) + r * dy];
          if (x < 0 || y < 0 || x >= width || y >= height) continue;
          sum += now[y * width + x] as number;
          n++;
        }
        return sum / n;
      });
    }
    const found = gaussian(values, width, height, sigma);
    for (const [p, v] of now.entries()) expect(found[p]).toBeCloseTo(v, 5);
  }
});
