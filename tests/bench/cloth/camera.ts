import sharp from "sharp";
import type { Pixels } from "../../../src/cloth/pixels/pixels.ts";
import { byteOfLinear } from "../../../src/colour/linear.ts";
import { seeded } from "../../cloth/made.ts";
import { type LightTile, sampleWrapped } from "../../cloths/ground/tile.ts";
import { view } from "./cameraView.ts";
import { DAMAGE, type Damage, type Level } from "./damage.ts";
import type { Vector } from "./primitive.ts";

export interface Shot {
  readonly pixels: Pixels & { readonly data: Uint8Array };
  /** Length of cloth along the middle line from left to right, in pixels of the tile. */
  readonly shows: number;
  /** A shift on the tile as a shift on the picture's middle, in pixels of the picture. */
  toPicture(shift: Vector): Vector;
}

export interface Framing {
  readonly width: number;
  readonly height: number;
  /** Pixels of the tile that one of the picture covers. */
  readonly step: number;
}

/** Photographs a tile that wraps. The same seed gives the same photograph. */
export async function shoot(
  tile: LightTile,
  { width, height, step }: Framing,
  level: Level,
  seed: number,
  grain = 0,
): Promise<Shot> {
  const random = seeded(seed);
  const speckle = seeded(seed + 7919 * (grain + 1));
  const damage = DAMAGE[level];
  // Waves in the cloth are part of the picture, not of the truth: what is asked is the cloth pulled flat.
  const { map, flat } = view(width, height, step, damage, random, tile);
  const light = expose(tile, width, height, step, map);
  lightUp(light, width, height, damage, random, speckle);
  const soft = damage.blurPx > 0 ? blur(light, width, height, damage.blurPx) : light;
  const data = new Uint8Array(soft.length);
  for (let i = 0; i < data.length; i++) {
    const grain = damage.noise > 0 ? damage.noise * gauss(speckle) : 0;
    data[i] = Math.min(255, Math.max(0, Math.round(byteOfLinear(soft[i] as number) + grain)));
  }
  const middle = flat(width / 2, height / 2);
  // Derivative of the picture's middle on the tile, turned round.
  const d = 0.5;
  const [px, py] = [flat(width / 2 + d, height / 2), flat(width / 2, height / 2 + d)];
  const [a, c] = [(px[0] - middle[0]) / d, (px[1] - middle[1]) / d];
  const [b, e] = [(py[0] - middle[0]) / d, (py[1] - middle[1]) / d];
  const det = a * e - b * c;
  const [left, right] = [flat(0, height / 2), flat(width, height / 2)];
  return {
    pixels: {
      width,
      height,
      data: damage.jpeg === null ? data : await throughJpeg(data, width, height, damage.jpeg),
    },
    shows: Math.hypot(right[0] - left[0], right[1] - left[1]),
    toPicture: ([x, y]) => [(e * x - b * y) / det, (a * y - c * x) / det],
  };
}

async function throughJpeg(data: Uint8Array, width: number, height: number, quality: number) {
  const file = await sharp(data, { raw: { width, height, channels: 3 } })
    .jpeg({ quality })
    .toBuffer();
  const { data: back } = await sharp(file).raw().toBuffer({ resolveWithObject: true });
  return new Uint8Array(back);
}

function expose(
  tile: LightTile,
  width: number,
  height: number,
  step: number,
  map: (x: number, y: number) => Vector,
) {
  const source = step > 1.6 ? halved(tile, Math.floor(Math.log2(step / 0.8))) : { tile, factor: 1 };
  const { factor } = source;
  const n = 2;
  const light = new Float32Array(width * height * 3);
  const point = new Float32Array(3);
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i += 3) {
      for (let k = 0; k < n * n; k++) {
        const [tx, ty] = map(x + ((k % n) + 0.5) / n, y + ((k >> 1) + 0.5) / n);
        sampleWrapped(source.tile, tx / factor - 0.5, ty / factor - 0.5, point);
        for (let c = 0; c < 3; c++) (light[i + c] as number) += (point[c] as number) / (n * n);
      }
    }
  }
  return light;
}

/** The tile at half its size, some times over, as far as its sides stay even. */
function halved(tile: LightTile, times: number): { tile: LightTile; factor: number } {
  let now = tile;
  let factor = 1;
  for (
    let t = 0;
    t < times && now.width % 2 === 0 && now.height % 2 === 0 && Math.min(now.width, now.height) > 8;
    t++
  ) {
    const [w, h] = [now.width / 2, now.height / 2];
    const light = new Float32Array(w * h * 3);
    for (let y = 0; y < now.height; y++)
      for (let x = 0; x < now.width; x++)
        for (let c = 0; c < 3; c++)
          (light[((y >> 1) * w + (x >> 1)) * 3 + c] as number) +=
            (now.light[(y * now.width + x) * 3 + c] as number) / 4;
    now = { width: w, height: h, pxPerMm: now.pxPerMm / 2, light };
    factor *= 2;
  }
  return { tile: now, factor };
}

/** Contrast, weave, fall of light and folds. */
function lightUp(
  light: Float32Array,
  width: number,
  height: number,
  damage: Damage,
  random: () => number,
  speckle: () => number,
): void {
  const { contrast, fall, folds, weave } = damage;
  const mean = [0, 0, 0];
  for (let i = 0; i < light.length; i++)
    mean[i % 3] = (mean[i % 3] as number) + (light[i] as number) / (light.length / 3);
  const way = 2 * Math.PI * random();
  const [lx, ly] = [Math.cos(way), Math.sin(way)];
  const creases = Array.from({ length: 3 }, () => ({
    turn: Math.PI * random(),
    at: random() - 0.5,
    wide: 0.04 + 0.08 * random(),
    deep: (1 - folds) * (0.4 + 0.6 * random()),
  }));
  const yarn = 2.6 + 1.2 * random();
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i += 3) {
      const [u, v] = [x / width - 0.5, y / height - 0.5];
      let lamp = 1 - fall * (0.5 + 0.5 * Math.max(-1, Math.min(1, 1.6 * (lx * u + ly * v))));
      for (const { turn, at, wide, deep } of folds < 1 ? creases : []) {
        const off = (u * Math.cos(turn) + v * Math.sin(turn) - at) / wide;
        lamp *= 1 - deep * Math.exp(-off * off);
      }
      if (weave > 0) {
        const [warp, weft] = [
          Math.sin((2 * Math.PI * x) / yarn),
          Math.sin((2 * Math.PI * y) / yarn),
        ];
        lamp *= 1 + weave * (warp * weft + speckle() - 0.5);
      }
      for (let c = 0; c < 3; c++) {
        const seen =
          (mean[c] as number) + ((light[i + c] as number) - (mean[c] as number)) * contrast;
        light[i + c] = seen * lamp;
      }
    }
  }
}

function gauss(random: () => number): number {
  return (random() + random() + random() + random() - 2) * 1.7320508;
}

/** Gaussian blur, rows then columns; its rim repeats. */
function blur(light: Float32Array, width: number, height: number, sigma: number): Float32Array {
  const reach = Math.ceil(3 * sigma);
  const kernel = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  );
  const total = kernel.reduce((sum, k) => sum + k, 0);
  const pass = (from: Float32Array, across: boolean) => {
    const to = new Float32Array(from.length);
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++)
        for (let d = -reach; d <= reach; d++) {
          const xx = across ? Math.min(width - 1, Math.max(0, x + d)) : x;
          const yy = across ? y : Math.min(height - 1, Math.max(0, y + d));
          const k = (kernel[d + reach] as number) / total;
          for (let c = 0; c < 3; c++)
            (to[(y * width + x) * 3 + c] as number) +=
              k * (from[(yy * width + xx) * 3 + c] as number);
        }
    return to;
  };
  return pass(pass(light, true), false);
}
