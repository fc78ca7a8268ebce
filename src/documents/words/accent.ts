import { contrastRatio } from "../../colour/contrast.ts";
import type { StudioRecord } from "../../records/records.ts";
import type { Markup } from "./marks.ts";

/** Text in the studio's own colour must be legible on paper (WCAG 2.2, 1.4.3). */
const LEAST_CONTRAST = 4.5;

/** The studio's mark colour as the accent of its pages, where text in it can be read; else the house's own stays. */
export function accentStyle(studio: StudioRecord): Markup {
  const colour = studio.fields["mark-colour"];
  const readable = colour !== undefined && contrastRatio(colour, "#ffffff") >= LEAST_CONTRAST;
  return { html: readable ? `:root{--accent:${colour}}` : "" };
}
