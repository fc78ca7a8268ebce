import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ClothFacts } from "../items/itemKind.ts";
import type { Records } from "../records/records.ts";

/**
 * A warning at the card of each cloth of `used` that is patterned and whose repeat nobody knows: its lengths are reckoned as a
 * plain's, and too little may be ordered.
 */
export function unknownRepeats(
  used: Iterable<string>,
  cloth: (id: string) => ClothFacts | null,
  records: Records,
): Diagnostic[] {
  return [...new Set(used)].flatMap((id): Diagnostic[] => {
    const facts = cloth(id);
    const card = records.cloths.get(id);
    if (!card || !facts?.repeatUnknown) return [];
    return [
      diagnostic(
        card.place(["cloth"]),
        "repeat-unknown",
        `${facts.name} is patterned, and nothing is known of its repeat.`,
        {
          severity: "warning",
          expected: "repeat: { up: …, across: …, match: … }",
          hint: "Write the repeat on its card as the supplier states it or as you measured it; or matched: no, where nothing of its pattern has to meet at a join. Until then its lengths are a plain cloth's: too little may be ordered, and nothing of it is for cutting.",
        },
      ),
    ];
  });
}
