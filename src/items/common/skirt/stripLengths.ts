import type Fraction from "fraction.js";
import { Length } from "../../../units/length.ts";
import type { SkirtAsk, SkirtRun } from "./skirtRun.ts";

/** Flat cloth of one run, joins not counted: its length times the fullness, its corner pleats and its ends. */
export function flatLength(
  ask: SkirtAsk,
  fullness: Fraction,
  run: SkirtRun,
): { readonly flat: Length; readonly pleats: Length } {
  const pleats = ask.style === "tailored" ? ask.cornerPleat.times(run.corners) : Length.zero;
  return { pleats, flat: run.length.times(fullness).plus(pleats).plus(ask.ends) };
}

/**
 * Lengths of the strips of a run on cloth run sideways, up to `step`. Equal ones, as many as lie side by side, where gathers or pleats
 * hide their joins. Tailored, joins would be seen: one strip for a run without a corner, else one for each side, joined in the middle of
 * the corner pleats, each with half of them and a turning (common practice, no source).
 */
export function stripLengths(
  ask: SkirtAsk,
  across: number,
  run: SkirtRun,
  flat: Length,
  step: Length,
): Length[] {
  const { join } = ask;
  const { corners, sides } = run;
  if (ask.style === "tailored" && corners === 0) return [flat.upTo(step)];
  if (ask.style === "tailored" && sides.length === corners + 1) {
    const joined = ask.cornerPleat.dividedBy(2).plus(join);
    const ended = ask.ends.dividedBy(2);
    return sides.map((side, at) =>
      side
        .plus(at === 0 ? ended : joined)
        .plus(at === corners ? ended : joined)
        .upTo(step),
    );
  }
  const n = Math.max(1, across);
  const each = flat.plus(join.times(2 * (n - 1))).dividedBy(n);
  // Up, so that strips add up to no less than is needed.
  return Array.from({ length: n }, () => each.upTo(step));
}

/** How long strips are when so many lie side by side, the longest first: each row is as long as its longest. */
export function sideBySide(lengths: readonly Length[], across: number): Length {
  const sorted = [...lengths].sort((a, b) => b.compare(a));
  return Length.sum(sorted.filter((_, at) => at % Math.max(1, across) === 0));
}
