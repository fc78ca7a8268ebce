import { diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printSize, type UnitSystem } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import type { Closure } from "./closure.ts";
import type { CushionSizes } from "./sizes.ts";

/** The back of a cushion: one piece, or two that meet in its middle. */
export interface CushionBack {
  /** What two pieces meet at: the overlap of an envelope, or a zip; null for a back of one piece. */
  readonly split: "envelope" | "zip" | null;
  /** Each piece as cut. */
  readonly cut: readonly [Length, Length];
  /** How the height of each of two comes about; null for one piece, which is cut as the face. */
  readonly because: string | null;
}

/** Two backs are (cut height + what they share) / 2 high each: an envelope's overlap and hems, or the two seams at a zip. */
export function backOf(sizes: CushionSizes, closure: Closure, context: ItemContext): CushionBack {
  const { cut } = sizes;
  // A flange is stitched down all round, so its insert goes in through the back: two pieces that meet at a zip.
  const backZip = sizes.form === "flange" && closure === "zip";
  const split = closure === "envelope" ? "envelope" : backZip ? "zip" : null;
  if (!split) return { split, cut, because: null };
  const shared = split === "envelope" ? context.length("envelope-overlap") : sizes.seam.times(2);
  const words = split === "envelope" ? "overlap and hems" : "seams at the zip";
  const p = (l: Length) => printLength(l, context.units);
  return {
    split,
    cut: [cut[0], cut[1].plus(shared).dividedBy(2)],
    because: `(${p(cut[1])} face + ${p(shared)} ${words}) ÷ 2`,
  };
}

/** The working of each of two backs; nothing for a back of one piece. */
export function splitBackWorking(back: CushionBack, units: UnitSystem, notes: Notes): void {
  if (back.because === null) return;
  notes.working.push({
    what: "Each of two backs",
    sum: back.because,
    result: printSize(back.cut, units),
    rounded: null,
  });
}

/** Says that a motif asked for in the middle of the back has nothing to stand on there, since two pieces meet in it. */
export function splitBackFault(sizes: CushionSizes, context: ItemContext, notes: Notes): void {
  const closing = sizes.form === "flange" ? "Write closure: sewn" : "Write closure: zip";
  notes.diagnostics.push(
    diagnostic(
      context.place(["back-motif"]),
      "envelope-not-centred",
      "This back is two pieces that meet in its middle, so no motif stands there.",
      {
        severity: "warning",
        actual: "centred",
        expected: "as-it-falls",
        hint: `${closing} for a back with its motif centred, or take the back-motif line out.`,
      },
    ),
  );
}
