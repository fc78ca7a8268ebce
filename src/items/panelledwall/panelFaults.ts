import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { motifPlaceWords } from "../common/motifPlaceWords.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";

/** A paper where cloth is stretched. */
export function paperInPanels(
  written: string,
  facts: ClothFacts,
  context: ItemContext,
): Diagnostic {
  return diagnostic(
    context.place(["cloth"]),
    "paper-in-panels",
    `${facts.name} is a wallcovering; what is stretched in panels is cloth.`,
    {
      actual: written,
      expected: "a cloth",
      hint: "Take cloth out here, and write an item wallpaper on this wall for the paper within the panels.",
    },
  );
}

/** A panel that its cloth cannot cover, even joined. */
export function panelWiderThanCloth(
  width: Length,
  usable: Length,
  facts: ClothFacts,
  context: ItemContext,
): Diagnostic {
  const p = (l: Length) => printLength(l, context.units);
  return diagnostic(
    context.place(["panels"]),
    "piece-wider-than-cloth",
    `The cloth of a panel is ${p(width)} wide as cut; ${facts.name} is ${p(usable)}.`,
    {
      actual: p(width),
      hint: "Write more panels, join: both-sides, or choose a wider cloth.",
    },
  );
}

/** A panel too wide for a motif in its middle. */
export function panelMotifDoesNotFit(
  width: Length,
  widest: Length,
  facts: ClothFacts,
  context: ItemContext,
): Diagnostic {
  const p = (l: Length) => printLength(l, context.units);
  return diagnostic(
    context.place(["panels"]),
    "motif-does-not-fit",
    `The cloth of a panel is ${p(width)} wide as cut; on ${facts.name} the widest piece with a motif in its middle is ${p(widest)}.`,
    {
      actual: p(width),
      expected: `${p(widest)} or less`,
      hint: `Write more panels, motif: as-it-falls, or choose a wider cloth.${motifPlaceWords(facts, context.units)}`,
    },
  );
}
