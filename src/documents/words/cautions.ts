import { CAUTION_CODES, cautionFor, DEFERENCE } from "../../items/common/cautions.ts";
import { spelled } from "../../units/spelling.ts";
import type { ItemData } from "../projectData.ts";

/** A caution as it is printed: a run-in bold word and the text. */
export interface PrintedCaution {
  readonly word: string;
  readonly text: string;
}

/** The cautions that some items call for, each once, in the house's order; the deference to codes and practice ends the last. */
export function cautionsOf(
  items: readonly ItemData[],
  language: string,
  reader: "maker" | "client",
): PrintedCaution[] {
  const out = CAUTION_CODES.flatMap((code): PrintedCaution[] => {
    const concerned = items.filter((i) => i.made.cautions.includes(code));
    const first = concerned[0];
    const caution = first ? cautionFor(code, first.kind.kind, reader) : null;
    if (!caution) return [];
    const text = spelled(caution.text.replace(DEFERENCE, "").trim(), language);
    // A text that begins with its own word is run on from it.
    const word = caution.word.replace(/\.$/, ":");
    return [
      text.startsWith(`${word} `)
        ? { word, text: text.slice(word.length + 1) }
        : { word: caution.word, text },
    ];
  });
  const last = out.at(-1);
  return last
    ? [...out.slice(0, -1), { ...last, text: spelled(`${last.text} ${DEFERENCE}`, language) }]
    : out;
}
