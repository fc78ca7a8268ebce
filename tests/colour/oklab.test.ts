// Values: tests/reference/colour/oklab.json (Ottosson 2020; CSS Color 4; web-platform-tests css/css-color).
import Color from "colorjs.io";
import { expect, test } from "vitest";
import { hexOfRgb } from "../../src/colour/hex.ts";
import {
  hexOfOklab,
  oklabOf,
  oklabOfOklch,
  oklabOfRgb,
  oklchOf,
  rgbOfOklab,
} from "../../src/colour/oklab.ts";
import { oklabOfPixels } from "../../src/colour/oklabOfPixels.ts";
import reference from "../reference/colour/oklab.json" with { type: "json" };

const triple = (list: number[]) => list as unknown as readonly [number, number, number];

function near(actual: readonly number[], expected: readonly number[], tolerance: number) {
  expect(actual).toHaveLength(expected.length);
  expected.forEach((value, i) => {
    expect(Math.abs((actual[i] as number) - value), `component ${i}`).toBeLessThanOrEqual(
      tolerance,
    );
  });
}

test.each(reference.cases.srgbToOklab)("Oklab of $srgbHex", ({ srgbHex, oklab }) => {
  near(oklabOf(srgbHex), oklab, reference.tolerance.srgbToOklab);
});

test.each(reference.cases.srgbToOklch)("OKLCH of $srgbHex", ({ srgbHex, oklch }) => {
  near(oklchOf(srgbHex), oklch, 1e-6);
});

test.each(reference.cases.oklabToSrgb)("$wpt", ({ oklab, srgbPercent }) => {
  const percent = rgbOfOklab(triple(oklab)).map((v) => v / 2.55);
  near(percent, srgbPercent, reference.tolerance.wptPercentOklab);
});

test.each(reference.cases.oklchToSrgb)("$wpt", ({ oklch, srgbPercent }) => {
  const percent = rgbOfOklab(oklabOfOklch(triple(oklch))).map((v) => v / 2.55);
  near(percent, srgbPercent, reference.tolerance.wptPercentOklab);
});

test("a grey has no hue and no chroma worth a name", () => {
  for (let v = 0; v < 256; v++) {
    const [, a, b] = oklabOfRgb([v, v, v]);
    expect(Math.max(Math.abs(a), Math.abs(b))).toBeLessThan(1e-4);
    expect(oklchOf(hexOfRgb([v, v, v])).slice(1)).toEqual([0, 0]);
  }
});

test("every step of a coarse sRGB grid comes back from Oklab, and colorjs.io agrees", () => {
  for (let r = 0; r < 256; r += 51)
    for (let g = 0; g < 256; g += 51)
      for (let b = 0; b < 256; b += 51) {
        const hex = hexOfRgb([r, g, b]);
        expect(hexOfOklab(oklabOf(hex))).toBe(hex);
        near(oklabOf(hex), new Color(hex).to("oklab").coords as number[], 1e-5);
      }
});

test("a whole picture's Oklab is the single colours' Oklab, for bytes and for floats", () => {
  const bytes = Uint8Array.from({ length: 3 * 500 }, (_, i) => (i * 7919 + (i >> 3)) & 255);
  const fromBytes = oklabOfPixels(bytes);
  const fromFloats = oklabOfPixels(Float32Array.from(bytes));
  for (let i = 0; i < bytes.length; i += 3) {
    const single = oklabOfRgb([bytes[i] ?? 0, bytes[i + 1] ?? 0, bytes[i + 2] ?? 0]);
    near([...fromBytes.slice(i, i + 3)], single, 1e-6);
    near([...fromFloats.slice(i, i + 3)], single, 1e-6);
  }
});
