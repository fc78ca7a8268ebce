import Fraction from "fraction.js";
import type { Grains } from "../cutplan/piece.ts";
import { Length } from "../units/length.ts";

/** Grains of the planner in a millimetre. */
const PER_MM = 160;

/**
 * UP: sizes of pieces and repeats. A repeat that is no whole number of grains goes up too, so that a piece of exactly so many
 * repeats never needs one more.
 */
export function grainsUp(length: Length): Grains {
  return Number(length.mm.mul(PER_MM).ceil().valueOf());
}

/** DOWN: what there is of cloth, its usable width and the lengths at hand. */
export function grainsDown(length: Length): Grains {
  return Number(length.mm.mul(PER_MM).floor().valueOf());
}

/** To the nearest grain (at most 1/320 mm off): the place of a motif. */
export function grainsNearest(length: Length): Grains {
  return Number(length.mm.mul(PER_MM).add(new Fraction(1, 2)).floor().valueOf());
}

export function lengthOfGrains(grains: Grains): Length {
  return Length.mm(new Fraction(grains, PER_MM));
}
