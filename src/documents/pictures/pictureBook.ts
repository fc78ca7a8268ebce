import type { Tile } from "../../drawing/binding.ts";
import type { Swatch, SwatchPhoto } from "../../swatches/swatch.ts";
import type { PagePicture } from "../page.ts";
import { tileCellOf } from "./tileCell.ts";

/** Print resolution of swatches, pixels an inch on paper; never more than the photograph has. */
const PRINT_PPI = 300;

/** A picture as a page shows it. */
export interface Shown {
  /** From the page to the picture. */
  readonly href: string;
  readonly widthPx: number;
}

/**
 * The pictures of one tree: each is asked for by what it must show and how large it stands on paper, gets an opaque name, and is
 * made once however often it is used.
 */
export interface PictureBook {
  /** Part of a photograph, in millimetres of the real thing from its upper left corner, standing `paperWidthMm` wide. */
  crop(
    swatch: Swatch,
    part: { x: number; y: number; width: number; height: number },
    paperWidthMm: number,
  ): Shown | null;
  /** A whole photograph, standing `paperWidthMm` wide. */
  whole(swatch: Swatch, paperWidthMm: number): Shown | null;
  /** One cell of the pattern that joins itself, for drawings at one to `scale`; null where the photograph cannot be laid so. */
  tile(swatch: Swatch, scale: number): Tile | null;
  /** A whole picture that is no swatch, by its path below the content folder, standing at most `paperWidthMm` wide. */
  plain(source: string, paperWidthMm: number): Shown;
  /** The same pictures in grey, standing `part` as wide as is asked for. */
  inGrey(part: number): Pick<PictureBook, "crop" | "whole" | "tile">;
  /** All that was asked for so far. */
  readonly pictures: readonly PagePicture[];
}

/** A short name that says nothing: sixteen hex digits of an FNV-1a hash of what is in the picture. */
export function opaqueName(what: string): string {
  let a = 0x811c9dc5;
  let b = 0x01000193;
  for (let i = 0; i < what.length; i++) {
    a = Math.imul(a ^ what.charCodeAt(i), 0x01000193) >>> 0;
    b = Math.imul(b ^ what.charCodeAt(what.length - 1 - i), 0x85ebca6b) >>> 0;
  }
  return a.toString(16).padStart(8, "0") + b.toString(16).padStart(8, "0");
}

/** A picture book for the tree at `tree`, whose pages lie `up` (`./`, `../`) below its root. */
export function pictureBook(tree: string, up: string): PictureBook {
  const made = new Map<string, PagePicture>();
  const add = (
    swatch: Swatch,
    crop: PagePicture["crop"],
    widthPx: number,
    tile: PagePicture["tile"],
    grey: boolean,
  ): Shown => {
    const photo = swatch.photo as SwatchPhoto;
    const key = JSON.stringify([photo.sha256, crop, widthPx, tile, ...(grey ? ["grey"] : [])]);
    const name = `pictures/${opaqueName(key)}.jpg`;
    if (!made.has(name))
      made.set(name, {
        path: `${tree}/${name}`,
        source: photo.source,
        crop,
        widthPx,
        tile,
        grey,
      });
    return { href: up + name, widthPx };
  };
  const pxFor = (paperWidthMm: number): number => Math.ceil((paperWidthMm / 25.4) * PRINT_PPI);
  const shelf = (grey: boolean, part: number): Pick<PictureBook, "crop" | "whole" | "tile"> => ({
    crop(swatch, shown, paperWidthMm) {
      const photo = swatch.photo;
      if (!photo?.showsMm) return null;
      const pxPerMm = photo.widthPx / photo.showsMm;
      const width = Math.min(photo.widthPx, Math.round(shown.width * pxPerMm));
      const height = Math.min(photo.heightPx, Math.round(shown.height * pxPerMm));
      const x = Math.max(0, Math.min(photo.widthPx - width, Math.round(shown.x * pxPerMm)));
      const y = Math.max(0, Math.min(photo.heightPx - height, Math.round(shown.y * pxPerMm)));
      return add(
        swatch,
        { x, y, width, height },
        Math.min(width, pxFor(paperWidthMm * part)),
        null,
        grey,
      );
    },
    whole(swatch, paperWidthMm) {
      const photo = swatch.photo;
      return photo
        ? add(swatch, null, Math.min(photo.widthPx, pxFor(paperWidthMm * part)), null, grey)
        : null;
    },
    tile(swatch, scale) {
      const cell = tileCellOf(swatch);
      if (!cell) return null;
      const { tile, ...size } = cell;
      const px = Math.min(tile.widthPx, pxFor((size.widthMm / scale) * part));
      return {
        href: add(swatch, null, px, tile, grey).href,
        ...size,
        match: tile.halfDrop ? "half-drop" : "straight",
      };
    },
  });
  return {
    ...shelf(false, 1),
    inGrey: (part) => shelf(true, part),
    plain(source, paperWidthMm) {
      const widthPx = pxFor(paperWidthMm);
      const name = `pictures/${opaqueName(JSON.stringify(["plain", source, widthPx]))}.jpg`;
      made.set(name, {
        path: `${tree}/${name}`,
        source,
        crop: null,
        widthPx,
        tile: null,
        grey: false,
      });
      return { href: up + name, widthPx };
    },
    get pictures() {
      return [...made.values()].sort((a, b) => (a.path < b.path ? -1 : 1));
    },
  };
}
