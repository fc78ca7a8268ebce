import { USUAL_SCALES } from "../../drawing/usualScales.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import type { BoardSheet } from "../board/sheetGeometry.ts";

/** What takes room on a sheet of elevations, in real millimetres. */
export interface Extent {
  readonly widthMm: number;
  readonly heightMm: number;
  /** What the heights at its left take, millimetres of paper; nothing where none are said. */
  readonly beforeMm?: number;
}

/** How wide views stand side by side at a scale, with what stands beside each, millimetres of paper. */
export function acrossOf(views: readonly Extent[], scale: number): number {
  const each = views.reduce((sum, v) => sum + v.widthMm / scale + (v.beforeMm ?? 0), 0);
  return each + BETWEEN_MM * (views.length - 1);
}

/** One to so much at the smallest: of a pattern nothing is seen beyond. */
const SMALLEST = 50;
/** What stands free alone may be drawn larger than is usual. */
const LARGE: Readonly<Record<UnitSystem, readonly number[]>> = {
  inches: [8],
  centimetres: [5],
};

/** A wall may be drawn so much smaller where another then fits beside it, if the two still fill so much of the sheet's height. */
const PAIR_LOSS = 1.35;
const PAIR_FILL = 0.72;

/** Between two views on one sheet, millimetres of paper. */
export const BETWEEN_MM = 12;
/** Beside the last view: the dimension of the height. */
const HEIGHT_MM = 12;
/** Chains above a wall, and two lines of names below its floor. */
const ABOVE_MM = 19;
const BELOW_MM = 26;

/** Where the title stands: over the drawing, or in a column beside one that takes the sheet's height. */
export type TitlePlace = "above" | "beside";

/** The part of a sheet that views may take, millimetres of paper. */
export interface ViewSpace {
  readonly title: TitlePlace;
  readonly left: number;
  readonly top: number;
  readonly across: number;
  readonly down: number;
}

/** A drawing that takes less than this of the sheet's width has its title beside it. */
const NARROW = 0.72;

/** The width of the title's column with the air after it, and that air. */
export const COLUMN_MM = 92;
export const COLUMN_AIR_MM = 12;

/** The part of a sheet that views may take, by where the title stands. */
export function spaceOn(sheet: BoardSheet, title: TitlePlace): ViewSpace {
  const { margin, width, height } = sheet;
  if (title === "above") {
    const top = margin.top + 46;
    return {
      title,
      left: margin.left,
      top,
      across: width - margin.left - margin.right - HEIGHT_MM,
      down: height - top - margin.bottom - BELOW_MM,
    };
  }
  const top = margin.top - 1 + ABOVE_MM;
  return {
    title,
    left: margin.left + COLUMN_MM,
    top,
    across: width - margin.left - COLUMN_MM - margin.right - HEIGHT_MM + 4,
    down: height - top - margin.bottom + 1 - BELOW_MM,
  };
}

/** What the heights at the left of a drawing may take of the air after the title's column, millimetres. */
export function overColumn(views: readonly Extent[], { title }: ViewSpace): number {
  return title === "beside" ? Math.min(COLUMN_AIR_MM, views[0]?.beforeMm ?? 0) : 0;
}

/** A scale, and the part of the sheet at which it was found. */
export interface ViewScale {
  readonly scale: number;
  readonly space: ViewSpace;
}

/** The largest scale at which views stand side by side, the title over them where that costs nothing, beside one that is narrow; null where none of the usual ones is small enough. */
export function scaleOf(
  views: readonly Extent[],
  sheet: BoardSheet,
  units: UnitSystem,
  large = false,
): ViewScale | null {
  const height = Math.max(...views.map((v) => v.heightMm));
  const usual = USUAL_SCALES[units].filter((scale) => scale <= SMALLEST);
  for (const scale of [...(large ? LARGE[units] : []), ...usual]) {
    const across = acrossOf(views, scale);
    const fits = (["above", "beside"] as const)
      .map((title) => spaceOn(sheet, title))
      .filter(
        (space) =>
          across <= space.across + overColumn(views, space) && height / scale <= space.down,
      );
    // Over a narrow drawing the title leaves both sides of it empty; beside it, none.
    const narrow = views.length === 1 && across < NARROW * spaceOn(sheet, "above").across;
    const space = narrow ? fits.at(-1) : fits[0];
    if (space) return { scale, space };
  }
  return null;
}

/** True where a view loses little by sharing its sheet with another. */
function isFair(
  one: Extent,
  both: readonly Extent[],
  sheet: BoardSheet,
  units: UnitSystem,
): boolean {
  const alone = scaleOf([one], sheet, units);
  const shared = scaleOf(both, sheet, units);
  if (alone === null || shared === null) return false;
  const filled = Math.max(...both.map((v) => v.heightMm)) / shared.scale / shared.space.down;
  return shared.scale <= alone.scale * PAIR_LOSS && filled >= PAIR_FILL;
}

/**
 * Which views share a sheet. The row of what stands free goes beside a wall that loses little by it, else on a sheet of its own; each
 * wall with the first later one that fits beside it at a fair scale, in their own order.
 */
export function viewsBySheet<V extends Extent>(
  walls: readonly V[],
  free: V | null,
  sheet: BoardSheet,
  units: UnitSystem,
): V[][] {
  const left = [...walls];
  const host = free ? left.findIndex((w) => isFair(w, [w, free], sheet, units)) : -1;
  const hosting = host < 0 ? null : (left[host] as V);
  const out: V[][] = [];
  for (let wall = left.shift(); wall; wall = left.shift()) {
    const first = wall;
    if (free && first === hosting) {
      out.push([first, free]);
      continue;
    }
    const at = left.findIndex(
      (other) =>
        other !== hosting &&
        isFair(first, [first, other], sheet, units) &&
        isFair(other, [first, other], sheet, units),
    );
    out.push(at < 0 ? [first] : [first, ...left.splice(at, 1)]);
  }
  if (free && !hosting) out.push([free]);
  return out;
}
