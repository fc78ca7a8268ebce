import { type Diagnostic, diagnostic, type Place } from "../../diagnostics/diagnostic.ts";
import type { Confirm } from "../clothMeasure.ts";

/** Less than this is no piece of cloth, more is no photograph of a swatch; in millimetres. Our own limits. */
export const LEAST_SHOWN_MM = 10;
export const MOST_SHOWN_MM = 20_000;
/** A picture so many times as long as it is wide was put together from several, or cut to a strip. */
const STRIP = 3;

/** What is wrong with the length that a photograph is said to show, or null. */
export function shownFault(mm: number, place: Place): Diagnostic | null {
  if (mm >= LEAST_SHOWN_MM && mm <= MOST_SHOWN_MM) return null;
  const little = mm < LEAST_SHOWN_MM;
  return diagnostic(
    place,
    little ? "shows-too-little" : "shows-too-much",
    little
      ? `A photograph cannot be measured that shows ${mm === 0 ? "no cloth at all" : `only ${mm.toFixed(1)} mm of cloth`}.`
      : `No photograph of a swatch shows ${Math.round(mm / 1000)} m of cloth.`,
    {
      hint: "Say how much cloth the picture shows from its left to its right edge, along its middle: 27in, for example.",
    },
  );
}

/** What is said of the picture's own proportions. */
export function confirmShown(width: number, height: number): Confirm[] {
  if (Math.max(width / height, height / width) < STRIP) return [];
  return [
    {
      what: "photo",
      why: "The picture is a long strip, like a panorama put together from several: its scale is not the same all along, so no size is sure.",
    },
  ];
}

/** True for a picture on whose sizes nobody should rely. */
export function isStrip(width: number, height: number): boolean {
  return Math.max(width / height, height / width) >= STRIP;
}
