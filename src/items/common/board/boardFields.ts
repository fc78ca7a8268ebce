import type { z } from "zod";
import { lengthField, positiveLengthField } from "../../../fields/lengthField.ts";
import { refField, wordField } from "../../../fields/plainFields.ts";

/** What is written of a board over a window and of what hangs from it: pelmet and valance; the two say it in their own words. */
export function boardFields(words: { readonly board: string; readonly depth: string }) {
  return {
    mount: wordField(["inside", "outside"]).optional().meta({
      description: "between the walls of the recess, or outside it, where nothing is said",
    }),
    board: positiveLengthField()
      .optional()
      .meta({
        description: `${words.board}, end to end; else the opening and what stands beyond it at each side`,
      }),
    return: lengthField()
      .optional()
      .meta({ description: "from its front back to the wall, at each end" }),
    "top-height": positiveLengthField()
      .optional()
      .meta({ description: "from the floor to its upper edge" }),
    depth: positiveLengthField().optional().meta({ description: words.depth }),
    "curtain-drop": positiveLengthField()
      .optional()
      .meta({ description: "finished length of the curtains beneath it" }),
  } as const;
}

/** What a person may say of a board and of what hangs from it, as it is read. */
export type BoardFields = z.output<z.ZodObject<ReturnType<typeof boardFields>>>;

/** Braid or fringe along the lower edge of what hangs at a window. */
export function lowerTrimField() {
  return refField("a trim")
    .optional()
    .meta({ description: "braid or fringe along its lower edge" });
}
