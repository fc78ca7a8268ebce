import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { AcrossMatch, ClothFacts, ItemContext } from "../../itemKind.ts";
import { centredPlace, hasMotif } from "./centredMotif.ts";

/** Says that a cut does not fit across a cloth that is run sideways; `cut` begins the sentence: `Cut 96″ long, these curtains do`. */
export function tooLongForSideways(
  cut: { readonly length: Length; readonly words: string },
  cloth: ClothFacts,
  usableWidth: Length,
  context: ItemContext,
): Diagnostic {
  const width = printLength(usableWidth, context.units);
  return diagnostic(
    context.place(["railroad"]),
    "railroad-too-long",
    `Cut ${printLength(cut.length, context.units)} ${cut.words} not fit across ${cloth.name}, which is ${width} wide.`,
    {
      actual: "yes",
      expected: `a cut of ${width} or less`,
      hint: "Take the railroad line out, or choose a wider cloth.",
    },
  );
}

/** Asked of a cloth with a pattern or a pile that is run sideways; null for one that looks the same so. */
export function sidewaysQuestion(cloth: ClothFacts | null): string | null {
  if (!cloth || (cloth.repeat === null && !cloth.nap)) return null;
  return `May ${cloth.name} be run sideways, with its pattern and pile turned a quarter?`;
}

/** The same of a piece that would else have a motif in its middle: nothing is centred on cloth that is run sideways. */
export function sidewaysAsItFalls(cloth: ClothFacts | null): string | null {
  const question = sidewaysQuestion(cloth);
  if (question === null || !hasMotif(cloth)) return question;
  return `${question} Its motifs then lie on their side, and each piece is cut as the pattern falls.`;
}

/**
 * Where pieces lie across a patterned cloth that is run sideways, so that all of one width are alike and level with each other: a row
 * of motifs along their middle, or, where that has no room or its place is not known, all against the left selvedge.
 */
export function sidewaysAcross(cloth: ClothFacts, width: Length): AcrossMatch {
  if (!hasMotif(cloth)) return { how: "free" };
  const { across, fits } = centredPlace(cloth, width, width);
  return across.how === "motif-at" && fits ? across : { how: "selvedge", side: "left" };
}

/** What a maker reads of pieces that lie so. */
export function sidewaysWords(cloth: ClothFacts, width: Length): string {
  const { how } = sidewaysAcross(cloth, width);
  return how === "motif-at"
    ? "Run sideways: a row of motifs along its middle."
    : how === "selvedge"
      ? "Run sideways: the selvedge is the top."
      : "Run sideways: either selvedge is the top.";
}
