import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import { listField, refField, textField, wordField, yesNoField } from "../../fields/plainFields.ts";
import { SKIRT_STYLES } from "../common/skirt/skirtRun.ts";

/** A bed skirt (valance): cloth that hangs from under the mattress to the floor. */
export const bedSkirtSchema = z.strictObject({
  "bed-skirt": textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the skirt's cloth" }),
  bed: sizeField(3)
    .optional()
    .meta({
      description:
        "the made-up bed: width x length x height of its top; else from the card of the bed that it lies on",
      examples: [`60" x 80" x 25"`],
    }),
  drop: positiveLengthField().meta({
    description: "finished, from the top of the base, under the mattress, to the hem",
  }),
  style: wordField(SKIRT_STYLES).optional().meta({
    description: "gathered where nothing is said; tailored is flat, with a pleat at each corner",
  }),
  sides: listField(wordField(["left", "right", "foot", "head"]))
    .optional()
    .meta({
      description:
        "the sides that it hangs at, left and right as seen from the foot; left, foot and right where nothing is said",
    }),
  "split-corners": yesNoField().optional().meta({
    description: "yes: a piece for each side, open at the corners, for a bed with posts",
  }),
  railroad: yesNoField().optional().meta({
    description:
      "yes: the cloth runs sideways, in strips along it; where nothing is said so for plain cloth that may turn, unless it took over a quarter more than widths",
  }),
  platform: refField("a lining").optional().meta({
    description: "the plain cloth under the mattress that carries it",
  }),
});

export type BedSkirtFields = z.output<typeof bedSkirtSchema>;
