import { hexOfRgb } from "../../colour/hex.ts";
import { channelOfLinear } from "../../colour/linear.ts";
import { luminanceOfLightness } from "../../colour/luminance.ts";
import { svgNumber } from "../words/svgNumber.ts";

/** Something with a place on the scale from black at 0 to white at 100, in L* (CIE 15). */
export interface OnScale {
  readonly name: string;
  readonly value: number;
}

/** Where a name stands below the scale: its leader's foot, and the row. */
export interface ScaleLabel extends OnScale {
  readonly x: number;
  readonly row: number;
}

/** Two leaders nearer than this read as one. */
const APART_MM = 1.3;
const LETTER_MM = 1.75;
/** Air between two names in a row. */
const AIR_MM = 2.5;
const r = (n: number): string => svgNumber(n, 2);

/** The grey of an L*. */
export function greyOfLightness(value: number): string {
  const channel = channelOfLinear(luminanceOfLightness(value));
  return hexOfRgb([channel, channel, channel]);
}

/** About how wide a name with its number runs, millimetres. */
function widthOf({ name, value }: OnScale): number {
  return (name.length + 1 + String(Math.round(value)).length) * LETTER_MM + AIR_MM;
}

/**
 * Names below a scale, each with its left edge on a line that falls from its place: from the right to the left, each in the highest row
 * where it meets neither a name nor a line. `at` gives the place of a value, millimetres. In the order of the values, lightest first.
 */
export function scaleLabels(
  values: readonly OnScale[],
  at: (value: number) => number,
): ScaleLabel[] {
  const placed: ScaleLabel[] = [];
  let right = Number.POSITIVE_INFINITY;
  for (const v of [...values].sort((a, b) => b.value - a.value || (a.name < b.name ? -1 : 1))) {
    const x = Math.min(at(v.value), right - APART_MM);
    right = x;
    const end = x + widthOf(v);
    let row = 0;
    // A line that goes to this row or a lower one must not run through the name.
    while (placed.some((p) => p.row >= row && p.x < end)) row += 1;
    placed.push({ ...v, x, row });
  }
  return placed;
}

/** The measures of a scale on its sheet, millimetres. */
export interface ScalePlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** Where the first row of names stands, and the step to the next. */
  readonly namesY: number;
  readonly step: number;
}

export const BAR_MM = 9;

/** The scale itself, with a mark at each value and a line down to its name; SVG. */
export function greyScaleSvg(labels: readonly ScaleLabel[], place: ScalePlace): string {
  const { x, y, width } = place;
  const at = (value: number): number => x + (width * value) / 100;
  const bands = Array.from(
    { length: 20 },
    (_, n) =>
      `<rect x="${r(x + (width * n) / 20)}" y="${r(y)}" width="${r(width / 20 + 0.02)}" height="${BAR_MM}" fill="${greyOfLightness(n * 5 + 2.5)}"/>`,
  ).join("");
  const leads = labels
    .map(
      (l) =>
        `M${r(at(l.value))} ${r(y - 1.2)}V${r(y + BAR_MM + 1.2)}L${r(l.x)} ${r(y + BAR_MM + 3.2)}V${r(place.namesY + l.row * place.step + 3.6)}`,
    )
    .join("");
  const numbers = [0, 50, 100]
    .map(
      (n) =>
        `<text class="drawn" x="${r(at(n))}" y="${r(y - 2)}" font-size="3.5" text-anchor="${n === 0 ? "start" : n === 100 ? "end" : "middle"}">${n}</text>`,
    )
    .join("");
  return `${bands}<rect x="${r(x)}" y="${r(y)}" width="${r(width)}" height="${BAR_MM}" fill="none" stroke="#23282e" stroke-width=".18"/><path d="${leads}" fill="none" stroke="#fff" stroke-opacity=".75" stroke-width=".6"/><path d="${leads}" fill="none" stroke="#23282e" stroke-width=".18"/>${numbers}`;
}
