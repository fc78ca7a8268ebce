import Color from "colorjs.io";
import sharp from "sharp";
import { expect, test } from "vitest";
import { printJpeg, toGrey } from "../../src/images/printJpeg.ts";

// L* by Color.js, a reference library of CIE 15 colorimetry.
const lightnessOf = (r: number, g: number, b: number): number =>
  new Color("srgb", [r / 255, g / 255, b / 255]).to("lab-d65").coords[0] as number;

test("the grey of a colour is as light as the colour, for primaries, greys and cloth's own", () => {
  for (const [r, g, b] of [
    [255, 0, 0],
    [0, 255, 0],
    [0, 0, 255],
    [128, 128, 128],
    [72, 96, 81],
    [209, 156, 69],
    [155, 69, 41],
  ] as const) {
    const grey = toGrey(Buffer.from([r, g, b]));
    expect(grey[0]).toBe(grey[1]);
    expect(grey[1]).toBe(grey[2]);
    const v = grey[0] as number;
    // Half a code of 255 is at most a fifth of an L* here.
    expect(Math.abs(lightnessOf(v, v, v) - lightnessOf(r, g, b))).toBeLessThan(0.3);
  }
});

test("a picture in grey is an sRGB JPEG of the same size without any colour", async () => {
  const flat = sharp({ create: { width: 40, height: 30, channels: 3, background: "#9b4529" } });
  const made = await printJpeg(flat, true);
  const meta = await sharp(made).metadata();
  expect([meta.format, meta.width, meta.height, meta.channels]).toEqual(["jpeg", 40, 30, 3]);
  const { data } = await sharp(made).raw().toBuffer({ resolveWithObject: true });
  expect(Math.abs((data[0] as number) - (data[2] as number))).toBeLessThanOrEqual(1);
});
