import { byteOfLinear } from "../../colour/linear.ts";
import { luminanceOfLinear } from "../../colour/luminance.ts";
import { type Checked, diagnostic, type Place } from "../../diagnostics/diagnostic.ts";
import { linearAt, type Pixels, type Rectangle } from "../pixels/pixels.ts";

/** A white or grey card in the picture. */
export interface NeutralPatch {
  /** In pixels of the picture that is given. */
  readonly rectangle: Rectangle;
  /** Part of the light that it reflects: 0.9 for white card, 0.18 for a grey card. */
  readonly reflectance: number;
}

type Matrix = readonly [number, number, number, number, number, number, number, number, number];

/** sRGB to XYZ under D65 (IEC 61966-2-1), then Bradford's cone responses (CSS Color 4, ICC.1 annex E), in one matrix. */
const TO_CONES: Matrix = multiply(
  [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296],
  [
    0.4123907992659593, 0.357584339383878, 0.1804807884018343, 0.2126390058715102,
    0.715168678767756, 0.0721923153607337, 0.0193308187155918, 0.119194779794626,
    0.9505321522496607,
  ],
);
const FROM_CONES: Matrix = invert(TO_CONES);

/** Codes at which a channel counts as clipped. */
const CLIPPED = 252;

/**
 * The picture as it would be under neutral light and right exposure: the patch's mean light, clipped pixels left out, is
 * brought to a grey of its reflectance by Bradford's adaptation, and all other light with it. A patch that is outside the
 * picture, clipped, too dark or not one tone is refused with a diagnostic; nothing is guessed instead.
 */
export function neutralise(pixels: Pixels, patch: NeutralPatch, place: Place): Checked<Pixels> {
  const refuse = (code: string, message: string, hint: string): Checked<Pixels> => ({
    value: null,
    diagnostics: [diagnostic(place, code, message, { hint })],
  });
  const { x, y, width, height } = patch.rectangle;
  if (
    x < 0 ||
    y < 0 ||
    width < 1 ||
    height < 1 ||
    x + width > pixels.width ||
    y + height > pixels.height
  ) {
    return refuse(
      "neutral-outside",
      "The neutral patch is not inside the photograph.",
      "Give left, top, width and height in pixels of the upright photograph.",
    );
  }
  if (!(patch.reflectance > 0.02 && patch.reflectance <= 1)) {
    return refuse(
      "neutral-reflectance",
      `A neutral patch cannot reflect ${Math.round(patch.reflectance * 100)} % of the light.`,
      "White card reflects about 90 %, a photographer's grey card 18 %.",
    );
  }
  const seen = readPatch(pixels, patch.rectangle);
  if (seen.clipped > 0.1) {
    return refuse(
      "neutral-clipped",
      "The neutral patch is blown out: it is as light as the photograph can show.",
      "Photograph it again a little darker, or without a gloss on the card.",
    );
  }
  if (seen.luminance < 0.01) {
    return refuse(
      "neutral-dark",
      "The neutral patch is nearly black in the photograph.",
      "See that the rectangle lies on the card, and photograph it in good light.",
    );
  }
  if (seen.spread > 0.25) {
    return refuse(
      "neutral-uneven",
      "The neutral patch is not one even tone.",
      "See that the rectangle lies wholly on the card, away from its edges and shadows.",
    );
  }
  return { value: adapt(pixels, seen.mean, patch.reflectance), diagnostics: [] };
}

interface SeenPatch {
  readonly mean: readonly [number, number, number];
  readonly luminance: number;
  /** Standard deviation of the luminance over its mean. */
  readonly spread: number;
  /** Part of the pixels that are clipped. */
  readonly clipped: number;
}

function readPatch({ width, data }: Pixels, patch: Rectangle): SeenPatch {
  const sums: [number, number, number] = [0, 0, 0];
  let light = 0;
  let light2 = 0;
  let used = 0;
  for (let y = patch.y; y < patch.y + patch.height; y++) {
    for (let x = patch.x; x < patch.x + patch.width; x++) {
      const i = (y * width + x) * 3;
      if (Math.max(data[i] as number, data[i + 1] as number, data[i + 2] as number) >= CLIPPED)
        continue;
      const [r, g, b] = [linearAt(data, i), linearAt(data, i + 1), linearAt(data, i + 2)];
      sums[0] += r;
      sums[1] += g;
      sums[2] += b;
      const l = luminanceOfLinear(r, g, b);
      light += l;
      light2 += l * l;
      used++;
    }
  }
  const clipped = 1 - used / (patch.width * patch.height);
  if (used === 0) return { mean: [1, 1, 1], luminance: 1, spread: 0, clipped };
  const mean = light / used;
  const spread = Math.sqrt(Math.max(0, light2 / used - mean * mean)) / Math.max(mean, 1e-9);
  return {
    mean: [sums[0] / used, sums[1] / used, sums[2] / used],
    luminance: mean,
    spread,
    clipped,
  };
}

function adapt(
  { width, height, data }: Pixels,
  seen: readonly number[],
  reflectance: number,
): Pixels {
  const from = apply(TO_CONES, seen);
  const to = apply(TO_CONES, [reflectance, reflectance, reflectance]);
  const [kl = 1, km = 1, ks = 1] = to.map((v, i) => v / Math.max(from[i] as number, 1e-9));
  const gains: Matrix = [kl, 0, 0, 0, km, 0, 0, 0, ks];
  const matrix = multiply(FROM_CONES, multiply(gains, TO_CONES));
  const out = new Uint8Array(data.length);
  for (let i = 0; i < data.length; i += 3) {
    const rgb = apply(matrix, [linearAt(data, i), linearAt(data, i + 1), linearAt(data, i + 2)]);
    for (let c = 0; c < 3; c++) out[i + c] = byteOfLinear(rgb[c] as number);
  }
  return { width, height, data: out };
}

function apply(m: Matrix, v: readonly number[]): [number, number, number] {
  const [a = 0, b = 0, c = 0] = v;
  return [
    m[0] * a + m[1] * b + m[2] * c,
    m[3] * a + m[4] * b + m[5] * c,
    m[6] * a + m[7] * b + m[8] * c,
  ];
}

function multiply(a: Matrix, b: Matrix): Matrix {
  const column = (k: number) => apply(a, [b[k] as number, b[k + 3] as number, b[k + 6] as number]);
  const [x, y, z] = [column(0), column(1), column(2)];
  return [x[0], y[0], z[0], x[1], y[1], z[1], x[2], y[2], z[2]];
}

function invert(m: Matrix): Matrix {
  const [a, b, c, d, e, f, g, h, i] = m;
  const A = e * i - f * h;
  const B = f * g - d * i;
  const C = d * h - e * g;
  const det = a * A + b * B + c * C;
  return [
    A / det,
    (c * h - b * i) / det,
    (b * f - c * e) / det,
    B / det,
    (a * i - c * g) / det,
    (c * d - a * f) / det,
    C / det,
    (b * g - a * h) / det,
    (a * e - b * d) / det,
  ];
}
