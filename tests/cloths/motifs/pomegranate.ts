import type { Seeded } from "../ground/seeded.ts";
import { type Point, penStroke, shape, smooth } from "./path.ts";

export type FruitInks = {
  skin: string;
  blush: string;
  shade: string;
  line: string;
  pith: string;
  seed: string;
  glint: string;
};

const outline = (r: number): Point[] => [
  [0, r * 1.02],
  [-r * 0.62, r * 0.86],
  [-r * 0.98, r * 0.28],
  [-r * 0.9, -r * 0.42],
  [-r * 0.5, -r * 0.82],
  [-r * 0.2, -r * 0.93],
  [0, -r * 0.96],
  [r * 0.2, -r * 0.93],
  [r * 0.5, -r * 0.82],
  [r * 0.9, -r * 0.42],
  [r * 0.98, r * 0.28],
  [r * 0.62, r * 0.86],
];

/** A pomegranate of radius `r` about the origin, crown upward, stalk below; `split` opens it to show the seeds. */
export function pomegranate(r: number, split: boolean, inks: FruitInks, random: Seeded): string {
  const body = smooth(outline(r), true);
  const parts: string[] = [crown(r, inks, random), shape(body, { fill: inks.skin })];
  parts.push(
    shape(
      smooth(
        [
          [-r * 0.15, r * 0.95],
          [-r * 0.86, r * 0.3],
          [-r * 0.8, -r * 0.35],
          [-r * 0.35, -r * 0.82],
          [-r * 0.3, -r * 0.3],
          [-r * 0.42, r * 0.3],
        ],
        true,
      ),
      { fill: inks.blush },
    ),
  );
  // Hatching along the meridians, thickest toward the shaded right.
  for (let i = 0; i < 15; i++) {
    const s = 0.16 + (i / 15) * 0.8;
    const from = random.between(-0.72, -0.5) * Math.sqrt(1 - s * s * 0.7);
    const to = random.between(0.5, 0.86) * Math.sqrt(1 - s * s * 0.55);
    const line: Point[] = Array.from({ length: 9 }, (_, k) => {
      const y = to + ((from - to) * k) / 8;
      return [r * s * Math.sqrt(Math.max(0, 1 - y * y * 0.86)) * 0.985, r * y];
    });
    parts.push(penStroke(line, r * (0.016 + 0.02 * s), inks.shade));
  }
  for (let i = 0; i < 9; i++) {
    const s = -0.28 - (i / 9) * 0.66;
    const line: Point[] = Array.from({ length: 7 }, (_, k) => {
      const y = -0.2 + (random.between(0.42, 0.7) * k) / 6 + i * 0.02;
      return [r * s * Math.sqrt(Math.max(0, 1 - y * y * 0.86)) * 0.98, r * y];
    });
    parts.push(penStroke(line, r * 0.02, inks.skin));
  }
  if (split) parts.push(opening(r, inks, random));
  parts.push(shape(body, { stroke: inks.line, width: 0.6 + r * 0.013 }));
  return parts.join("");
}

function crown(r: number, inks: FruitInks, random: Seeded): string {
  const points: string[] = [];
  for (let i = -2; i <= 2; i++) {
    const lean = i * 0.17 * r;
    const tip: Point = [lean * 2.1, -r * (1.42 - 0.05 * Math.abs(i)) + random.bell() * r * 0.02];
    const sepal: Point[] = [
      [lean * 0.7 - r * 0.13, -r * 0.9],
      [lean * 1.1 - r * 0.13, -r * 1.14],
      tip,
      [lean * 1.1 + r * 0.13, -r * 1.12],
      [lean * 0.7 + r * 0.13, -r * 0.9],
    ];
    points.push(
      shape(smooth(sepal, true), {
        fill: i % 2 === 0 ? inks.blush : inks.skin,
        stroke: inks.line,
        width: 0.5 + r * 0.01,
      }),
      penStroke(
        [
          [lean * 0.8, -r * 0.92],
          [lean * 1.2, -r * 1.1],
          [tip[0] * 0.95, tip[1] * 0.96],
        ],
        r * 0.035,
        inks.shade,
      ),
    );
  }
  return points.join("");
}

function opening(r: number, inks: FruitInks, random: Seeded): string {
  const half = (y: number) =>
    r * 0.43 * Math.sqrt(Math.max(0, 1 - (y / 0.74) ** 2)) * (1 + 0.1 * Math.sin(y * 9));
  const side = (sign: 1 | -1): Point[] =>
    Array.from({ length: 13 }, (_, i): Point => {
      const y = -0.74 + (1.48 * i) / 12;
      return [r * 0.06 + sign * half(y) + random.bell() * r * 0.012, r * (y + 0.04)];
    });
  const left = side(-1);
  const lens = smooth([...left, ...side(1).slice(1, -1).reverse()], true);
  const seeds: string[] = [];
  const step = r * 0.165;
  for (let row = -5; row <= 5; row++) {
    for (let col = -3; col <= 3; col++) {
      const x = r * 0.06 + (col + (row % 2 === 0 ? 0 : 0.5)) * step;
      const y = r * 0.04 + row * step * 0.88;
      if (
        Math.abs(x - r * 0.06) > half(y / r - 0.04) - step * 0.45 ||
        Math.abs(y / r - 0.04) > 0.66
      )
        continue;
      const tilt = random.between(-25, 25).toFixed(0);
      const at = `translate(${x.toFixed(2)} ${y.toFixed(2)}) rotate(${tilt})`;
      seeds.push(
        `<g transform="${at}"><ellipse rx="${(step * 0.43).toFixed(2)}" ry="${(step * 0.5).toFixed(2)}" fill="${inks.seed}" stroke="${inks.line}" stroke-width="${(0.3 + r * 0.006).toFixed(2)}"/><ellipse cx="${(-step * 0.13).toFixed(2)}" cy="${(-step * 0.16).toFixed(2)}" rx="${(step * 0.11).toFixed(2)}" ry="${(step * 0.16).toFixed(2)}" fill="${inks.glint}"/></g>`,
      );
    }
  }
  return [
    shape(lens, { fill: inks.pith, stroke: inks.line, width: 0.5 + r * 0.012 }),
    ...seeds,
  ].join("");
}
