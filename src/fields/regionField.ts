import { z } from "zod";
import { refuse } from "./fault.ts";

/** A rectangle in pixels of the upright photograph. */
export interface Region {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A white or grey patch and the part of the light that it reflects, 0 to 1. */
export interface Patch extends Region {
  readonly reflectance: number;
}

const NUMBERS = /^(\d+)[\s,]+(\d+)[\s,]+(\d+)[\s,]+(\d+)$/;

function region(text: string): Region | null {
  const found = NUMBERS.exec(text.trim());
  if (!found) return null;
  const [x, y, width, height] = found.slice(1).map(Number) as [number, number, number, number];
  return width > 0 && height > 0 ? { x, y, width, height } : null;
}

/** A region and its reflectance: `40 60 200 150 at 90%`. */
export function patchField() {
  return z
    .string()
    .transform((text, context): Patch => {
      const [where, share] = text.split(/\s+at\s+/i);
      const read = region(where ?? "");
      const percent = /^(\d+(?:\.\d+)?)\s*%$/.exec((share ?? "").trim());
      const reflectance = percent ? Number(percent[1]) / 100 : Number.NaN;
      if (read && reflectance > 0 && reflectance <= 1) return { ...read, reflectance };
      return refuse(context, text, {
        code: "patch-unreadable",
        message: `“${text}” is not a white or grey patch.`,
        expected: "left, top, width and height in pixels, and how much light it reflects",
        hint: "Write for example 40 60 200 150 at 90% for white card, or at 18% for a grey card.",
      });
    })
    .meta({ examples: ["40 60 200 150 at 90%"] });
}

/** A place in a picture, as parts of its width and height, 0 to 1. */
export interface PictureSpot {
  readonly x: number;
  readonly y: number;
}

/** A place in a picture, from its left and its top edge: `46% 50%`. */
export function spotField() {
  return z
    .string()
    .transform((text, context): PictureSpot => {
      const found = /^(\d+(?:\.\d+)?)\s*%[\s,]+(\d+(?:\.\d+)?)\s*%$/.exec(text.trim());
      const [x, y] = [Number(found?.[1]) / 100, Number(found?.[2]) / 100];
      if (x >= 0 && x <= 1 && y >= 0 && y <= 1) return { x, y };
      return refuse(context, text, {
        code: "spot-unreadable",
        message: `“${text}” is not a place in the picture.`,
        expected: "how far from the left edge and how far from the top, in hundredths",
        hint: "Write for example 46% 50% for a place a little left of the middle.",
      });
    })
    .meta({ examples: ["46% 50%"] });
}
