import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ClothFacts } from "../items/itemKind.ts";
import type { ClothRecord, Records } from "../records/records.ts";

/**
 * A warning at the card of each cloth of `used` that is patterned and whose repeat nobody knows: its lengths are reckoned as a
 * plain's, and too little may be ordered. A stripe loses nothing of its length; only its bands cannot be set out.
 */
export function unknownRepeats(
  used: Iterable<string>,
  cloth: (id: string) => ClothFacts | null,
  records: Records,
): Diagnostic[] {
  return [...new Set(used)].flatMap((id): Diagnostic[] => {
    const facts = cloth(id);
    const card = records.cloths.get(id);
    if (card && facts?.bandsUnknown) return [unknownBands(card, facts.name)];
    if (card && facts && isUnsaid(card, facts)) return [unsaid(card, facts.name)];
    if (!card || !facts?.repeatUnknown) return [];
    return [
      diagnostic(
        card.place(["cloth"]),
        "repeat-unknown",
        card.fields.repeat
          ? `${facts.name} is patterned, and its repeat along the length is not known.`
          : `${facts.name} is patterned, and nothing is known of its repeat.`,
        {
          severity: "warning",
          expected: "repeat: { up: …, across: …, match: … }",
          hint: "Write the repeat on its card as the supplier states it or as you measured it; or matched: no, where nothing of its pattern has to meet at a join. Until then its lengths are a plain cloth's: too little may be ordered, and nothing of it is for cutting.",
        },
      ),
    ];
  });
}

/**
 * True of a cloth or a paper of which nobody has said whether it has a pattern, nor shown it: no kind, no repeat, no photograph. Linings
 * and hides are plain where nothing is said.
 */
function isUnsaid({ fields }: ClothRecord, { type }: ClothFacts): boolean {
  const { kind, repeat, photo, matched } = fields;
  const isSeen = type === "cloth" || type === "wallcovering";
  return isSeen && !kind && !repeat && !photo && matched === undefined;
}

function unsaid(card: ClothRecord, name: string): Diagnostic {
  return diagnostic(
    card.place(["cloth"]),
    "pattern-unsaid",
    `Nothing says whether ${name} is plain or patterned: it is reckoned as a plain.`,
    {
      severity: "warning",
      expected: "kind: plain, or repeat: { up: …, across: …, match: … }",
      hint: "Write kind: plain on its card, or the repeat as the supplier states it; of a patterned one too little would be ordered.",
    },
  );
}

function unknownBands(card: ClothRecord, name: string): Diagnostic {
  return diagnostic(
    card.place(["cloth"]),
    "stripe-repeat-unknown",
    `${name} is striped, and its repeat across is not known.`,
    {
      severity: "warning",
      expected: "repeat: { across: … }",
      hint: "Write repeat: { across: … } on its card, as the supplier states it or as you measured it; or matched: no, where its bands need not meet. Until then no band is set in the middle of anything, and they meet at joins only by chance.",
    },
  );
}
