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
