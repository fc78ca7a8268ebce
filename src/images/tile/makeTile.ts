import type { Sharp } from "sharp";
import { sampleColours } from "../../cloth/palette/colourSample.ts";
import { evenPicture } from "../../cloth/palette/evenLight.ts";
import { fallOfLight } from "../../cloth/palette/fallOfLight.ts";
import { rgbOfHex } from "../../colour/hex.ts";
import { byteOfLinear, LINEAR_OF_BYTE } from "../../colour/linear.ts";
import type { TileCell } from "../../swatches/tileCell.ts";
import { shrinkInLight } from "../photo/shrinkInLight.ts";
import type { Step } from "./findStep.ts";
import { type Gain, lightBySteps } from "./lightBySteps.ts";
import { lightReader, meanLight } from "./lightReader.ts";
import { latticeOf, nearPlaces } from "./tileLattice.ts";

/** How sharply the picture's middle is preferred to its edges. */
const PREFER = 4;
/** The soft edge of a photograph that shows less than a cell, as a part of its shorter side. */
const SOFT = 0.07;

/** The picture without what a lamp or a window does to all of its dyes alike; what is left of it the cloth's own steps tell. */
function lampTakenOut(data: Buffer, width: number, height: number): Buffer {
  const picture = { width, height, data: new Uint8Array(data) };
  const fall = fallOfLight(sampleColours(picture), picture);
  return fall ? Buffer.from(evenPicture(picture, fall).data) : data;
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
        ? await lightBySteps(data, width, height, texture ? [] : found)
        : () => 1;
  const read = lightReader(data, width, height, gain);
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
