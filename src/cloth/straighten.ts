import { checkPixels, type Pixels } from "./pixels.ts";

/** The picture turned by some degrees, anticlockwise as one looks at it, about its middle, at its own size; rims repeat. */
export function straighten(pixels: Pixels, degrees: number): Pixels {
  checkPixels(pixels);
  const { width, height, data } = pixels;
  const turn = (degrees * Math.PI) / 180;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const [mx, my] = [(width - 1) / 2, (height - 1) / 2];
  const out = new Uint8Array(data.length);
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i += 3) {
      const fx = Math.min(width - 1, Math.max(0, mx + (x - mx) * c - (y - my) * s));
      const fy = Math.min(height - 1, Math.max(0, my + (x - mx) * s + (y - my) * c));
      const [x0, y0] = [Math.min(width - 2, Math.floor(fx)), Math.min(height - 2, Math.floor(fy))];
      const [u, v] = [fx - x0, fy - y0];
      const a = (y0 * width + x0) * 3;
      const b = a + width * 3;
      for (let k = 0; k < 3; k++) {
        const upper = (1 - u) * (data[a + k] as number) + u * (data[a + 3 + k] as number);
        const lower = (1 - u) * (data[b + k] as number) + u * (data[b + 3 + k] as number);
        out[i + k] = Math.round((1 - v) * upper + v * lower);
      }
    }
  }
  return { width, height, data: out };
}
