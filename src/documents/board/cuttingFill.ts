import { layingOf, shownMm } from "../../swatches/period.ts";
import type { Swatch } from "../../swatches/swatch.ts";
import { partAboutMotif } from "../pictures/aboutMotif.ts";
import { bandsOf } from "../pictures/colourCard.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { CuttingFill } from "./cuttings.ts";

/**
 * As large as a cloth can be shown at one to `scale`, millimetres on paper: the whole of what its photograph shows. Null where it can
 * be laid as far as is wanted, or where nothing says how much the photograph shows.
 */
export function mostOnPaper(
  swatch: Swatch,
  scale: number,
): { width: number; height: number } | null {
  const shown = shownMm(swatch.photo);
  if (!shown || layingOf(swatch) === "whole") return null;
  return { width: shown.across / scale, height: shown.up / scale };
}

/**
 * What fills a cutting of a cloth: a part of the photograph where it shows enough, else its repeat where it shows a whole one; a card
 * of its colours where there is no photograph. A cutting that is larger than `mostOnPaper` would be enlarged: whoever hangs it keeps to that.
 */
export function fillOf(
  swatch: Swatch,
  width: number,
  height: number,
  scale: number,
  book: Pick<PictureBook, "crop" | "whole" | "tile">,
): CuttingFill {
  const { photo } = swatch;
  const shown = shownMm(photo);
  if (photo?.showsMm && shown) {
    const size = { width: width * scale, height: height * scale };
    const laid = layingOf(swatch) === "whole";
    const holds = size.width <= shown.across && size.height <= shown.up;
    if (holds || !laid) {
      const part = {
        width: Math.min(size.width, shown.across),
        height: Math.min(size.height, shown.up),
      };
      // A little right of the middle and above it, as a cutting is laid by eye.
      const about = partAboutMotif(photo, photo.showsMm, part, { x: 0.56, y: 0.42 });
      const picture = book.crop(swatch, about, width);
      if (picture) return { picture: picture.href };
    }
    const tile = book.tile(swatch, scale);
    if (tile) return { tile, scale, ground: swatch.average };
  }
  const whole = book.whole(swatch, width);
  if (whole) return { picture: whole.href };
  return { awaited: bandsOf(swatch) };
}
