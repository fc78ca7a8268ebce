import Fraction from "fraction.js";
import { Length } from "../../../units/length.ts";
import type { UnitSystem } from "../../../units/printLength.ts";
import type { ItemContext, ItemCut, MaterialNeed } from "../../itemKind.ts";
import { boughtLength } from "../boughtLength.ts";
import { finestStep } from "../finestStep.ts";
import { biasLengthMm, givesStrips } from "./biasLength.ts";

/** The step that a reserve of cloth for welt is rounded up to: a whole inch or a whole centimetre. */
function step(units: UnitSystem): Length {
  return units === "inches" ? Length.inches(1) : Length.cm(1);
}

/**
 * Least multiple of `unit` whose square holds the area `a x b`, in whole steps: the trade's rule for bias, side = root of
 * (length x strip). Found by whole-number search from the binary root, so that an exact square never goes up a step.
 */
export function squareSide(a: Length, b: Length, unit: Length): Length {
  const area = a.over(unit).mul(b.over(unit));
  let steps = Math.max(0, Math.floor(Math.sqrt(area.valueOf())) - 1);
  while (new Fraction(steps).mul(steps).compare(area) < 0) steps += 1;
  return unit.times(steps);
}

export interface WeltAsk {
  /** Finished welt in all, laps included. */
  readonly length: Length;
  /** Width of the strip as cut. */
  readonly strip: Length;
  readonly cut: "bias" | "straight";
  /** Times the area, for what a bias square loses at its seams and ends: 1.1. */
  readonly biasExtra: Fraction;
  /** Turning of a join between strips on the bias, on each. */
  readonly biasTurning: Length;
  /** Turning of a join between straight strips, on each. */
  readonly joinTurning: Length;
  readonly usableWidth: Length | null;
  readonly units: UnitSystem;
}

/** Cloth to set aside for welt: one square on the bias (or rectangles of its area), or a bundle of straight strips. */
export interface WeltReserve {
  readonly width: Length;
  readonly height: Length;
  readonly instead: readonly { readonly width: Length; readonly height: Length }[];
  /** Number of straight strips; 0 on the bias. */
  readonly strips: number;
  /** On the bias: true where the share for seams and ends was not enough for strips so short, and more is taken. */
  readonly isMore: boolean;
  readonly across: ItemCut["across"];
}

/** Shortest side of a bias rectangle that can still be cut into strips of a useful length (common practice, no source). */
function shortestSide(units: UnitSystem): Length {
  return units === "inches" ? Length.inches(12) : Length.cm(30);
}

/** Sizes the reserve; lengths up to a whole inch or centimetre, never less than the welt needs. */
export function weltReserve(ask: WeltAsk): WeltReserve {
  const unit = step(ask.units);
  const width = ask.usableWidth;
  if (ask.cut === "straight") {
    // Joins shorten: n strips lose 2 turnings at each of n - 1 joins.
    const lost = ask.joinTurning.times(2);
    const usable = width ?? ask.length;
    let strips = 1;
    if (usable.isLessThan(ask.length) && usable.isMoreThan(lost)) {
      strips = Number(ask.length.minus(lost).over(usable.minus(lost)).ceil().valueOf());
    }
    const each = ask.length.plus(lost.times(strips - 1)).dividedBy(strips);
    const whole = each.upTo(unit);
    return {
      width: width && whole.isMoreThan(width) ? each : whole,
      height: ask.strip.times(strips),
      instead: [],
      strips,
      isMore: false,
      across: { how: "free" },
    };
  }
  const area = ask.length.times(ask.biasExtra);
  const needMm = ask.length.toMm();
  const isEnough = (w: Length, h: Length) =>
    biasLengthMm(w, h, ask.strip, ask.biasTurning) >= needMm;
  const byArea = squareSide(area, ask.strip, unit);
  let side = byArea;
  while (!isEnough(side, side)) side = side.plus(unit);
  let height = side;
  const isMore = side.isMoreThan(byArea);
  /** The least height of the area, and more until its strips, joined, are long enough. */
  const heightFor = (w: Length): Length => {
    let h = ask.strip.times(area.over(w)).upTo(unit);
    if (!givesStrips(w, ask.strip, ask.biasTurning)) return h;
    while (!isEnough(w, h)) h = h.plus(unit);
    return h;
  };
  if (width && side.isMoreThan(width)) {
    // A square wider than the cloth cannot be cut: the same area as the whole width by more length.
    side = width.downTo(unit);
    height = heightFor(side);
  }
  const instead: { width: Length; height: Length }[] = [];
  const seen = new Set<string>([side.mm.toFraction()]);
  for (const ratio of [
    new Fraction(3, 4),
    new Fraction(1, 2),
    new Fraction(4, 3),
    new Fraction(2),
  ]) {
    const w = side.times(ratio).upTo(unit);
    if (w.isLessThan(shortestSide(ask.units)) || (width && w.isMoreThan(width))) continue;
    if (seen.has(w.mm.toFraction())) continue;
    const h = heightFor(w);
    if (h.isLessThan(shortestSide(ask.units))) continue;
    seen.add(w.mm.toFraction());
    instead.push({ width: w, height: h });
  }
  return { width: side, height, instead, strips: 0, isMore, across: { how: "free" } };
}

/** Said behind the sum of a bias square that had to be larger than its area. */
export function enlargedWords({ isMore }: WeltReserve): string {
  return isMore ? "; enlarged, since the joins of its short strips take more than that" : "";
}

/** Length of strip that a square (or rectangle) yields by area: area over strip width, seams and ends ignored. */
export function biasYield(width: Length, height: Length, strip: Length): Length {
  return width.times(height.over(strip));
}

/**
 * Width of strip round a cord: two seams and the cord's girth, up to an eighth of an inch or a millimetre. 22/7 stands for pi
 * since it is a little more.
 */
export function stripForCord(cord: Length, seam: Length, units: UnitSystem): Length {
  return seam
    .times(2)
    .plus(cord.times(new Fraction(22, 7)))
    .upTo(finestStep(units));
}

/** Cord to fill a welt, up to a quarter yard or a tenth of a metre. */
export function cordNeed(welt: Length, units: UnitSystem): MaterialNeed {
  return boughtLength("welt cord", welt, units);
}

/** Cloth set aside for a welt as one piece to cut; `because` says how long it is, and how wide its strip. */
export function weltPiece(
  { cloth, cut, reserve }: { cloth: string; cut: "bias" | "straight"; reserve: WeltReserve },
  context: ItemContext,
  because: string,
): ItemCut {
  return {
    piece: cut === "bias" ? "welt, on the bias" : `welt, ${reserve.strips} straight strips`,
    surface: "welt",
    cloth,
    width: reserve.width,
    height: reserve.height,
    count: 1,
    mayTurn: !(context.cloth(cloth)?.nap ?? false),
    across: { how: "free" },
    along: { how: "free" },
    instead: reserve.instead,
    because,
  };
}
