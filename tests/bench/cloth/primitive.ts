import type { LightTile } from "../../cloths/ground/tile.ts";

export type Vector = readonly [x: number, y: number];

/** What is known of how a tile repeats, in its pixels. */
export type Truth =
  | { readonly form: "lattice"; readonly basis: readonly [Vector, Vector] }
  /** The same all along one direction; the vector stands square to it, as long as the bands' period. */
  | { readonly form: "stripe"; readonly across: Vector; readonly directionDeg: number }
  /** It nearly repeats inside the tile: two people would not say the same. */
  | { readonly form: "doubtful" }
  /** A plain, or a tile that no photograph shows one and a half times. */
  | { readonly form: "none" };

/** Parts of the tile's width or height that a repeat within the tile may be. */
const MOST_PARTS = 24;
/** Mean difference of a tile from itself shifted, over its mean difference from its mean, up to which it is the same. */
const SAME = 0.06;
const DOUBTFUL = 0.3;

/**
 * The primitive lattice of a tile that wraps, without any Fourier transform: every shift by whole parts of its sides is laid over
 * the tile itself. Shifts that bring it onto itself make the lattice.
 */
export function primitive(tile: LightTile): Truth {
  const { width, height } = tile;
  const shade = shades(tile);
  let found: Vector[] = [];
  let doubtful = false;
  const seen = new Set<string>();
  const look = (k: number) => {
    for (let i = 0; i < k; i++) {
      for (let j = 0; j < k; j++) {
        if (i === 0 && j === 0) continue;
        const key = `${(i / k).toFixed(6)} ${(j / k).toFixed(6)}`;
        if (seen.has(key)) continue;
        seen.add(key);
        const shift: Vector = [(i * width) / k, (j * height) / k];
        const off = shade.differenceAt(shift);
        if (off < SAME) found.push(shift);
        else if (off < DOUBTFUL && shade.differenceAt(halfWay(shift, tile)) > off) doubtful = true;
      }
    }
  };
  // A pattern that repeats in k parts of its tile repeats in p parts of it, p a prime factor of k.
  for (const prime of [2, 3, 5, 7, 11, 13, 17, 19, 23]) look(prime);
  if (found.length > 0) {
    found = [];
    seen.clear();
    for (let k = 2; k <= MOST_PARTS; k++) look(k);
  }
  // Two parts of 1/24 and more along one line: the tile is the same all along it.
  if (found.length > 100) return stripe(found, tile);
  if (doubtful) return { form: "doubtful" };
  const all: Vector[] = [];
  for (const [x, y] of [[0, 0] as Vector, ...found]) {
    for (const u of [-1, 0, 1])
      for (const v of [-1, 0, 1]) all.push([x + u * width, y + v * height]);
  }
  const sorted = all.filter(([x, y]) => Math.hypot(x, y) > 1).sort((a, b) => norm(a) - norm(b));
  const cell = (width * height) / (found.length + 1);
  const a = sorted[0] as Vector;
  const b = sorted.find((v) => Math.abs(Math.abs(cross(a, v)) / cell - 1) < 0.01);
  return b ? { form: "lattice", basis: [a, b] } : { form: "doubtful" };
}

/** Half the way to a shift, round the nearer side: a broad band is nearly like itself a little further on, and more so half as far. */
function halfWay([x, y]: Vector, { width, height }: LightTile): Vector {
  const half = (v: number, side: number) => (2 * v > side ? (v + side) / 2 : v / 2);
  return [half(x, width), half(y, height)];
}

function stripe(found: readonly Vector[], { width, height }: LightTile): Truth {
  // The tile's own run: of all directions in which it maps to itself, that with the closest shifts.
  const wrapped = found.flatMap(([x, y]): Vector[] => [
    [x, y],
    [x - width, y],
    [x, y - height],
    [x - width, y - height],
  ]);
  const near = wrapped.sort((p, q) => norm(p) - norm(q))[0] as Vector;
  const run = Math.atan2(-near[1], near[0]);
  // The least distance from the run's line through the origin to a tile's corner that is not on it, over the shifts that keep it.
  const square: Vector = [Math.sin(run), Math.cos(run)];
  const steps = [...wrapped, [width, 0] as Vector, [0, height] as Vector]
    .map(([x, y]) => Math.abs(x * square[0] + y * square[1]))
    .filter((d) => d > 2)
    .sort((p, q) => p - q);
  const step = steps[0] ?? 0;
  return {
    form: "stripe",
    across: [square[0] * step, square[1] * step],
    directionDeg: ((((run * 180) / Math.PI) % 180) + 180) % 180,
  };
}

const norm = ([x, y]: Vector) => x * x + y * y;
const cross = (a: Vector, b: Vector) => a[0] * b[1] - a[1] * b[0];

/** The tile blurred a little, and how much it differs from itself at a shift: root mean square over some of its places. */
function shades({ width, height, light }: LightTile) {
  const encoded = Float32Array.from(light, (v) => Math.cbrt(v));
  const reach = 2;
  const soft = new Float32Array(encoded.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      for (let c = 0; c < 3; c++) {
        let sum = 0;
        for (let d = -reach; d <= reach; d++) {
          sum += encoded[(y * width + ((x + d + width) % width)) * 3 + c] as number;
          sum += encoded[(((y + d + height) % height) * width + x) * 3 + c] as number;
        }
        soft[(y * width + x) * 3 + c] = sum / (4 * reach + 2);
      }
    }
  }
  const places: number[] = [];
  // A row of places that falls evenly on the tile (steps by the golden ratio and by the root of two).
  const count = 3000;
  for (let n = 0; n < count; n++) {
    const x = Math.floor(((n * 0.6180339887) % 1) * width);
    const y = Math.floor(((n * 0.4142135624) % 1) * height);
    places.push(y * width + x);
  }
  const mean = [0, 1, 2].map(
    (c) => places.reduce((sum, p) => sum + (soft[p * 3 + c] as number), 0) / count,
  );
  let spread = 0;
  for (const p of places)
    for (let c = 0; c < 3; c++) spread += ((soft[p * 3 + c] as number) - (mean[c] as number)) ** 2;
  return {
    differenceAt([dx, dy]: Vector): number {
      let sum = 0;
      for (let n = 0; n < count; n++) {
        const p = places[n] as number;
        const x = ((p % width) + dx) % width;
        const y = (Math.floor(p / width) + dy) % height;
        const [x0, y0] = [Math.floor(x), Math.floor(y)];
        const [u, v] = [x - x0, y - y0];
        const [x1, y1] = [(x0 + 1) % width, (y0 + 1) % height];
        for (let c = 0; c < 3; c++) {
          const at = (i: number, j: number) => soft[(j * width + i) * 3 + c] as number;
          const there =
            (1 - v) * ((1 - u) * at(x0, y0) + u * at(x1, y0)) +
            v * ((1 - u) * at(x0, y1) + u * at(x1, y1));
          sum += ((soft[p * 3 + c] as number) - there) ** 2;
        }
        // What is plainly different need not be looked at everywhere.
        if ((n === 60 || n === 300) && sum / n > ((n === 60 ? 1.5 : 0.6) * spread) / count)
          return 1;
      }
      return Math.sqrt(sum / Math.max(2 * spread, 1e-12));
    },
  };
}
