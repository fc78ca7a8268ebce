import type { BandSequence } from "../clothMeasure.ts";
import { type Field, fieldOf } from "../pixels/field.ts";
import type { Pixels } from "../pixels/pixels.ts";
import type { Basis, Shift } from "../repeat/lattice.ts";
import type { Tilt } from "../repeat/tilt.ts";
import { bandSegments, type Mean } from "./bandSegments.ts";
import { bandSeries } from "./bandSeries.ts";
import { crossedColours } from "./crossedColours.ts";
import { crossingsOf, type LaidBands } from "./crossings.ts";
import { namedBands } from "./namedBands.ts";

/** A picture whose bands are read, and how its pattern was found in a relief `scale` times smaller. */
export interface BandedPicture {
  readonly even: Pixels;
  /** Pixels of the picture that one of the relief stands for. */
  readonly scale: number;
  readonly tilt: Tilt;
  readonly mmPerPx: number;
  /** The cloth's own colours. */
  readonly hexes: readonly string[];
}

/** Width at which bands are read, and pixels that their repeat should have there. */
const LEAST_WIDTH = 280;
const REPEAT_PX = 480;
/** More bands than this in a repeat are one that shades into another, or a weave. */
const MOST_BANDS = 28;

/** The bands of stripes whose repeat is `across` pixels of the relief; empty where they cannot be told. */
export function bandsOfStripes(picture: BandedPicture, across: Shift): BandSequence[] {
  const { field, up, tilt } = fieldFor(picture, Math.hypot(...across));
  const laid = layOut(field, tilt, [across[0] * up, across[1] * up]);
  if (!laid) return [];
  const bands = sequence(
    picture,
    field,
    laid,
    laid.segments.map((band) => band.mean),
  );
  return bands ? [bands] : [];
}

/** The bands of a check both ways, those that run up first; `up` and `across` are the shifts that bring it onto itself. */
export function bandsOfCheck(picture: BandedPicture, [up, across]: Basis): BandSequence[] {
  const found = fieldFor(picture, Math.min(Math.hypot(...up), Math.hypot(...across)));
  const { field, tilt } = found;
  const scaled = ([x, y]: Shift): Shift => [x * found.up, y * found.up];
  const warp = layOut(field, tilt, squareTo(scaled(up), scaled(across)));
  const weft = layOut(field, tilt, squareTo(scaled(across), scaled(up)));
  if (!warp || !weft) return [];
  const crossings = crossingsOf(field, tilt, warp, weft);
  if (!crossings) return [];
  const own = crossedColours(warp.segments, weft.segments, crossings);
  const both = [sequence(picture, field, warp, own.warp), sequence(picture, field, weft, own.weft)];
  return both.every((one) => one !== null) ? both : [];
}

/** The part of a shift that stands square to a run. */
function squareTo([rx, ry]: Shift, [x, y]: Shift): Shift {
  const size = rx * rx + ry * ry;
  const along = (x * rx + y * ry) / size;
  return [x - along * rx, y - along * ry];
}

/** The picture's field so wide that a repeat of so many pixels of the relief is seen well; `up` is what one of these becomes. */
function fieldFor({ even, scale, tilt }: BandedPicture, repeatPx: number) {
  const wanted = (even.width * REPEAT_PX) / (repeatPx * scale);
  const field = fieldOf(even, Math.min(even.width, Math.max(LEAST_WIDTH, wanted)));
  const up = scale / field.scale;
  const here: Tilt = [tilt[0] / up, tilt[1] / up];
  return { field, up, tilt: here };
}

function layOut(field: Field, tilt: Tilt, [x, y]: Shift): LaidBands | null {
  // Bands that run up are read from left to right, all others from the top down.
  const forward = Math.abs(x) > Math.abs(y) ? x > 0 : y > 0;
  const across: Shift = forward ? [x, y] : [-x, -y];
  const series = bandSeries(field, tilt, across);
  const segments = series && bandSegments(series);
  if (!segments || segments.length < 2 || segments.length > MOST_BANDS) return null;
  return { across, series, segments };
}

function sequence(
  { mmPerPx, hexes }: BandedPicture,
  field: Field & { readonly scale: number },
  { across, series, segments }: LaidBands,
  colours: readonly Mean[],
): BandSequence | null {
  const repeatMm = series.periodPx * field.scale * mmPerPx;
  const { periodPx } = series;
  const bands = namedBands({ segments, colours, periodPx, repeatMm }, hexes);
  if (bands.length < 2) return null;
  const run = 90 - (Math.atan2(across[1], across[0]) * 180) / Math.PI;
  return { directionDeg: ((run % 180) + 180) % 180, bands };
}
