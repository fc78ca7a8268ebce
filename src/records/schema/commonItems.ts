import { z } from "zod";
import { positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import { countField, textField, wordField } from "../../fields/plainFields.ts";

/** What a studio's list of common items may hold. */
export const COMMON_KINDS = [
  "cushion",
  "box-cushion",
  "bolster",
  "seat-pad",
  "round-seat-pad",
  "lampshade",
  "tieback",
] as const;

/** The list of items that a studio often makes and that stand in no room yet: what a remnant is asked for. */
export function commonItemsField() {
  return z.array(
    z
      .strictObject({
        item: textField().meta({ description: "its title", examples: ["Square cushion"] }),
        kind: wordField(COMMON_KINDS, {
          pillow: "cushion",
          "box-pillow": "box-cushion",
          "lamp-shade": "lampshade",
          "tie-back": "tieback",
        }).meta({ description: "what it is made as" }),
        size: sizeField(2).meta({
          description:
            "finished width x height; of a box cushion or pad width x depth, of a bolster or tie-back length x diameter or depth, of a drum lampshade diameter x height, of a round pad its diameter twice",
          examples: [`18" x 18"`],
        }),
        thickness: positiveLengthField()
          .optional()
          .meta({ description: "of a box cushion or a pad", examples: [`2"`] }),
        count: countField(1, 20)
          .optional()
          .meta({ description: "how many make one: 2 for a pair; one where nothing is said" }),
      })
      .superRefine(({ kind, thickness }, context) => {
        if (kind !== "box-cushion" || thickness) return;
        const message = "A box cushion needs its thickness.";
        const hint = 'Add it, for example thickness: 3".';
        context.addIssue({
          code: "custom",
          message,
          params: { code: "no-thickness", message, hint },
        });
      }),
  );
}
