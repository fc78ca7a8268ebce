import type { Length } from "../../../units/length.ts";
import type { ClothFacts } from "../../itemKind.ts";
import { COLUMN_ROUNDING, columnsAcross } from "./matchedTurning.ts";

/** How two neighbouring widths of a cloth meet. */
export interface SelvedgeMatch {
  /** True where each neighbour hangs half a repeat lower. */
  readonly shifts: boolean;
  /** What must be asked before cutting, or null. */
  readonly question: string | null;
}

/**
 * On half-drop cloth the next column of motifs hangs half a repeat lower, so two widths joined at the selvedge shift only where an
 * odd number of columns lies in a width; with an even number the half-drop falls inside the width and nothing is added.
 * Where the number of columns is not known the shift is taken, since it needs more cloth, and asked about.
 */
export function selvedgeMatch(cloth: ClothFacts): SelvedgeMatch {
  const { repeat, usableWidth } = cloth;
  if (!repeat || repeat.match === "free") return { shifts: false, question: null };
  const halfDrop = repeat.match === "half-drop";
  if (!repeat.across || !usableWidth)
    return halfDrop
      ? {
          shifts: true,
          question: `Does the half-drop of ${cloth.name} fall at the selvedge or inside the width? At the selvedge is assumed.`,
        }
      : { shifts: false, question: null };
  const found = columnsAcross(cloth);
  const columns = found?.whole ?? 0;
  if (columns === 0)
    return {
      shifts: halfDrop,
      question: `A width of ${cloth.name} is narrower than its repeat across: how do two widths meet at a join?`,
    };
  const shifts = halfDrop && columns % 2 !== 0;
  if (found?.all.sub(columns).abs().compare(COLUMN_ROUNDING) === 1) {
    const repeats = columns === 1 ? "one repeat ends" : `${columns} repeats end`;
    return {
      shifts,
      question: `The width of ${cloth.name} is not a whole number of its repeats across: two widths are joined where ${repeats}, and what lies beyond goes into the join. Is its repeat across right?`,
    };
  }
  return {
    shifts,
    question:
      halfDrop && !shifts
        ? `The half-drop of ${cloth.name} falls inside the width, so neighbouring widths are cut level: is that so on the roll?`
        : null,
  };
}

/** A plain cut, and what the handbook makes of it. */
export interface HandbookCut {
  /** Up to whole repeats. */
  readonly cutLength: Length;
  readonly repeats: number | null;
  readonly total: Length;
}

/**
 * The handbook's figure for `cuts` equal cuts: each up to whole repeats (too little would spoil), and half a repeat for every
 * second cut where neighbours shift (the simple half-drop rule).
 */
export function handbookCut(
  plain: Length,
  cuts: number,
  repeatUp: Length | null,
  shifts: boolean,
): HandbookCut {
  if (repeatUp === null) return { cutLength: plain, repeats: null, total: plain.times(cuts) };
  const cutLength = plain.upTo(repeatUp);
  const drops = shifts ? repeatUp.dividedBy(2).times(Math.floor(cuts / 2)) : repeatUp.times(0);
  return {
    cutLength,
    repeats: cutLength.over(repeatUp).valueOf(),
    total: cutLength.times(cuts).plus(drops),
  };
}
