import { familyOfOklch } from "./family.ts";
import { oklchOf } from "./oklab.ts";

/** The circle that every relation here is claimed on; the perceptual circle gives other complements. */
export const WHEEL = "painter's twelve-hue wheel";

/** The painter's wheel in order, 30 degrees apart. */
export const WHEEL_HUES = [
  "red",
  "red-orange",
  "orange",
  "yellow-orange",
  "yellow",
  "yellow-green",
  "green",
  "blue-green",
  "blue",
  "blue-violet",
  "violet",
  "red-violet",
] as const;

/** One of the twelve hues. */
export type WheelHue = (typeof WHEEL_HUES)[number];

/** How two hues stand on the wheel, by the steps between them, 0 to 6. */
export type Relation =
  | "monochromatic"
  | "analogous"
  | "analogous-wide"
  | "square"
  | "triadic"
  | "split-complementary"
  | "complementary";

const BY_STEPS: readonly Relation[] = [
  "monochromatic",
  "analogous",
  "analogous-wide",
  "square",
  "triadic",
  "split-complementary",
  "complementary",
];

/** OKLCH hue, in degrees, of each of the twelve; between the NBS vivid centroids and common examples, our own choice. */
const ANCHORS = [25, 38, 57, 76, 100, 123, 148, 192, 255, 284, 306, 345] as const;

/** Place on the wheel, 0 to 12 (red 0, yellow 4, blue 8), of an OKLCH hue in degrees, linear between the anchors. */
export function wheelPosition(hueDegrees: number): number {
  const first = ANCHORS[0];
  const hue = ((((hueDegrees - first) % 360) + 360) % 360) + first;
  for (let i = 0; i < 12; i++) {
    const from = ANCHORS[i] as number;
    const to = i === 11 ? first + 360 : (ANCHORS[i + 1] as number);
    if (hue < to) return i + (hue - from) / (to - from);
  }
  return 0;
}

/** The nearest of the twelve hues, or null for a neutral, which has none to speak of. */
export function wheelHue(hex: string): WheelHue | null {
  const place = placeOf(hex);
  return place === null ? null : (WHEEL_HUES[Math.round(place) % 12] as WheelHue);
}

/** Relation of two colours on the painter's wheel, to the nearest step; null where one of them is a neutral. */
export function hueRelation(hex: string, other: string): Relation | null {
  const one = placeOf(hex);
  const two = placeOf(other);
  if (one === null || two === null) return null;
  const apart = Math.abs(one - two);
  return BY_STEPS[Math.round(Math.min(apart, 12 - apart))] as Relation;
}

/** The hues that stand in a relation to one, in wheel order, for a sentence that names them. */
export function huesAt(hue: WheelHue, relation: Relation): WheelHue[] {
  const from = WHEEL_HUES.indexOf(hue);
  const steps = BY_STEPS.indexOf(relation);
  const places = new Set([(from + steps) % 12, (from - steps + 12) % 12]);
  return [...places].sort((a, b) => a - b).map((i) => WHEEL_HUES[i] as WheelHue);
}

function placeOf(hex: string): number | null {
  const lch = oklchOf(hex);
  return familyOfOklch(lch) === "neutral" ? null : wheelPosition(lch[2]);
}
