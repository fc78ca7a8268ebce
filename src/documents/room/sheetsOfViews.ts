import type { UnitSystem } from "../../units/printLength.ts";
import type { BoardSheet } from "../board/sheetGeometry.ts";

/** What takes room on a sheet of elevations, in real millimetres. */
export interface Extent {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** One to so much: the usual scales of elevations (from memory). */
const SCALES: Readonly<Record<UnitSystem, readonly number[]>> = {
  inches: [12, 16, 20, 24, 32, 48],
  centimetres: [10, 15, 20, 25, 30, 50],
};

/** A wall may be drawn a little smaller where another then fits beside it, not smaller than one to this. */
const PAIR_LEAST: Readonly<Record<UnitSystem, number>> = { inches: 24, centimetres: 25 };

/** Between two views on one sheet: the dimension of the height, and air, millimetres of paper. */
export const BETWEEN_MM = 34;

/** The part of a sheet that views may take, millimetres of paper. */
export function spaceOn(sheet: BoardSheet): { across: number; down: number; top: number } {
  const top = sheet.margin.top + 46;
  return {
    top,
    across: sheet.width - sheet.margin.left - sheet.margin.right - 22,
    down: sheet.height - top - sheet.margin.bottom - 30,
  };
}

/** The largest scale at which views stand side by side; null where none of the usual ones is small enough. */
export function scaleOf(
  views: readonly Extent[],
  sheet: BoardSheet,
  units: UnitSystem,
): number | null {
  const { across, down } = spaceOn(sheet);
  const width = views.reduce((sum, v) => sum + v.widthMm, 0);
  const height = Math.max(...views.map((v) => v.heightMm));
  const between = BETWEEN_MM * (views.length - 1);
  return SCALES[units].find((s) => width / s + between <= across && height / s <= down) ?? null;
}

/**
 * Which views share a sheet. The row of what stands free goes beside a wall that need not be drawn smaller for it, else on a sheet of
 * its own; each wall with the first later one that fits beside it at a fair scale, in their own order.
 */
export function viewsBySheet<V extends Extent>(
  walls: readonly V[],
  free: V | null,
  sheet: BoardSheet,
  units: UnitSystem,
): V[][] {
  const left = [...walls];
  const host = free
    ? left.findIndex((w) => {
        const pair = scaleOf([w, free], sheet, units);
        return pair !== null && pair === scaleOf([w], sheet, units);
      })
    : -1;
  const hosting = host < 0 ? null : (left[host] as V);
  const out: V[][] = [];
  for (let wall = left.shift(); wall; wall = left.shift()) {
    const first = wall;
    if (free && first === hosting) {
      out.push([first, free]);
      continue;
    }
    const at = left.findIndex((other) => {
      const scale = other === hosting ? null : scaleOf([first, other], sheet, units);
      return scale !== null && scale <= PAIR_LEAST[units];
    });
    out.push(at < 0 ? [first] : [first, ...left.splice(at, 1)]);
  }
  if (free && !hosting) out.push([free]);
  return out;
}
