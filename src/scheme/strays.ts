import type { Swatch, SwatchColour } from "../swatches/swatch.ts";
import { isNeutral, nearestInPalette, type PaletteColour, SAME_COLOUR } from "./palette.ts";

/** A colour outside the palette is spoken of from this share of its cloth. */
export const SPOKEN_OF = 0.05;

export interface Belonging {
  /** Share of the cloth that is in the palette, or so grey that it goes with any. */
  readonly cohesion: number;
  /** Its colours from outside that are large enough to speak of. */
  readonly strays: readonly SwatchColour[];
}

/** How far a cloth belongs to a palette. An animal marking in natural colours is a neutral, and never a stray. */
export function belongingOf(swatch: Swatch, palette: readonly PaletteColour[]): Belonging {
  if (swatch.animal) return { cohesion: 1, strays: [] };
  const inside = (hex: string): boolean =>
    isNeutral(hex) || (nearestInPalette(hex, palette)?.distance ?? 100) <= SAME_COLOUR;
  return {
    cohesion: swatch.colours.filter((c) => inside(c.hex)).reduce((a, c) => a + c.share, 0),
    strays: swatch.colours.filter((c) => !inside(c.hex) && c.share >= SPOKEN_OF),
  };
}
