import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import type { Length } from "../../../units/length.ts";
import { printLength, type UnitSystem } from "../../../units/printLength.ts";
import type { ClothFacts, ItemContext } from "../../itemKind.ts";
import type { Notes } from "../notes.ts";
import { centredPlace } from "./centredMotif.ts";

/** Says that a motif is asked for in the middle of a cloth whose card knows of none. */
export function noMotifToCentre(cloth: ClothFacts, key: string, context: ItemContext): Diagnostic {
  return diagnostic(
    context.place([key]),
    "no-motif-to-centre",
    `${cloth.name} has no repeat on its card, so nothing can be centred.`,
    {
      severity: "warning",
      actual: "centred",
      expected: "as-it-falls",
      hint: `Write the repeat on the cloth's card, or ${key}: as-it-falls.`,
    },
  );
}

/** Asked where no motif has room in the middle of a piece so wide; `where` is what is asked of: `on the pelmet`. */
export function motifWhereQuestion(
  cloth: ClothFacts,
  width: Length,
  where: string,
  units: UnitSystem,
): string {
  return `${noMotifInMiddle(cloth, width, units)}: where ${where} is the motif wanted?`;
}

/** Whether a motif stands in the middle of a piece so wide; where none has room, it is asked where `where` it is wanted. */
export function centredAcross(
  cloth: ClothFacts,
  cut: readonly [Length, Length],
  where: string,
  { units }: Pick<ItemContext, "units">,
  notes: Pick<Notes, "questions">,
): boolean {
  if (cloth.repeat?.across == null) return false;
  const { fits } = centredPlace(cloth, ...cut);
  if (!fits) notes.questions.push(motifWhereQuestion(cloth, cut[0], where, units));
  return fits;
}

/** The beginning of a sentence on a piece that is too wide for a motif in its middle. */
export function noMotifInMiddle(cloth: ClothFacts, width: Length, units: UnitSystem): string {
  return `No motif of ${cloth.name} can stand in the middle of a piece ${printLength(width, units)} wide`;
}
