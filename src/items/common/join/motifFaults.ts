import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import type { ClothFacts, ItemContext } from "../../itemKind.ts";

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
