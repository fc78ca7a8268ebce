import { byteOfLinear, LINEAR_OF_BYTE } from "../../colour/linear.ts";
import { checkPixels, inBytes, type Pixels } from "./pixels.ts";

/**
 * The picture at a smaller size, each new pixel the mean light of the area that it covers. Averaging encoded values would
 * darken fine checks. Never enlarges: a size that is not smaller gives the picture itself.
 */
export function shrink(pixels: Pixels, width: number, height: number): Pixels {
  checkPixels(pixels);
  const newWidth = Math.max(1, Math.min(pixels.width, Math.round(width)));
  const newHeight = Math.max(1, Math.min(pixels.height, Math.round(height)));
  if (newWidth === pixels.width && newHeight === pixels.height) return pixels;
  const across = coverage(pixels.width, newWidth);
  const down = coverage(pixels.height, newHeight);
  const data = shrinkBytes(inBytes(pixels).data, across, down);
  return { width: newWidth, height: newHeight, data };
}

/** The picture with its longer side at most `side` pixels. */
export function shrinkToSide(pixels: Pixels, side: number): Pixels {
  const scale = Math.min(1, side / Math.max(pixels.width, pixels.height));
  return shrink(pixels, pixels.width * scale, pixels.height * scale);
}

/** For each new place the old ones that it covers, and how much of the first and of the last of them. */
interface Coverage {
  readonly oldCount: number;
  readonly start: Uint32Array;
  readonly count: Uint32Array;
  readonly firstPart: Float64Array;
  /** 0 where the first is the last. */
  readonly lastPart: Float64Array;
}

function coverage(oldCount: number, newCount: number): Coverage {
  const start = new Uint32Array(newCount);
  const count = new Uint32Array(newCount);
  const firstPart = new Float64Array(newCount);
  const lastPart = new Float64Array(newCount);
  for (let at = 0; at < newCount; at++) {
    const from = (at * oldCount) / newCount;
    const to = ((at + 1) * oldCount) / newCount;
    const first = Math.floor(from);
    const end = Math.min(oldCount, Math.ceil(to));
    start[at] = first;
    count[at] = end - first;
    firstPart[at] = Math.min(first + 1, to) - from;
    lastPart[at] = end - first > 1 ? to - (end - 1) : 0;
  }
  return { oldCount, start, count, firstPart, lastPart };
}

/**
 * Sums the light that each new pixel covers, and encodes its mean. One loop over the whole picture, without buffers for it and with
 * the sums of a pixel in registers: most of the time of reading a photograph is spent here.
 */
function shrinkBytes(data: Uint8Array, across: Coverage, down: Coverage): Uint8Array {
  const { start, count, firstPart, lastPart } = across;
  const table = LINEAR_OF_BYTE;
  const newWidth = start.length;
  const rowLength = newWidth * 3;
  const scale = (newWidth / across.oldCount) * (down.start.length / down.oldCount);
  const out = new Uint8Array(rowLength * down.start.length);
  let light = new Float64Array(rowLength);
  let below = new Float64Array(rowLength);
  for (let newRow = 0; newRow < down.start.length; newRow++) {
    const rows = down.count[newRow] as number;
    // The last old row that the one above has is the first of this one: what of it falls here was summed there.
    const shared = newRow > 0 && (down.firstPart[newRow] as number) < 1 ? 1 : 0;
    for (let k = shared; k < rows; k++) {
      const isLast = k === rows - 1 && k > 0;
      const part = (
        k === 0 ? down.firstPart[newRow] : isLast ? down.lastPart[newRow] : 1
      ) as number;
      const rest = isLast ? 1 - part : 0;
      const row = ((down.start[newRow] as number) + k) * across.oldCount * 3;
      for (let at = 0, to = 0; at < newWidth; at++, to += 3) {
        let i = row + (start[at] as number) * 3;
        const first = firstPart[at] as number;
        let r = first * (table[data[i] as number] as number);
        let g = first * (table[data[i + 1] as number] as number);
        let b = first * (table[data[i + 2] as number] as number);
        for (let left = (count[at] as number) - 1; left > 1; left--) {
          i += 3;
          r += table[data[i] as number] as number;
          g += table[data[i + 1] as number] as number;
          b += table[data[i + 2] as number] as number;
        }
        const last = lastPart[at] as number;
        if (last > 0) {
          i += 3;
          r += last * (table[data[i] as number] as number);
          g += last * (table[data[i + 1] as number] as number);
          b += last * (table[data[i + 2] as number] as number);
        }
        light[to] = (light[to] as number) + part * r;
        light[to + 1] = (light[to + 1] as number) + part * g;
        light[to + 2] = (light[to + 2] as number) + part * b;
        if (rest > 0) {
          below[to] = rest * r;
          below[to + 1] = rest * g;
          below[to + 2] = rest * b;
        }
      }
    }
    const from = newRow * rowLength;
    for (let i = 0; i < rowLength; i++) out[from + i] = byteOfLinear((light[i] as number) * scale);
    const done = light;
    light = below;
    below = done.fill(0);
  }
  return out;
}
