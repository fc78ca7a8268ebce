import { LINEAR_OF_BYTE, linearOfChannel } from "../../colour/linear.ts";

/**
 * A picture as plain numbers: r, g, b interleaved, rows from the top, encoded sRGB 0 to 255
 * (whole in a Uint8Array, with fractions in a Float32Array).
 */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array | Float32Array;
}

/** A picture in whole bytes. */
export type Bytes = Pixels & { readonly data: Uint8Array };

/** A rectangle in pixels of a picture, from its top left corner. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Throws where the array is not as long as the size says: a mistake of the program, never of a photograph. */
export function checkPixels({ width, height, data }: Pixels): void {
  const whole = Number.isInteger(width) && Number.isInteger(height) && width > 0 && height > 0;
  if (!whole || data.length !== width * height * 3) {
    throw new RangeError(`${data.length} values are not ${width} x ${height} pixels of three`);
  }
}

/** The picture in whole bytes: itself where it is so already. */
export function inBytes({ width, height, data }: Pixels): Bytes {
  if (data instanceof Uint8Array) return { width, height, data };
  const bytes = Uint8Array.from(data, (v) => Math.min(255, Math.max(0, Math.round(v))));
  return { width, height, data: bytes };
}

/** Linear light, 0 to 1, of one value of a picture. */
export function linearAt(data: Uint8Array | Float32Array, i: number): number {
  const v = data[i] as number;
  return data instanceof Uint8Array ? (LINEAR_OF_BYTE[v] as number) : linearOfChannel(v);
}

/** A part of a picture as a picture of its own. */
export function crop(pixels: Pixels, { x, y, width, height }: Rectangle): Pixels {
  const { data } = pixels;
  const out =
    data instanceof Uint8Array
      ? new Uint8Array(width * height * 3)
      : new Float32Array(width * height * 3);
  for (let row = 0; row < height; row++) {
    const from = ((y + row) * pixels.width + x) * 3;
    out.set(data.subarray(from, from + width * 3), row * width * 3);
  }
  return { width, height, data: out };
}

/** A rectangle of the full photograph in pixels of the shrunk one. */
export function shrunkRectangle({ x, y, width, height }: Rectangle, scale: number): Rectangle {
  return {
    x: Math.floor(x * scale),
    y: Math.floor(y * scale),
    width: Math.max(1, Math.floor(width * scale)),
    height: Math.max(1, Math.floor(height * scale)),
  };
}

/** True where a rectangle lies wholly in a picture. */
export function isInside({ x, y, width, height }: Rectangle, pixels: Pixels): boolean {
  const within = x >= 0 && y >= 0 && width >= 1 && height >= 1;
  return within && x + width <= pixels.width && y + height <= pixels.height;
}
