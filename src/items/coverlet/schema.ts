import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import { textField, wordField } from "../../fields/plainFields.ts";
import { flatFields } from "../common/flat/flatFields.ts";

/** A cover for a bed: a coverlet that ends above the floor, a bedspread that reaches it. */
export const coverletSchema = z.strictObject({
  coverlet: textField().meta({ description: "its title" }),
  ...itemBase,
  ...flatFields,
  bed: sizeField(3)
    .optional()
    .meta({
      description:
        "the made-up bed: width x length x height of its top; else from the card of the bed that it lies on",
      examples: [`60" x 80" x 25"`],
    }),
  drop: positiveLengthField()
    .optional()
    .meta({ description: "from the edge of the bed's top to the hem, at the sides" }),
  "foot-drop": positiveLengthField()
    .optional()
    .meta({ description: "the drop at the foot; the same where nothing is said" }),
  to: wordField(["floor"]).optional().meta({ description: "floor: the drop of a bedspread" }),
  pillows: wordField(["tucked", "none"]).optional().meta({
    description:
      "tucked: made longer at the head, to go under and over the pillows; so where nothing is said",
  }),
  corners: wordField(["square", "rounded", "split"]).optional().meta({
    description: "at the foot; square where nothing is said, split for a bed with posts",
  }),
});

export type CoverletFields = z.output<typeof coverletSchema>;
