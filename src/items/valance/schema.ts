import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { lengthField, positiveLengthField } from "../../fields/lengthField.ts";
import { ratioField, refField, textField, wordField } from "../../fields/plainFields.ts";

export const VALANCE_HEADINGS = ["gathered", "pencil-pleat", "pinch-pleat", "box-pleat"] as const;

/** A valance: a soft short curtain over the top of a window. */
export const valanceSchema = z.strictObject({
  valance: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the cloth of its face" }),
  mount: wordField(["inside", "outside"])
    .optional()
    .meta({ description: "between the walls of the recess, or outside it, where nothing is said" }),
  board: positiveLengthField().optional().meta({
    description:
      "length of its board or track, end to end; else the opening and what stands beyond it at each side",
  }),
  return: lengthField()
    .optional()
    .meta({ description: "from its front back to the wall, at each end" }),
  "top-height": positiveLengthField()
    .optional()
    .meta({ description: "from the floor to its upper edge" }),
  depth: positiveLengthField()
    .optional()
    .meta({ description: "its finished depth; else a share of curtain-drop" }),
  "curtain-drop": positiveLengthField()
    .optional()
    .meta({ description: "finished length of the curtains beneath it" }),
  heading: wordField(VALANCE_HEADINGS, {
    gathers: "gathered",
    pencil: "pencil-pleat",
    pinch: "pinch-pleat",
    box: "box-pleat",
    "box-pleats": "box-pleat",
  }).meta({ description: "how its top is made" }),
  fullness: ratioField()
    .optional()
    .meta({ description: "flat cloth for each length of board; else the heading's usual one" }),
  lining: refField("a lining")
    .optional()
    .meta({ description: "its lining; unlined where nothing is said" }),
  interlining: refField("an interlining")
    .optional()
    .meta({ description: "a layer between face and lining; none where nothing is said" }),
  "lowest-motif": lengthField().optional().meta({
    description: "from the finished lower edge up to the middle of the lowest whole motif",
  }),
  trim: refField("a trim").optional().meta({ description: "braid or fringe along its lower edge" }),
});

export type ValanceFields = z.output<typeof valanceSchema>;
