import type { Swatch } from "../../swatches/swatch.ts";
import { partAboutMotif, shownHeightMm } from "../pictures/aboutMotif.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData } from "../projectData.ts";
import { type Markup, marked } from "../words/marks.ts";
import { repeatWords } from "./repeatWords.ts";

/** A piece of the board as it opens on a screen: where it is pressed, and a part of its cloth to be shown at true size. */
export interface CloseUp {
  readonly id: string;
  /** Where the piece hangs, in millimetres of the sheet. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly href: string;
  /** What the picture shows, in millimetres of the real thing. */
  readonly shownWidth: number;
  readonly shownHeight: number;
  readonly words: Markup;
}

/** As much cloth as a hand would hold; its picture is about 700 pixels wide, which a screen at true size can show. */
const SHOWN = { width: 150, height: 112 };
const PICTURE_MM = 60;

/** What opens where a piece is pressed; null where nobody said how much its photograph shows. */
export function closeUpOf(
  swatch: Swatch,
  place: { x: number; y: number; width: number; height: number },
  id: string,
  data: ProjectData,
  book: PictureBook,
): CloseUp | null {
  const photo = swatch.photo;
  if (!photo?.showsMm) return null;
  const high = shownHeightMm(photo, photo.showsMm);
  const width = Math.min(SHOWN.width, photo.showsMm);
  const height = Math.min(SHOWN.height, high);
  const part = partAboutMotif(photo, photo.showsMm, { width, height });
  const shown = book.crop(swatch, part, PICTURE_MM);
  if (!shown) return null;
  const { units } = data.studio.fields;
  return {
    id,
    x: place.x,
    y: place.y,
    width: place.width,
    height: place.height,
    href: shown.href,
    shownWidth: width,
    shownHeight: height,
    words: marked(swatch.repeat ? repeatWords(swatch, units) : ""),
  };
}
