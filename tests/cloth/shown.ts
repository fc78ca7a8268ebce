import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { type Design, photograph, type Shot } from "./made.ts";

export const PLACE = { file: "content/cloths/fern.md", line: 2, column: 8, keyPath: null };
export const SHOT = { widthMm: 300, heightMm: 225, widthPx: 420 };
export const CREAM = "#efe3c8";
export const SPRIG: [string, string, string, string] = [CREAM, "#556b2f", "#c98a86", "#d8a21c"];

/** What is measured on a photograph of a design as a telephone takes it, with a little noise and uneven light. */
export const measured = (design: Design, shot: Partial<Shot> = {}) =>
  measureCloth(
    photograph(design, { ...SHOT, noise: 4, falloff: 0.9, ...shot }),
    shot.widthMm ?? SHOT.widthMm,
    { place: PLACE },
  ).value;
export const pattern = (design: Design, shot: Partial<Shot> = {}) =>
  measured(design, shot)?.pattern;
