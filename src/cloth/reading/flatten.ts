import { byteOfLinear } from "../../colour/linear.ts";
import { linearAt, type Pixels, type Rectangle } from "../pixels/pixels.ts";
import { type Homography, mapPoint, type Point } from "./homography.ts";

/** A plane's picture from straight above. */
export interface FlatPicture {
  readonly pixels: Pixels;
  readonly mmPerPx: number;
  /** Of its top left corner, on the plane. */
  readonly leftMm: number;
  readonly topMm: number;
}

/** Places at which each new pixel is read, along one side. */
const SAMPLES = 2;

/**
 * The plane straight from above: of the largest upright rectangle between four corners (clockwise from the top left, in
 * millimetres) a picture whose longer side has at most `side` pixels. Null where no rectangle lies between them.
 */
export function flatPicture(
  photo: Pixels,
  toPhoto: Homography,
  [tl, tr, br, bl]: readonly [Point, Point, Point, Point],
  side: number,
): FlatPicture | null {
  const leftMm = Math.max(tl[0], bl[0]);
  const topMm = Math.max(tl[1], tr[1]);
  const widthMm = Math.min(tr[0], br[0]) - leftMm;
  const heightMm = Math.min(bl[1], br[1]) - topMm;
  if (!(widthMm > 0 && heightMm > 0)) return null;
  const mmPerPx = Math.max(widthMm, heightMm) / side;
  const width = Math.max(1, Math.floor(widthMm / mmPerPx));
  const height = Math.max(1, Math.floor(heightMm / mmPerPx));
  const data = new Uint8Array(width * height * 3);
  const light = [0, 0, 0];
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i += 3) {
      light.fill(0);
      for (let s = 0; s < SAMPLES * SAMPLES; s++) {
        const u = x + ((s % SAMPLES) + 0.5) / SAMPLES;
        const v = y + (Math.floor(s / SAMPLES) + 0.5) / SAMPLES;
        addLight(photo, mapPoint(toPhoto, [leftMm + u * mmPerPx, topMm + v * mmPerPx]), light);
      }
      for (let c = 0; c < 3; c++)
        data[i + c] = byteOfLinear((light[c] as number) / (SAMPLES * SAMPLES));
    }
  }
  return { pixels: { width, height, data }, mmPerPx, leftMm, topMm };
}

/** Adds the light of a photograph at a place, linear between four pixels. */
function addLight({ width, height, data }: Pixels, at: Point | null, light: number[]): void {
  if (!at) return;
  const px = Math.max(0, Math.min(width - 1, at[0] - 0.5));
  const py = Math.max(0, Math.min(height - 1, at[1] - 0.5));
  const [x0, y0] = [Math.min(width - 2, Math.floor(px)), Math.min(height - 2, Math.floor(py))];
  const [fx, fy] = [px - x0, py - y0];
  for (let c = 0; c < 3; c++) {
    const i = (y0 * width + x0) * 3 + c;
    const top = (1 - fx) * linearAt(data, i) + fx * linearAt(data, i + 3);
    const j = i + width * 3;
    const foot = (1 - fx) * linearAt(data, j) + fx * linearAt(data, j + 3);
    light[c] = (light[c] as number) + (1 - fy) * top + fy * foot;
  }
}

/** The smallest upright rectangle of a flat picture that holds some places of the plane, with a rim, within the picture. */
export function boxAround(
  { pixels, mmPerPx, leftMm, topMm }: FlatPicture,
  places: readonly Point[],
  rimMm: number,
): Rectangle | null {
  const xs = places.map(([x]) => (x - leftMm) / mmPerPx);
  const ys = places.map(([, y]) => (y - topMm) / mmPerPx);
  const rim = rimMm / mmPerPx;
  const x = Math.max(0, Math.floor(Math.min(...xs) - rim));
  const y = Math.max(0, Math.floor(Math.min(...ys) - rim));
  const right = Math.min(pixels.width, Math.ceil(Math.max(...xs) + rim));
  const foot = Math.min(pixels.height, Math.ceil(Math.max(...ys) + rim));
  return right > x && foot > y ? { x, y, width: right - x, height: foot - y } : null;
}
