import { diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { tooLongForSideways } from "../common/join/sideways.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";

interface OnCloth {
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly railroaded: boolean;
}

/** A stiffened cloth is not joined: true where the cut lies on the cloth whole, else a diagnostic. */
export function isWideEnough(
  { cutWidth, cutLength }: { readonly cutWidth: Length; readonly cutLength: Length },
  { cloth, usableWidth, railroaded }: OnCloth,
  context: ItemContext,
  notes: Notes,
): boolean {
  const p = (length: Length) => printLength(length, context.units);
  if (railroaded) {
    if (!cutLength.isMoreThan(usableWidth)) return true;
    const cut = { length: cutLength, words: "long, this blind does" };
    notes.diagnostics.push(tooLongForSideways(cut, cloth, usableWidth, context));
    return false;
  }
  if (!cutWidth.isMoreThan(usableWidth)) return true;
  if (cloth.mayTurn && !cutLength.isMoreThan(usableWidth)) return true;
  const sideways = cutLength.isMoreThan(usableWidth) ? "" : "railroad: yes, ";
  notes.diagnostics.push(
    diagnostic(
      context.place(context.window ? [] : ["width"]),
      "roller-blind-wider-than-cloth",
      `Cut ${p(cutWidth)} wide this blind does not lie on ${cloth.name}, which is ${p(usableWidth)} wide, and a stiffened cloth is not joined.`,
      {
        actual: p(cutWidth),
        expected: `${p(usableWidth)} or less`,
        hint: `Write ${sideways}two blinds side by side, or a Roman blind, whose widths are joined.`,
      },
    ),
  );
  return false;
}
