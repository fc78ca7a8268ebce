import { converter } from "culori";
import { rgbOfHex } from "./hex.ts";

/** CIE L*a*b* under D65, L* 0 to 100. (The Lab of CSS is D50: never mix the two.) */
export type LabD65 = readonly [l: number, a: number, b: number];

const toLab65 = converter("lab65");

/** CIE L*a*b* D65, 2-degree observer, of a hex colour (CIE 15; sRGB by IEC 61966-2-1). */
export function labD65Of(hex: string): LabD65 {
  const [r, g, b] = rgbOfHex(hex);
  const lab = toLab65({ mode: "rgb", r: r / 255, g: g / 255, b: b / 255 });
  return [lab.l, lab.a, lab.b];
}

/** CIE L*a*b* D65 of an Oklab value. */
export function labD65OfOklab([l, a, b]: readonly [number, number, number]): LabD65 {
  const lab = toLab65({ mode: "oklab", l, a, b });
  return [lab.l, lab.a, lab.b];
}
