import type { Flaw, Grains } from "../piece.ts";
import type { LengthAtHand, Plan, PlanInput, PlanResult } from "../plan.ts";
import { planCuts } from "../planCuts.ts";

/** Cloth in hand with places that no piece may touch: several lengths alike, as a pair of old curtains is. */
export interface UsedCloth {
  readonly length: Grains;
  readonly count: number;
  /** From the left edge and the cut end of each length. */
  readonly flaws: readonly Flaw[];
  /** The pattern point at its cut end; null: not known. */
  readonly start: Grains | null;
}

/** What was found: a plan where it fits, and how much longer each length would have to be. */
export interface UsedFit {
  readonly plan: Plan | null;
  /** How far up the longest-used length is used, its reserve included; null where it does not fit. */
  readonly used: Grains | null;
  /** 0 where it fits; null where twenty metres more would not do. */
  readonly missing: Grains | null;
}

/** Plans tried for one length: each piece has few places, and many lengths are tried. */
const BUILDS = 96;
/** Pattern points tried where the start is not known. */
const STARTS = 6;
const MM: Grains = 160;
const STEP: Grains = 5 * MM;
const MOST: Grains = 20_000 * MM;

/**
 * Whether cloth with flaws, or in several lengths, holds all pieces of an input whose width is that of the cloth in hand. Where the
 * start of the pattern is not known, a repeat is kept in reserve at each cut end and every flaw is taken to reach a repeat further
 * down, so that the plan holds wherever the pattern begins. What is missing is found by trying longer lengths, to 5 mm, upwards.
 */
export function fitsUsed(input: PlanInput, used: UsedCloth): UsedFit {
  const vertical = input.pattern?.vertical ?? 0;
  const inRegister = input.pieces.some((piece) => piece.along.rule === "register");
  const unknown = vertical > 0 && inRegister && used.start === null;
  const reserve = unknown ? vertical : 0;
  const flaws = used.flaws.map((flaw) => {
    const y = Math.max(0, flaw.y - reserve);
    return { ...flaw, y, height: flaw.y + flaw.height - y };
  });
  const starts = unknown
    ? Array.from({ length: STARTS }, (_, k) => Math.round((k * vertical) / STARTS))
    : [used.start ?? 0];
  const at = (extra: Grains): Plan | null => {
    const length = used.length + extra - reserve;
    if (length <= 0) return null;
    for (const start of starts) {
      const each: LengthAtHand = { length, start, flaws };
      const lengths = Array.from({ length: used.count }, () => each);
      const options = { ...input.options, maxLength: null, lengths, builds: BUILDS };
      const found: PlanResult = planCuts({ ...input, options });
      if (found.ok) return found;
    }
    return null;
  };
  const plan = at(0);
  if (plan) return { plan, used: Math.max(...plan.lengths) + reserve, missing: 0 };
  let long = 10 * STEP;
  while (long < MOST && !at(long)) long *= 2;
  if (long >= MOST) return { plan: null, used: null, missing: null };
  let short = long === 10 * STEP ? 0 : long / 2;
  while (long - short > STEP) {
    const middle = Math.ceil((short + long) / 2 / STEP) * STEP;
    if (middle >= long) break;
    if (at(middle)) long = middle;
    else short = middle;
  }
  return { plan: null, used: null, missing: long };
}
