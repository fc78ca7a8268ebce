import { byteOfLinear } from "../colour/linear.ts";
import { checkPixels, linearAt, type Pixels } from "./pixels.ts";

/**
 * The picture at a smaller size, each new pixel the mean light of the area that it covers. Averaging encoded values would
 * darken fine checks. Never enlarges: a size that is not smaller gives the picture itself.
 */
export function shrink(pixels: Pixels, width: number, height: number): Pixels {
  checkPixels(pixels);
  const newWidth = Math.max(1, Math.min(pixels.width, Math.round(width)));
  const newHeight = Math.max(1, Math.min(pixels.height, Math.round(height)));
  if (newWidth === pixels.width && newHeight === pixels.height) return pixels;
  const across = spread(pixels.width, newWidth);
  const down = spread(pixels.height, newHeight);
  const light = new Float32Array(newWidth * newHeight * 3);
  const row = new Float32Array(newWidth * 3);
  for (let y = 0; y < pixels.height; y++) {
    shrinkRow(pixels, y, across, row);
    const first = down.first[y] as number;
    const part = down.part[y] as number;
    addRow(light, row, first, part);
    if (part < 1) addRow(light, row, first + 1, 1 - part);
  }
  const area = (pixels.width / newWidth) * (pixels.height / newHeight);
  const data = new Uint8Array(light.length);
  for (let i = 0; i < light.length; i++) {
    data[i] = byteOfLinear((light[i] as number) / area);
  }
  return { width: newWidth, height: newHeight, data };
}

/** The picture with its longer side at most `side` pixels. */
export function shrinkToSide(pixels: Pixels, side: number): Pixels {
  const scale = Math.min(1, side / Math.max(pixels.width, pixels.height));
  return shrink(pixels, pixels.width * scale, pixels.height * scale);
}

/** For each old place the first new one that it falls in, and the part of it that falls there; the rest falls in the next. */
interface Spread {
  readonly first: Uint32Array;
  readonly part: Float64Array;
}

function spread(count: number, newCount: number): Spread {
  const first = new Uint32Array(count);
  const part = new Float64Array(count);
  const step = count / newCount;
  for (let i = 0; i < count; i++) {
    const at = Math.min(newCount - 1, Math.floor(i / step + 1e-9));
    const inside = (at + 1) * step - i;
    first[i] = at;
    // What rounding would carry past the last place stays in it.
    part[i] = at === newCount - 1 || inside > 1 - 1e-9 ? 1 : inside;
  }
  return { first, part };
}

function shrinkRow({ width, data }: Pixels, y: number, across: Spread, row: Float32Array): void {
  row.fill(0);
  for (let x = 0, from = y * width * 3; x < width; x++, from += 3) {
    const to = (across.first[x] as number) * 3;
    const part = across.part[x] as number;
    for (let c = 0; c < 3; c++) {
      const light = linearAt(data, from + c);
      (row[to + c] as number) += part * light;
      if (part < 1) (row[to + 3 + c] as number) += (1 - part) * light;
    }
  }
}

function addRow(light: Float32Array, row: Float32Array, y: number, part: number): void {
  const start = y * row.length;
  for (let i = 0; i < row.length; i++) (light[start + i] as number) += part * (row[i] as number);
}
