import type { Swatch } from "../../swatches/swatch.ts";
import { escapeHtml, type Markup } from "../words/marks.ts";
import { partAboutMotif, shownHeightMm } from "./aboutMotif.ts";
import { AWAITED, bandsOf, colourCard } from "./colourCard.ts";
import type { PictureBook } from "./pictureBook.ts";

/** How large a swatch stands on paper, in millimetres, its cloth at one to `scale`, and its class in the style sheet. */
export interface SwatchSize {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly name: string;
}

/** A cutting of a cloth, its motif in the middle; the card of its colours where there is no photograph. */
export function clothSwatch(
  swatch: Swatch,
  book: PictureBook,
  { width, height, scale, name }: SwatchSize,
  id: string,
): Markup {
  const photo = swatch.photo;
  let inner = "";
  if (photo?.showsMm) {
    const high = shownHeightMm(photo, photo.showsMm);
    const size = Math.min(1, photo.showsMm / (width * scale), high / (height * scale));
    const part = partAboutMotif(photo, photo.showsMm, {
      width: width * scale * size,
      height: height * scale * size,
    });
    const shown = book.crop(swatch, part, width);
    if (shown)
      inner = `<image href="${escapeHtml(shown.href)}" width="${width}" height="${height}" preserveAspectRatio="xMidYMid slice"/>`;
  }
  const awaited = photo === null ? `, ${AWAITED}` : "";
  // The card's dashed edge lies inside.
  const edge = { x: 0.2, y: 0.2, width: width - 0.4, height: height - 0.4 };
  if (inner === "") inner = colourCard(bandsOf(swatch), edge);
  return {
    html: `<svg class="${name}" viewBox="0 0 ${width} ${height}" role="img" aria-label="${escapeHtml(swatch.name + awaited)}" xmlns="http://www.w3.org/2000/svg"><clipPath id="${id}"><rect width="${width}" height="${height}"/></clipPath><g clip-path="url(#${id})">${inner}</g></svg>`,
  };
}
