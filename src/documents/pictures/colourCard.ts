import type { Swatch } from "../../swatches/swatch.ts";
import { svgNumber } from "../words/svgNumber.ts";

/** What is said of a cloth that nobody has photographed yet. */
export const AWAITED = "photograph to come";

/** A colour that a card declares, and its share of the cloth, 0 to 1. */
export interface ColourBand {
  readonly hex: string;
  readonly share: number;
}

/** The colours of a cloth that has no photograph, as its card declares them, the largest share first; none where it says nothing. */
export function bandsOf(swatch: Swatch): ColourBand[] {
  return swatch.colours.map(({ hex, share }) => ({ hex, share }));
}

/** The paper round the colours, millimetres, and at most this part of the card's shorter side. */
const PAPER_MM = 3;
const PAPER_PART = 0.08;
const r = svgNumber;

/**
 * A card of colours in place of a cloth without a photograph, millimetres of the sheet: bare paper with a dashed edge, and on it each
 * declared colour as a level band as high as its share. No cutting has paper round it, so that it is never taken for the pattern.
 */
export function colourCard(
  bands: readonly ColourBand[],
  box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): string {
  const { x, y, width, height } = box;
  const paper = Math.min(PAPER_MM, Math.min(width, height) * PAPER_PART);
  const high = height - 2 * paper;
  let from = y + paper;
  const colours = bands.map(({ hex, share }) => {
    const band = `<rect x="${r(x + paper)}" y="${r(from)}" width="${r(width - 2 * paper)}" height="${r(share * high)}" fill="${hex}"/>`;
    from += share * high;
    return band;
  });
  const edge = `M${r(x)} ${r(y)}H${r(x + width)}V${r(y + height)}H${r(x)}Z`;
  return `<path d="${edge}" fill="#fff"/>${colours.join("")}<path d="${edge}" fill="none" stroke="#23282e" stroke-width=".25" stroke-dasharray="1.6 1"/>`;
}
