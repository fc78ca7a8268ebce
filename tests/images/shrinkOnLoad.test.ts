import sharp from "sharp";
import { expect, test } from "vitest";
import type { Pixels } from "../../src/cloth/pixels/pixels.ts";
import { shrinkToSide } from "../../src/cloth/pixels/shrink.ts";
import { difference } from "../../src/colour/difference.ts";
import { hexOfRgb } from "../../src/colour/hex.ts";
import { decodePhoto } from "../../src/images/photo/decodePhoto.ts";
import { MEASURING_SIDE_PX, readPhoto } from "../../src/images/photo/readPhoto.ts";
import { sideOnLoad } from "../../src/images/photo/shrinkOnLoad.ts";
import { photograph, sprigs } from "../cloth/made.ts";
import { file, made, PLACE } from "./made.ts";

const hexAt = ({ width, data }: Pixels, x: number, y: number) =>
  hexOfRgb([0, 1, 2].map((c) => data[(y * width + x) * 3 + c] ?? 0) as [number, number, number]);

/** CIEDE2000 between two pictures at some places, least first. */
function apart(one: Pixels, other: Pixels): number[] {
  const found: number[] = [];
  for (let y = 5; y < one.height; y += 11)
    for (let x = 5; x < one.width; x += 11)
      found.push(difference(hexAt(one, x, y), hexAt(other, x, y)));
  return found.sort((a, b) => a - b);
}

/** A photograph of 12 megapixels: grain of four of its pixels and all that lies between. */
async function large(design: Parameters<typeof photograph>[0]): Promise<Buffer> {
  const { width, height, data } = photograph(design, {
    widthMm: 300,
    heightMm: 225,
    widthPx: 1000,
    noise: 6,
  });
  return sharp(data, { raw: { width, height, channels: 3 } })
    .resize(4000, 3000, { fit: "fill", kernel: "cubic" })
    .withMetadata({ orientation: 6 })
    .jpeg({ quality: 88 })
    .toBuffer();
}

test("a large JPEG that is loaded small is as the whole one, shrunk in light", async () => {
  const design = sprigs(["#efe3c8", "#556b2f", "#c98a86", "#d8a21c"], { across: 40, up: 52 });
  const bytes = await large(design);
  const whole = await decodePhoto({ bytes, name: "large.jpg", format: "jpeg" }, PLACE);
  const { value } = await readPhoto(await file("large.jpg", bytes), { place: PLACE });
  if (!whole.value || !value) throw new Error();
  expect(value).toMatchObject({ widthPx: 3000, heightPx: 4000 });
  const small = shrinkToSide(whole.value.pixels, MEASURING_SIDE_PX);
  expect([value.pixels.width, value.pixels.height]).toEqual([small.width, small.height]);
  const found = apart(value.pixels, small);
  // Half a unit is not seen side by side; the rest is how sharply the two ways shrink an edge.
  expect(found[Math.floor(found.length / 2)]).toBeLessThan(0.5);
  expect(found[Math.floor(0.95 * found.length)]).toBeLessThan(1.5);
});

test("where fine contrast would darken, the whole photograph is read, though its edges are plain", async () => {
  // A table's edge above and below the cloth: only what lies in the middle tells how fine the cloth is.
  const checks = made(3900, 2600, (x, y) => {
    if (y < 200 || y >= 2400) return [176, 176, 176];
    return (((x >> 1) ^ (y >> 1)) & 1) === 1 ? [240, 240, 240] : [10, 10, 10];
  });
  const bytes = await checks.jpeg({ quality: 95, chromaSubsampling: "4:4:4" }).toBuffer();
  const { value } = await readPhoto(await file("checks.jpg", bytes), { place: PLACE });
  if (!value) throw new Error();
  const mean = [...value.pixels.data].reduce((sum, v) => sum + v, 0) / value.pixels.data.length;
  // The mean light of codes 240 and 10 is code 176 (IEC 61966-2-1); their mean is 125.
  expect(mean).toBeGreaterThan(173);
  expect(mean).toBeLessThan(179);
});

test("only a JPEG far larger than what is measured is loaded small", () => {
  const size = { width: 4000, height: 3000 };
  const side = (more: object, sidePx: number) => sideOnLoad({ ...size, ...more } as never, sidePx);
  expect(side({ format: "jpeg" }, 640)).toBe(1280);
  expect(side({ format: "jpeg", width: 3000, height: 4000 }, 640)).toBe(1280);
  expect(side({ format: "jpeg", width: 3264, height: 2448 }, 640)).toBe(1088);
  expect(side({ format: "jpeg", width: 2500, height: 1875 }, 640)).toBeNull();
  expect(side({ format: "jpeg" }, 960)).toBe(1333);
  expect(side({ format: "jpeg" }, 1600)).toBeNull();
  expect(side({ format: "png" }, 640)).toBeNull();
});
