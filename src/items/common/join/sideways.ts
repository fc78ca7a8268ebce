import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { ClothFacts, ItemContext } from "../../itemKind.ts";

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
export function sidewaysQuestion(cloth: ClothFacts): string | null {
  if (cloth.repeat === null && !cloth.nap) return null;
  return `May ${cloth.name} be run sideways, with its pattern and pile turned a quarter?`;
}
