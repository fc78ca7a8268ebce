import { z } from "zod";
import { refuse } from "../../../fields/fault.ts";
import { lengthField } from "../../../fields/lengthField.ts";
import { refField, wordField } from "../../../fields/plainFields.ts";

/** What each part of a welt is called in the words of its kind. */
export interface WeltWords {
  readonly welt: string;
  readonly cord: string;
  readonly cut: string;
}

/** `welt`, `cord` and `cut`: how an edge is piped. Spread into the `edge` of a kind of item. */
export function weltParts(words: WeltWords) {
  return {
    welt: refField("a cloth").meta({ description: words.welt }),
    cord: lengthField().optional().meta({ description: words.cord }),
    cut: wordField(["bias", "straight"]).optional().meta({ description: words.cut }),
  } as const;
}

/** The one word for an edge without a welt; whoever writes `welt` or `piped` in its place is shown how a welt is said. */
function plainEdge<const W extends string>(plain: W) {
  return z
    .string()
    .transform((text, context): W => {
      const read = wordField([plain]).safeParse(text);
      if (read.success) return read.data;
      return refuse(context, text, {
        code: "word-unknown",
        message: `“${text}” is not one of the words that can stand here.`,
        expected: `${plain}, or { welt: cloth }`,
        hint: `Write { welt: … } with the name of the cloth that covers the cord, or ${plain}.`,
      });
    })
    .meta({ words: [plain] });
}

/** The `edge` of what may also have none: one of some words, or `{ welt: cloth }`. */
export function edgeField<const W extends string>(plain: W, words: WeltWords) {
  return z
    .union([plainEdge(plain), z.strictObject(weltParts(words))])
    .optional()
    .meta({ description: `${plain}, or { welt: cloth }` });
}
