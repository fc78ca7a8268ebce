import { layingOf, shownMm } from "../../swatches/period.ts";
import { isPlain, type Swatch } from "../../swatches/swatch.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import { partAboutMotif } from "../pictures/aboutMotif.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { RoomData } from "../projectData.ts";
import { escapeHtml } from "../words/marks.ts";
import { listed } from "../words/phrases.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { tileImages } from "./cuttings.ts";

/** Distances at which each cloth is shown, in metres: doubling steps, whole numbers in the studio's own unit. */
export const DISTANCES_M: Readonly<Record<UnitSystem, readonly number[]>> = {
  inches: [3, 6, 12, 24].map((feet) => feet * 0.3048),
  centimetres: [1, 2, 4, 8],
};
/** A patch is so wide on paper, and stands so far from the next. */
export const PATCH = 15;
const r = svgNumber;

/** A row of patches: what a cloth looks like from each distance, when the page is held at half a metre. */
export function patchesSvg(
  swatch: Swatch,
  x: number,
  y: number,
  book: PictureBook,
  id: string,
  units: UnitSystem,
): string {
  let out = "";
  for (const [at, metres] of DISTANCES_M[units].entries()) {
    const px = x + at * (PATCH + 1.4);
    const scale = metres / 0.5;
    const box = `<rect x="${r(px)}" y="${r(y)}" width="${PATCH}" height="${PATCH}"`;
    const gone = swatch.readsPlainFromM !== null && metres >= swatch.readsPlainFromM;
    const laid = layingOf(swatch) === "whole";
    const near = gone || (laid && metres > 2.1) ? null : nearPatch(swatch, scale, book, !laid);
    const tile = gone || near || !laid ? null : book.tile(swatch, scale <= 8 ? 5 : 8);
    out += `${box} fill="${swatch.average ?? "#e4e4e0"}"/>`;
    if (near)
      out += `<image href="${escapeHtml(near.href)}" x="${r(px + (PATCH - near.width) / 2)}" y="${r(y + (PATCH - near.height) / 2)}" width="${r(near.width)}" height="${r(near.height)}" preserveAspectRatio="xMidYMid slice"/>`;
    else if (tile)
      out += `<clipPath id="${id}-${at}">${box}/></clipPath><g clip-path="url(#${id}-${at})">${tileImages(tile, scale, { x: px, y, width: PATCH, height: PATCH }, px + PATCH / 2, y + PATCH / 2)}</g>`;
  }
  return out;
}

/**
 * A patch seen from near is a small crop at the photograph's own resolution: a whole tile would weigh too much. Where the photograph
 * shows less than the patch and may show less, all that it shows stands in the patch's middle. Null where it shows too little.
 */
function nearPatch(
  swatch: Swatch,
  scale: number,
  book: PictureBook,
  mayShowLess: boolean,
): { href: string; width: number; height: number } | null {
  const shown = shownMm(swatch.photo);
  if (!swatch.photo?.showsMm || !shown) return null;
  const size = PATCH * scale;
  if (size > Math.min(shown.across, shown.up) && !mayShowLess) return null;
  const part = { width: Math.min(size, shown.across), height: Math.min(size, shown.up) };
  const width = part.width / scale;
  const about = partAboutMotif(swatch.photo, swatch.photo.showsMm, part);
  const href = book.crop(swatch, about, width)?.href;
  return href ? { href, width, height: part.height / scale } : null;
}

/** From how far a cloth is a plain, in words. */
export function plainFrom(swatch: Swatch, units: UnitSystem): string {
  if (isPlain(swatch)) return "a plain at any distance";
  const m = swatch.readsPlainFromM;
  const far = m === null || m > FAR_M;
  return far ? "a pattern across any room" : `a plain from ${distance(m, units)}`;
}

/** Further than this nobody looks at a cloth in a room. */
const FAR_M = 12;

export function distance(m: number, units: UnitSystem): string {
  return units === "inches" ? `${Math.round(m / 0.3048)}\u202fft` : `${Math.round(m)}\u202fm`;
}

/** What each cloth is from the door, in a sentence; empty where no distance from the door is known. */
export function fromDoor(room: RoomData, units: UnitSystem): string {
  const seen = room.scheme.views.filter((v) => v.doorM !== null);
  const held = seen.filter((v) => !v.plainFromDoor);
  const gone = seen.filter((v) => v.plainFromDoor);
  const far = Math.max(...seen.map((v) => v.doorM ?? 0));
  if (seen.length === 0) return "";
  const holds =
    held.length > 0
      ? `${listed(held.map((v) => v.name))} ${held.length > 1 ? "read as patterns" : "reads as a pattern"}`
      : "";
  const plain =
    gone.length > 0
      ? `${listed(gone.map((v) => v.name))} ${gone.length > 1 ? "are plains" : "is a plain"}`
      : "";
  const body = [holds, plain].filter((t) => t !== "").join(", ");
  return `From the door, up to ${distance(far, units)} away, ${body}.`;
}
