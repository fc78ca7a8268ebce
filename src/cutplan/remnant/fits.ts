import { mod } from "../laying/modes.ts";
import type { CutPiece, Flaw, Grains } from "../piece.ts";
import type { Plan, PlanFailure, PlanInput, PlanProblem } from "../plan.ts";
import { planCuts } from "../planCuts.ts";
import { fitsUsed } from "./fitsUsed.ts";

/** A piece of cloth in hand. */
export interface Remnant {
  readonly length: Grains;
  readonly width: Grains;
  /** The pattern point at its cut end, from the pattern's origin; null: not known, and a repeat is kept in reserve. */
  readonly start: Grains | null;
  /** How many such lengths there are; one where nothing is said. */
  readonly count?: number;
  /** Holes, stains and seams, from the left edge and the cut end of each length. */
  readonly flaws?: readonly Flaw[];
}

export interface Fit {
  readonly fits: boolean;
  /** The length that the pieces need on a cloth of this width, what is lost before the plan's start included; of several, each. */
  readonly needed: Grains | null;
  /** How much the remnant is too short; 0 if it fits, null if no length would do. */
  readonly missing: Grains | null;
  /** How it is cut, from the plan's own start. */
  readonly plan: Plan | null;
  /** Which selvedge a narrower remnant must have kept. */
  readonly keeps: "both" | "left" | "right";
  /** Why no length of this width would do. */
  readonly problems: readonly PlanProblem[];
}

/**
 * Whether a remnant holds all pieces. The answer comes from the length of one plan and not from a search for each remnant, so
 * that a longer remnant never holds less. `plan` is the plan already made for `input`, if there is one; a remnant narrower than
 * the cloth gets a plan of its own, of which only one selvedge is taken to be left: the better of the two. Of several
 * lengths, or cloth with flaws, each is planned as it lies (see `fitsUsed`), and what is missing is missing from each length.
 */
export function fits(input: PlanInput, plan: Plan | null, remnant: Remnant): Fit {
  const options = { ...input.options, maxLength: null, lengths: undefined };
  const whole = { ...input, options };
  if (remnant.width >= input.usableWidth) {
    const known = plan && plan.lengths.length <= 1 ? plan : planCuts(whole);
    if (!known.ok) return none(known, "both");
    return isWhole(remnant)
      ? fitOf(known, whole, remnant, "both")
      : usedFit(whole, remnant, "both");
  }
  const cut = input.usableWidth - remnant.width;
  const kept = (["left", "right"] as const).map((keeps) => {
    const pieces =
      keeps === "left" ? input.pieces : input.pieces.map((piece) => movedLeft(piece, cut));
    const own = { ...whole, usableWidth: remnant.width, pieces };
    return { keeps, own, result: planCuts(own) };
  });
  const found = kept.flatMap(({ keeps, own, result }) => {
    if (!result.ok) return [];
    return [isWhole(remnant) ? fitOf(result, whole, remnant, keeps) : usedFit(own, remnant, keeps)];
  });
  if (found.length === 0) return none(kept[0]?.result as PlanFailure, "left");
  const lack = (fit: Fit) => fit.needed ?? Number.POSITIVE_INFINITY;
  return found.reduce((a, b) => (lack(b) < lack(a) ? b : a));
}

function isWhole({ count = 1, flaws = [] }: Remnant): boolean {
  return count === 1 && flaws.length === 0;
}

function usedFit(input: PlanInput, remnant: Remnant, keeps: Fit["keeps"]): Fit {
  const { length, start, count = 1, flaws = [] } = remnant;
  const { plan, used, missing } = fitsUsed(input, { length, start, count, flaws });
  return {
    fits: missing === 0,
    needed: used ?? (missing === null ? null : length + missing),
    missing,
    plan,
    keeps,
    problems: [],
  };
}

function fitOf(plan: Plan, input: PlanInput, remnant: Remnant, keeps: Fit["keeps"]): Fit {
  const vertical = input.pattern?.vertical ?? 0;
  const inRegister = plan.places.some((place) => (place.register?.y ?? null) !== null);
  let lost = 0;
  if (inRegister && vertical > 0) {
    lost = remnant.start === null ? vertical : mod(plan.start - remnant.start, vertical);
  }
  const needed = plan.length + lost;
  const missing = Math.max(0, needed - remnant.length);
  return { fits: missing === 0, needed, missing, plan, keeps, problems: [] };
}

function none(failure: PlanFailure, keeps: Fit["keeps"]): Fit {
  return {
    fits: false,
    needed: null,
    missing: null,
    plan: null,
    keeps,
    problems: failure.problems,
  };
}

/** The same rule across, counted from a left edge that lies `cut` further in. */
function movedLeft(piece: CutPiece, cut: Grains): CutPiece {
  const { across } = piece;
  if (across.rule === "free") return piece;
  if (across.rule === "register") {
    return { ...piece, across: { rule: "register", residue: across.residue - cut } };
  }
  return { ...piece, across: { rule: "at", positions: across.positions.map((x) => x - cut) } };
}
