import { layingOf } from "../../swatches/period.ts";
import type { Swatch } from "../../swatches/swatch.ts";
import type { PagePicture } from "../page.ts";
import { motifSpot } from "./aboutMotif.ts";

/** Along a way in which nothing comes again, a cell takes this part of the picture: the rest joins it to itself. */
const FREE_PART = 0.8;
/** A photograph that shows less than this part of a step would stand in its cell like a stamp; its average is shown instead. */
const LEAST_PART = 0.6;

/** A cell of a cloth, and how large it is in truth. */
export interface TileSize {
  readonly tile: NonNullable<PagePicture["tile"]>;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Where the motif's middle stands in it. */
  readonly originX: number;
  readonly originY: number;
}

/** The cell by which a cloth's photograph may be laid without a lie; null where it shows too little of its pattern, or nobody knows how much it shows. */
export function tileCellOf(swatch: Swatch): TileSize | null {
  const { photo, period } = swatch;
  const laying = layingOf(swatch);
  if (!photo?.showsMm || !period || laying === "alone") return null;
  const pxPerMm = photo.widthPx / photo.showsMm;
  const across = period.acrossMm === null ? null : period.acrossMm * pxPerMm;
  const up = period.upMm === null ? null : period.upMm * pxPerMm;
  const part = Math.min(photo.widthPx / (across ?? 1), photo.heightPx / (up ?? 1));
  if (laying === "part" && part < LEAST_PART) return null;
  const widthPx = Math.max(2, Math.round(across ?? photo.widthPx * FREE_PART));
  const heightPx = Math.max(2, Math.round(up ?? photo.heightPx * FREE_PART));
  const motif = motifSpot(photo);
  const whole = laying === "whole";
  const widthMm = period.acrossMm ?? widthPx / pxPerMm;
  const heightMm = period.upMm ?? heightPx / pxPerMm;
  // What is shown of less than a cell stands in the middle of its place.
  const middle = whole
    ? { x: motif.x * photo.widthPx, y: motif.y * photo.heightPx }
    : { x: photo.widthPx / 2, y: photo.heightPx / 2 };
  return {
    tile: {
      widthPx,
      heightPx,
      repeatsAcross: across !== null,
      repeatsUp: up !== null,
      halfDrop: period.halfDrop,
      middle,
      ground: whole ? null : (swatch.average ?? "#dddddd"),
    },
    widthMm,
    heightMm,
    originX: widthMm / 2 + (motif.x * photo.widthPx - middle.x) / pxPerMm,
    originY: heightMm / 2 + (motif.y * photo.heightPx - middle.y) / pxPerMm,
  };
}
