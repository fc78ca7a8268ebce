import { rasterise, wrapped } from "../ground/drawn.ts";
import { mixHex } from "../ground/light.ts";
import { cloudy, noise2 } from "../ground/noise.ts";
import { seeded } from "../ground/seeded.ts";
import { type LightTile, sampleWrapped } from "../ground/tile.ts";
import { cubic, type Point, penStroke, placed, shape, smooth } from "../motifs/path.ts";
import { stove } from "./palettes.ts";

const INCH = 25.4;
const W = 10.25 * INCH;
const H = 21 * INCH;

/** Bellwether: a wallpaper of willow boughs, three flat greens on straw, printed on paper. */
export async function bellwether(pxPerMm: number): Promise<LightTile> {
  const random = seeded(9101);
  const ground = mixHex(stove.cream, stove.straw, 0.34);
  const back = mixHex(ground, stove.lichen, 0.55);
  const bough = (phase: number, swing: number, x0: number): ((t: number) => Point) => {
    return (t) => [
      x0 +
        swing * Math.sin(2 * Math.PI * t + phase) +
        swing * 0.3 * Math.sin(4 * Math.PI * t + phase * 2),
      H * (1 - t),
    ];
  };
  const willow = (
    length: number,
    width: number,
    bend: number,
    pale: string,
    deep: string,
    vein: string,
  ) => {
    const line = cubic(
      [0, 0],
      [length * 0.35, bend * length * 0.05],
      [length * 0.7, bend * length * 0.4],
      [length, bend * length * 0.8],
    );
    const edge = (side: 1 | -1) =>
      line.map(([x, y], i): Point => {
        const t = i / (line.length - 1);
        return [x, y + side * (width / 2) * Math.sin(Math.PI * t ** 0.8) ** 0.9];
      });
    return (
      shape(smooth([...edge(1), ...edge(-1).reverse()], true), { fill: pale }) +
      shape(smooth([...edge(1), ...[...line].reverse()], true), { fill: deep }) +
      penStroke(line.slice(0, 13), 0.9, vein)
    );
  };
  const leafy = (
    path: (t: number) => Point,
    count: number,
    size: number,
    inks: readonly [string, string, string],
    stalk: string,
    berries: boolean,
  ) => {
    const trunk = Array.from({ length: 61 }, (_, i) => path(i / 60));
    let leaves = "";
    for (let i = 0; i < count; i++) {
      const t = (i + 0.2) / count;
      const [x, y] = path(t);
      const [x2, y2] = path(t + 0.004);
      const lean = (Math.atan2(y2 - y, x2 - x) * 180) / Math.PI;
      for (const side of [-1, 1] as const) {
        const length = size * random.between(0.82, 1.12);
        const turn = lean + side * random.between(30, 52);
        leaves += placed(
          willow(length, length * 0.2, side * random.between(-0.05, 0.28), ...inks),
          x,
          y,
          turn,
        );
      }
      if (berries && i % 5 === 2) {
        for (const [dx, dy, r] of [
          [10, -6, 3.4],
          [15, -1, 2.9],
          [12, 6, 2.4],
        ] as const) {
          leaves += placed(
            `<circle r="${r}" fill="${stove.brick}"/><circle cx="-0.9" cy="-0.9" r="0.9" fill="${stove.shell}"/>`,
            x + dx,
            y + dy,
          );
        }
      }
    }
    return shape(smooth(trunk), { stroke: stalk, width: size * 0.045 }) + leaves;
  };
  const shadow =
    leafy(bough(1.9, 34, W * 0.02), 16, 66, [back, back, ground], back, false) +
    leafy(bough(4.4, 26, W * 0.55), 16, 58, [back, back, ground], back, false);
  const near =
    leafy(
      bough(0.3, 40, W * 0.27),
      19,
      60,
      [stove.lichen, stove.fern, stove.cream],
      stove.fern,
      true,
    ) +
    leafy(
      bough(3.2, 36, W * 0.78),
      19,
      60,
      [stove.fern, stove.bottle, stove.lichen],
      stove.bottle,
      true,
    );
  const drawing = await rasterise(
    {
      widthMm: W,
      heightMm: H,
      ground,
      layers: [shadow, near].map((layer, i) => wrapped(layer, W, H, `w${i}`, false)),
    },
    pxPerMm,
  );
  return onPaper(drawing, 9102);
}

/** Flat ink on a matt paper: edges that wander by a hair, a breath of unevenness, no weave. */
function onPaper(drawing: LightTile, seed: number): LightTile {
  const { width, height, pxPerMm } = drawing;
  const dx = noise2(seed, Math.round(width / 8), Math.round(height / 8));
  const dy = noise2(seed + 1, Math.round(width / 8), Math.round(height / 8));
  const roller = cloudy(seed + 2, 4, 8);
  const tooth = noise2(seed + 3, Math.round(width / 2.2), Math.round(height / 2.2));
  const light = new Float32Array(drawing.light.length);
  const ink = new Float32Array(3);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const u = x / width;
      const v = y / height;
      sampleWrapped(drawing, x + 0.5 * dx(u, v), y + 0.5 * dy(u, v), ink);
      const shade = 1 + 0.018 * roller(u, v) + 0.016 * tooth(u, v);
      const at = (y * width + x) * 3;
      for (let k = 0; k < 3; k++) light[at + k] = Math.min(1, (ink[k] as number) * shade);
    }
  }
  return { width, height, pxPerMm, light };
}
