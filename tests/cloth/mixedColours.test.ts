// Cloths drawn here on which mixtures of colours would draw a small lively one to themselves, or pass for a colour of their own.
import { expect, test } from "vitest";
import { palette } from "../../src/cloth/palette/palette.ts";
import type { Bytes } from "../../src/cloth/pixels/pixels.ts";
import { difference } from "../../src/colour/difference.ts";
import { hexOfRgb, type Rgb8, rgbOfHex } from "../../src/colour/hex.ts";
import { croppedAndTurned } from "../bench/cloth/palettes.ts";
import { type Design, photograph } from "./made.ts";

const between = (one: string, other: string, part: number) => {
  const to = rgbOfHex(other);
  return hexOfRgb(
    rgbOfHex(one).map((v, c) => Math.round(v + part * ((to[c] as number) - v))) as unknown as Rgb8,
  );
};

const TURQUOISE = "#1fa9b8";
/** Oat to cocoa and back in twelve shades, and a line of turquoise on a fortieth of the area. */
const shaded: Design = (x) => {
  const at = x % 60;
  if (at < 1.5) return TURQUOISE;
  const part = Math.abs(((at - 1.5) / 58.5) * 2 - 1);
  return between("#d6c6ac", "#4f3727", Math.round(part * 12) / 12);
};

test("an accent among many shades of another colour is not drawn to those half way between them", () => {
  const whole = photograph(shaded, {
    widthMm: 200,
    heightMm: 150,
    widthPx: 480,
    noise: 5,
    falloff: 0.85,
    blurPx: 1,
  });
  for (const picture of [whole, croppedAndTurned(whole as Bytes).cropped]) {
    const { colours } = palette(picture);
    // The blur leaves no pixel of such a line as it was.
    const nearest = Math.min(...colours.map(({ hex }) => difference(hex, TURQUOISE)));
    expect(nearest).toBeLessThan(8);
  }
});

const [NAVY, RUST, LIME] = ["#1e2b49", "#cf441c", "#9ab53c"];
/** A lime line where navy and rust meet: one rim of it is half navy, the other half rust. */
const lined: Design = (x) => {
  const at = x % 40;
  if (Math.abs(at - 20) < 1) return LIME;
  return at < 20 ? NAVY : RUST;
};

test.each([
  [120, 1],
  [200, 0],
  [300, 0],
  [300, 1],
])(
  "the rims of a line against two grounds are no colour of the cloth: %i mm shown, blurred by %i",
  (widthMm, blurPx) => {
    const shot = {
      widthMm,
      heightMm: widthMm * 0.75,
      widthPx: 640,
      noise: 3,
      falloff: 0.85,
      blurPx,
    };
    const { colours } = palette(photograph(lined, shot));
    expect(colours).toHaveLength(3);
    // A twentieth of the area, and what the blur gives the line of its neighbours.
    const lime = colours.reduce((a, b) =>
      difference(b.hex, LIME) < difference(a.hex, LIME) ? b : a,
    );
    expect(lime.share).toBeGreaterThan(0.04);
    expect(lime.share).toBeLessThan(0.06);
  },
);
