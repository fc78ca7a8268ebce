import Fraction from "fraction.js";
import { Length } from "../../units/length.ts";

export interface StripAsk {
  /** Cut height: the wall's height and the trim. */
  readonly cut: Length;
  readonly rollLength: Length;
  readonly repeat: { readonly up: Length; readonly match: "straight" | "half-drop" } | null;
  /** Half-drop only: in turn from one roll, or odd and even strips from two stocks of rolls. */
  readonly hanging: "in-turn" | "two-stocks";
}

export interface StripsPerRoll {
  /** From the start of one strip to the start of the next in a roll. */
  readonly spacing: Length;
  /** Every roll begins at the wanted motif. */
  readonly best: number;
  /** Up to one repeat is lost before it: the buying rule, since a roll may begin anywhere in the pattern. */
  readonly worst: number;
}

/** Spacing along a roll: the cut up to whole repeats; a half-drop cut in turn, up to an odd number of half repeats. */
export function stripSpacing(ask: StripAsk): Length {
  if (ask.repeat === null) return ask.cut;
  const { up, match } = ask.repeat;
  if (match === "straight" || ask.hanging === "two-stocks") return ask.cut.upTo(up);
  const halves = ask.cut.over(up.dividedBy(2)).ceil();
  const odd = halves.mod(2).compare(0) === 0 ? halves.add(1) : halves;
  return up.dividedBy(2).times(odd);
}

/** Strips that a roll gives: 1 + down((roll - lost - cut) / spacing); nothing where not even one fits. */
export function stripsPerRoll(ask: StripAsk): StripsPerRoll {
  const spacing = stripSpacing(ask);
  const from = (lost: Length): number => {
    const room = ask.rollLength.minus(lost).minus(ask.cut);
    return room.isNegative() ? 0 : 1 + Number(room.over(spacing).floor().valueOf());
  };
  return { spacing, best: from(Length.zero), worst: from(ask.repeat?.up ?? Length.zero) };
}

/**
 * Rolls for so many strips. Two stocks of a half-drop are counted apart, each up to whole rolls; where every roll begins at the
 * motif the even stock still loses half a repeat. Null where a roll may give no strip.
 */
export function rollsFor(strips: number, ask: StripAsk, start: "best" | "worst"): number | null {
  const { best, worst } = stripsPerRoll(ask);
  const each = start === "best" ? best : worst;
  const twoStocks = ask.repeat?.match === "half-drop" && ask.hanging === "two-stocks";
  if (strips === 0) return 0;
  if (!twoStocks || !ask.repeat) return each === 0 ? null : Math.ceil(strips / each);
  const odd = Math.ceil(strips / 2);
  const even = strips - odd;
  const shifted =
    start === "best"
      ? stripsPerRoll({
          ...ask,
          repeat: { ...ask.repeat, match: "straight" },
          rollLength: ask.rollLength.minus(ask.repeat.up.dividedBy(2)),
        }).best
      : worst;
  if (each === 0 || (even > 0 && shifted === 0)) return null;
  return Math.ceil(odd / each) + (even === 0 ? 0 : Math.ceil(even / shifted));
}

/** Whole strips over a width, up. */
export function stripsOver(width: Length, rollWidth: Length): number {
  return Number(width.over(rollWidth).ceil().valueOf());
}

export interface OpeningPart {
  readonly width: Length;
  readonly above: Length;
  readonly below: Length;
}

/**
 * Strips saved at a large opening: its whole columns need only the pieces above and below, cut in register from other strips.
 * Never too many: of the columns one may lie askew over each side, each piece takes whole repeats (half a one more on a
 * half-drop, a whole one more where there are two to a column), and a strip loses one repeat before its first piece.
 */
export function stripsSaved(
  opening: OpeningPart,
  rollWidth: Length,
  ask: StripAsk,
  trim: Length,
): number {
  const whole = opening.width.over(rollWidth).floor();
  const columns = Number(whole.valueOf()) - 1;
  if (columns < 1) return 0;
  const up = ask.repeat?.up ?? null;
  const piece = (height: Length): Length => {
    if (height.isZero()) return Length.zero;
    const cut = height.plus(trim);
    if (up === null) return cut;
    const shift = ask.repeat?.match === "half-drop" ? up.dividedBy(2) : Length.zero;
    return cut.upTo(up).plus(shift);
  };
  const both = !opening.above.isZero() && !opening.below.isZero() && up !== null;
  const pair = piece(opening.above)
    .plus(piece(opening.below))
    .plus(both ? (up as Length) : Length.zero);
  if (pair.isZero()) return columns;
  const length = stripSpacing(ask).minus(up ?? Length.zero);
  const perStrip = Number(length.over(pair).floor().valueOf());
  if (perStrip < 1) return 0;
  return Math.max(0, columns - Math.ceil(new Fraction(columns, perStrip).valueOf()));
}
