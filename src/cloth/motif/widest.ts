import type { Separation } from "../palette/clothColours.ts";
import { maskOf } from "../pixels/masks.ts";
import { meanWidth } from "./motifSize.ts";

/** Mean width of the wider of figure and ground, in pixels. */
export function widestPx(width: number, height: number, { centres, labels }: Separation): number {
  if (centres.length < 2) return 0;
  const { label, counts } = labels;
  const ground = counts.indexOf(Math.max(...counts));
  const figure = maskOf(label, ground, true);
  const rest = maskOf(label, ground);
  return Math.max(meanWidth(figure, width, height), meanWidth(rest, width, height));
}
