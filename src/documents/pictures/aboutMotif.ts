import type { Swatch } from "../../swatches/swatch.ts";

type Photo = NonNullable<Swatch["photo"]>;
type Part = { readonly x: number; readonly y: number };

/** Where the motif stands in a photograph, as parts of its width and height; its middle where none stands out. */
export function motifSpot(photo: Photo): Part {
  return photo.motifAt ?? { x: 0.5, y: 0.5 };
}

/** Height of the cloth that a photograph shows, in millimetres, when it shows `showsMm` across. */
export function shownHeightMm(photo: Photo, showsMm: number): number {
  return (photo.heightPx / photo.widthPx) * showsMm;
}

/**
 * The part of a photograph, in millimetres of cloth, of a size that fits into it, with the motif's middle at a place of the part
 * (its own middle where nothing is said), as far as the photograph reaches.
 */
export function partAboutMotif(
  photo: Photo,
  showsMm: number,
  size: { readonly width: number; readonly height: number },
  place: Part = { x: 0.5, y: 0.5 },
): { x: number; y: number; width: number; height: number } {
  const motif = motifSpot(photo);
  const from = (at: number, whole: number, own: number, part: number): number =>
    Math.max(0, Math.min(whole - own, at * whole - own * part));
  return {
    x: from(motif.x, showsMm, size.width, place.x),
    y: from(motif.y, shownHeightMm(photo, showsMm), size.height, place.y),
    width: size.width,
    height: size.height,
  };
}
