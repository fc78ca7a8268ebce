import type { Sharp } from "sharp";
import { sampleColours } from "../cloth/colourSample.ts";
import { evenPicture } from "../cloth/evenLight.ts";
import { fallOfLight } from "../cloth/fallOfLight.ts";
import { rgbOfHex } from "../colour/hex.ts";
import { byteOfLinear, LINEAR_OF_BYTE } from "../colour/linear.ts";
import { evenLight, type Gain } from "./evenLight.ts";
import { type Step, stepFinder } from "./findStep.ts";
import { shrinkInLight } from "./shrinkInLight.ts";

/** One cell of a cloth's pattern, to be made from its photograph; all in pixels of the upright picture. */
export interface TileCell {
  readonly widthPx: number;
  readonly heightPx: number;
  /** False where nothing comes again that way: the cell's size is then free, and is a part of the picture. */
  readonly repeatsAcross: boolean;
  readonly repeatsUp: boolean;
  /** True where every other column hangs half a cell lower. */
  readonly halfDrop: boolean;
  /** The place of the photograph that stands in the cell's middle. */
  readonly middle: { readonly x: number; readonly y: number };
  /** Where the photograph shows less than a cell: the colour of what it does not show. Null where it shows all. */
  readonly ground: string | null;
}

/** Known steps: the photograph may be turned by three degrees or so, and show a few parts of a hundred more or less than was said. */
const KNOWN = { along: 0.035, across: 0.055 };
/** Free steps: as far as a fine weave needs to come into line with itself. */
const FREE = { along: 0.04, across: 0.02 };
/** Under this a cloth does not agree with itself at all, and the card's step is kept. */
const LEAST = 0.12;
/** How sharply the picture's middle is preferred to its edges. */
const PREFER = 4;
/** The soft edge of a photograph that shows less than a cell, as a part of its shorter side. */
const SOFT = 0.07;

/** The picture without what a lamp or a window does to all of its dyes alike. */
function lampTakenOut(data: Buffer, width: number, height: number): Buffer {
  const picture = { width, height, data: new Uint8Array(data) };
  const fall = fallOfLight(sampleColours(picture), picture);
  return fall ? Buffer.from(evenPicture(picture, fall).data) : data;
}

interface Lattice {
  /** From column to column, level or half a cell lower, and down one cell. */
  readonly across: Step;
  readonly up: Step;
  /** How well the cloth agrees with itself one step on. */
  readonly agrees: number;
  readonly found: readonly Step[];
}

async function latticeOf(
  data: Buffer,
  width: number,
  height: number,
  cell: TileCell,
): Promise<Lattice> {
  const across: Step = [cell.widthPx, cell.halfDrop ? cell.heightPx / 2 : 0];
  const up: Step = [0, cell.heightPx];
  if (cell.ground !== null) return { across, up, agrees: 1, found: [] };
  const find = await stepFinder(data, width, height);
  const a = find(across, cell.repeatsAcross ? KNOWN : FREE);
  const b = find(up, cell.repeatsUp ? KNOWN : FREE);
  const good = [a, b].map((f) => (f && f.agrees >= LEAST ? f : null));
  // What one step tells of the photograph's turn and size holds for the other, where that one cannot be seen.
  const like = (wanted: Step, from: Step, to: Step): Step => {
    const size = from[0] ** 2 + from[1] ** 2;
    const cos = (from[0] * to[0] + from[1] * to[1]) / size;
    const sin = (from[0] * to[1] - from[1] * to[0]) / size;
    return [wanted[0] * cos - wanted[1] * sin, wanted[0] * sin + wanted[1] * cos];
  };
  const [fa, fb] = good;
  const knownA = fa && cell.repeatsAcross ? fa.step : null;
  const knownB = fb && cell.repeatsUp ? fb.step : null;
  return {
    across: fa?.step ?? (knownB ? like(across, up, knownB) : across),
    up: fb?.step ?? (knownA ? like(up, across, knownA) : up),
    agrees: Math.max(0, Math.min(fa?.agrees ?? 1, fb?.agrees ?? 1)),
    found: [fa?.step, fb?.step].filter((s) => s !== undefined),
  };
}

/** A picture in linear light, its even light taken out, read between its pixels. */
function reader(data: Buffer, width: number, height: number, gain: Gain) {
  const lit = new Float32Array(width * height * 3);
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i += 3) {
      const g = gain(x, y);
      for (let c = i; c < i + 3; c++) lit[c] = g * (LINEAR_OF_BYTE[data[c] as number] as number);
    }
  return (x: number, y: number, out: Float64Array): void => {
    const fx = Math.max(0, Math.min(width - 1, x));
    const fy = Math.max(0, Math.min(height - 1, y));
    const x0 = Math.floor(fx);
    const y0 = Math.floor(fy);
    const tx = fx - x0;
    const ty = fy - y0;
    const a = (y0 * width + x0) * 3;
    const right = x0 + 1 < width ? 3 : 0;
    const below = y0 + 1 < height ? width * 3 : 0;
    for (let c = a; c < a + 3; c++) {
      const upper = (lit[c] as number) * (1 - tx) + (lit[c + right] as number) * tx;
      const lower = (lit[c + below] as number) * (1 - tx) + (lit[c + below + right] as number) * tx;
      out[c - a] = upper * (1 - ty) + lower * ty;
    }
  };
}

/** The mean of a picture's light, each channel. */
function meanLight(read: ReturnType<typeof reader>, width: number, height: number): number[] {
  const sum = [0, 0, 0];
  const point = new Float64Array(3);
  const n = 40;
  for (let j = 0; j < n; j++)
    for (let i = 0; i < n; i++) {
      read(((i + 0.5) * width) / n, ((j + 0.5) * height) / n, point);
      for (let c = 0; c < 3; c++) sum[c] = (sum[c] as number) + (point[c] as number) / (n * n);
    }
  return sum;
}

/**
 * One cell of a cloth that joins itself on all four sides, `heightPx` high and `widthPx` wide, with the photograph's turn taken out.
 * Every point is read wherever the photograph shows it, one step of the pattern apart, the nearer to the picture's middle the more:
 * so there is no seam to hide, light that falls off is even, and nothing is shown that the photograph does not show. Where it shows
 * less than a cell it stands in the cell's middle with a soft edge on a plain ground. Raw RGB in and out.
 */
export async function seamlessCell(
  photo: Buffer,
  width: number,
  height: number,
  cell: TileCell,
): Promise<Buffer> {
  const data = lampTakenOut(photo, width, height);
  const { across, up, agrees, found } = await latticeOf(data, width, height, cell);
  const texture = !cell.repeatsAcross && !cell.repeatsUp;
  const gain: Gain =
    cell.ground !== null
      ? () => 1
      : texture || found.length > 0
        ? await evenLight(data, width, height, texture ? [] : found)
        : () => 1;
  const read = reader(data, width, height, gain);
  const mean = meanLight(read, width, height);
  const ground = cell.ground ? rgbOfHex(cell.ground).map((v) => LINEAR_OF_BYTE[v] as number) : null;
  // The cell's own sides, level and upright: on half-drop cloth two columns' steps make one that is level.
  const half = cell.halfDrop ? 0.5 : 0;
  const side: Step = [across[0] - half * up[0], across[1] - half * up[1]];
  const near = nearPlaces(across, up, side, cell, width, height);
  const out = Buffer.alloc(cell.widthPx * cell.heightPx * 3);
  const shorter = Math.min(width, height);
  const point = new Float64Array(3);
  const sum = new Float64Array(3);
  const xs = new Float64Array(near.length);
  const ys = new Float64Array(near.length);
  const stepX = Float64Array.from(near, (n) => n[0]);
  const stepY = Float64Array.from(near, (n) => n[1]);
  const depth = new Float64Array(near.length);
  for (let y = 0; y < cell.heightPx; y++) {
    for (let x = 0; x < cell.widthPx; x++) {
      const s = (x + 0.5) / cell.widthPx - 0.5;
      const t = (y + 0.5) / cell.heightPx - 0.5;
      const px = cell.middle.x + s * side[0] + t * up[0];
      const py = cell.middle.y + s * side[1] + t * up[1];
      let deepest = Number.NEGATIVE_INFINITY;
      for (let k = 0; k < near.length; k++) {
        const nx = px + (stepX[k] as number);
        const ny = py + (stepY[k] as number);
        xs[k] = nx;
        ys[k] = ny;
        const d = Math.min(nx, width - nx, ny, height - ny);
        depth[k] = d;
        if (d > deepest) deepest = d;
      }
      sum.fill(0);
      let weights = 0;
      let squares = 0;
      const base = Math.max(deepest, 1e-6);
      for (let k = 0; k < near.length; k++) {
        const part = (depth[k] as number) / base;
        if ((depth[k] as number) < deepest && part < 0.45) continue;
        const weight = deepest <= 0 ? 1 : part ** PREFER;
        read((xs[k] as number) - 0.5, (ys[k] as number) - 0.5, point);
        for (let c = 0; c < 3; c++) sum[c] = (sum[c] as number) + weight * (point[c] as number);
        weights += weight;
        squares += weight * weight;
      }
      // Where two places of a mere texture are mixed it would be flatter than elsewhere.
      const kept = squares / (weights * weights);
      const lift = texture ? 1 / Math.sqrt(kept + agrees * (1 - kept)) : 1;
      const shown = ground ? Math.max(0, Math.min(1, deepest / (SOFT * shorter) + 0.02)) : 1;
      const alpha = shown * shown * (3 - 2 * shown);
      const to = (y * cell.widthPx + x) * 3;
      for (let c = 0; c < 3; c++) {
        const m = mean[c] as number;
        const own = m + ((sum[c] as number) / weights - m) * lift;
        const v = ground ? own * alpha + (ground[c] as number) * (1 - alpha) : own;
        out[to + c] = byteOfLinear(v);
      }
    }
  }
  return out;
}

/** The steps by which some point of the cell can be found again in the picture. */
function nearPlaces(
  across: Step,
  up: Step,
  side: Step,
  cell: TileCell,
  width: number,
  height: number,
): Step[] {
  // The box about the cell as it lies on the picture.
  const half = [
    (Math.abs(side[0]) + Math.abs(up[0])) / 2,
    (Math.abs(side[1]) + Math.abs(up[1])) / 2,
  ] as const;
  const REACH = 12;
  const out: Step[] = [];
  for (let n = -REACH; n <= REACH; n++)
    for (let m = -REACH; m <= REACH; m++) {
      const step: Step = [n * across[0] + m * up[0], n * across[1] + m * up[1]];
      const x = cell.middle.x + step[0];
      const y = cell.middle.y + step[1];
      const meets =
        x + half[0] > 0 && x - half[0] < width && y + half[1] > 0 && y - half[1] < height;
      // Of a small pattern, only what lies about the picture's middle is wanted.
      const central =
        Math.abs(x - width / 2) < Math.max(width / 4, 2 * half[0]) &&
        Math.abs(y - height / 2) < Math.max(height / 4, 2 * half[1]);
      if (meets && central) out.push(step);
    }
  return out;
}

/** Pixels of the cell to one of the picture that is wanted: more would be thrown away again. */
const OVER = 1.6;

/** A cell as a picture `widthPx` wide: the photograph is first made as small as the picture allows. */
export async function tilePicture(
  photo: Uint8Array,
  width: number,
  height: number,
  cell: TileCell,
  widthPx: number,
): Promise<Sharp> {
  const part = (OVER * widthPx) / cell.widthPx;
  if (part > 0.8) {
    const whole = await seamlessCell(Buffer.from(photo), width, height, cell);
    return shrinkInLight(
      whole,
      { width: cell.widthPx, height: cell.heightPx, channels: 3 },
      widthPx,
    );
  }
  const { data, info } = await shrinkInLight(
    photo,
    { width, height, channels: 3 },
    Math.round(width * part),
  )
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const [x, y] = [info.width / width, info.height / height];
  const small = {
    ...cell,
    widthPx: Math.max(2, Math.round(cell.widthPx * x)),
    heightPx: Math.max(2, Math.round(cell.heightPx * y)),
    middle: { x: cell.middle.x * x, y: cell.middle.y * y },
  };
  const made = await seamlessCell(data, info.width, info.height, small);
  return shrinkInLight(
    made,
    { width: small.widthPx, height: small.heightPx, channels: 3 },
    widthPx,
  );
}
