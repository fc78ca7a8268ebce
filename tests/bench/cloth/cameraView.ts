import type { LightTile } from "../../cloths/ground/tile.ts";
import type { Damage } from "./damage.ts";
import type { Vector } from "./primitive.ts";

/** From a place on the picture to one on the tile: turned, in perspective, waved. */
export function view(
  width: number,
  height: number,
  step: number,
  { turnDeg, corners, warp }: Damage,
  random: () => number,
  tile: LightTile,
): { map: (x: number, y: number) => Vector; flat: (x: number, y: number) => Vector } {
  const spread = () => 2 * random() - 1;
  const turn = (turnDeg * spread() * Math.PI) / 180;
  const [c, s] = [Math.cos(turn) * step, Math.sin(turn) * step];
  // The picture's corners on the cloth.
  const to = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ].map(([u = 0, v = 0]): [number, number] => {
    const x = (u - 0.5 + corners * spread()) * width;
    const y = (v - 0.5 + corners * spread()) * height;
    return [x * c - y * s, x * s + y * c];
  });
  const h = square(to as [Pair, Pair, Pair, Pair]);
  const start: Pair = [random() * tile.width, random() * tile.height];
  const waves = [0, 1, 2].map(() => ({
    fx: spread() * 2,
    fy: spread() * 2,
    at: 2 * Math.PI * random(),
    turn: 2 * Math.PI * random(),
  }));
  const flat = (x: number, y: number): Vector => {
    const [u, v] = [x / width, y / height];
    const w = h[6] * u + h[7] * v + 1;
    return [
      start[0] + (h[0] * u + h[1] * v + h[2]) / w,
      start[1] + (h[3] * u + h[4] * v + h[5]) / w,
    ];
  };
  const map = (x: number, y: number): Vector => {
    const [u, v] = [x / width, y / height];
    let [tx, ty] = flat(x, y);
    if (warp > 0) {
      for (const wave of waves) {
        const by =
          warp * width * step * Math.sin(2 * Math.PI * (wave.fx * u + wave.fy * v) + wave.at);
        tx += by * Math.cos(wave.turn);
        ty += by * Math.sin(wave.turn);
      }
    }
    return [tx, ty];
  };
  return { map, flat };
}

type Pair = [number, number];
type Eight = [number, number, number, number, number, number, number, number];

/** The homography of the unit square onto four places (Heckbert 1989, section 2.2.3), its ninth number 1. */
function square([p0, p1, p2, p3]: [Pair, Pair, Pair, Pair]): Eight {
  const [dx1, dy1] = [p1[0] - p2[0], p1[1] - p2[1]];
  const [dx2, dy2] = [p3[0] - p2[0], p3[1] - p2[1]];
  const [sx, sy] = [p0[0] - p1[0] + p2[0] - p3[0], p0[1] - p1[1] + p2[1] - p3[1]];
  const det = dx1 * dy2 - dx2 * dy1;
  const g = (sx * dy2 - dx2 * sy) / det;
  const h = (dx1 * sy - sx * dy1) / det;
  return [
    p1[0] - p0[0] + g * p1[0],
    p3[0] - p0[0] + h * p3[0],
    p0[0],
    p1[1] - p0[1] + g * p1[1],
    p3[1] - p0[1] + h * p3[1],
    p0[1],
    g,
    h,
  ];
}
