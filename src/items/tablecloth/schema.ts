import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import { textField, wordField, yesNoField } from "../../fields/plainFields.ts";
import { flatFields } from "../common/flat/flatFields.ts";

/** A cloth for a round, square or rectangular table. */
export const tableclothSchema = z.strictObject({
  tablecloth: textField().meta({ description: "its title" }),
  ...itemBase,
  ...flatFields,
  form: wordField(["round", "oval", "rectangular"], { square: "rectangular", ellipse: "oval" })
    .optional()
    .meta({
      description:
        "rectangular where nothing is said, unless the table's card says that it is round: then round, or an oval where its two sizes differ",
    }),
  table: sizeField(3)
    .optional()
    .meta({
      description:
        "the table: width x depth x height, a round one its diameter twice, an oval one its longest and its shortest; else from the card of the table that it lies on",
      examples: [`60" x 36" x 29"`],
    }),
  drop: positiveLengthField().optional().meta({ description: "from the table's edge to the hem" }),
  to: wordField(["floor"]).optional().meta({ description: "floor: it hangs to the floor" }),
  weights: yesNoField()
    .optional()
    .meta({ description: "yes: weights in the hem, for a table in the open" }),
});

export type TableclothFields = z.output<typeof tableclothSchema>;
