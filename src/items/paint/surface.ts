import Fraction from "fraction.js";
import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import type { WallRun } from "../itemKind.ts";

/** Exact square millimetres. */
export type Area = Fraction;

export const areaOf = (a: Length, b: Length): Area => a.mm.mul(b.mm);
export const sumAreas = (all: readonly Area[]): Area =>
  all.reduce((x, y) => x.add(y), new Fraction(0));

export interface WallArea {
  readonly gross: Area;
  readonly openings: Area;
  readonly net: Area;
  /** Openings that were too small to take off. */
  readonly keptIn: number;
}

/** Wall runs less their openings; what sticks out of a run is clipped to it, and an opening no bigger than `small` squared stays in. */
export function wallArea(runs: readonly WallRun[], small: Length): WallArea {
  let keptIn = 0;
  const openings = runs.flatMap((run) =>
    run.openings.flatMap((o) => {
      const left = Length.max(o.fromLeft, run.fromLeft);
      const right = Length.min(o.fromLeft.plus(o.width), run.fromLeft.plus(run.width));
      const top = Length.min(o.foot.plus(o.height), run.height);
      const width = right.minus(left);
      const height = top.minus(o.foot);
      if (width.compare(Length.zero) <= 0 || height.compare(Length.zero) <= 0) return [];
      if (areaOf(o.width, o.height).compare(areaOf(small, small)) <= 0) {
        keptIn += 1;
        return [];
      }
      return [areaOf(width, height)];
    }),
  );
  const gross = sumAreas(runs.map((r) => areaOf(r.width, r.height)));
  const taken = sumAreas(openings);
  return { gross, openings: taken, net: gross.sub(taken), keptIn };
}

export interface WoodworkArea {
  readonly skirtingLength: Length;
  readonly skirting: Area;
  readonly casings: Area;
  readonly doors: Area;
  readonly total: Area;
}

/**
 * Woodwork as an estimate: skirting along the walls less the doors and their casings; a casing round three sides of each door
 * and four of each window; and the room side of each door. Sashes are not counted.
 */
export function woodworkArea(
  runs: readonly WallRun[],
  skirtingHeight: Length,
  casing: Length,
): WoodworkArea {
  const openings = runs.flatMap((r) => r.openings);
  const doors = openings.filter((o) => o.what === "door");
  const round = Length.sum(runs.map((r) => r.width));
  const gaps = Length.sum(doors.map((d) => d.width.plus(casing.times(2))));
  const skirtingLength = Length.max(round.minus(gaps), Length.zero);
  const casings = sumAreas(
    openings.map((o) => {
      const sides = o.height.times(2);
      const across = o.width.plus(casing.times(2)).times(o.what === "door" ? 1 : 2);
      return areaOf(sides.plus(across), casing);
    }),
  );
  const leaves = sumAreas(doors.map((d) => areaOf(d.width, d.height)));
  const skirting = areaOf(skirtingLength, skirtingHeight);
  return {
    skirtingLength,
    skirting,
    casings,
    doors: leaves,
    total: sumAreas([skirting, casings, leaves]),
  };
}

/** The openings that woodwork goes round, with their sizes: `a door of 36″ × 82″`. */
export function openingWords(runs: readonly WallRun[], units: UnitSystem): string {
  const all = runs.flatMap((r) => r.openings);
  if (all.length === 0) return "nothing";
  return all.map((o) => `a ${o.what} of ${size(o.width, o.height, units)}`).join(", ");
}

/** The doors' faces, summed: `36″ × 82″`. */
export function doorWords(runs: readonly WallRun[], units: UnitSystem): string {
  const doors = runs.flatMap((r) => r.openings).filter((o) => o.what === "door");
  return doors.length === 0
    ? "no door"
    : doors.map((d) => size(d.width, d.height, units)).join(" + ");
}

function size(width: Length, height: Length, units: UnitSystem): string {
  return `${printLength(width, units)} × ${printLength(height, units)}`;
}
