import { z } from "zod";
import { fullnessField } from "../../fields/factorFields.ts";
import { itemBase } from "../../fields/itemBase.ts";
import { lengthField } from "../../fields/lengthField.ts";
import { refField, textField, wordField } from "../../fields/plainFields.ts";
import { boardFields, lowerTrimField } from "../common/board/boardFields.ts";
import { lowerEdgeFields } from "../common/board/lowerEdgeFields.ts";

export const VALANCE_HEADINGS = ["gathered", "pencil-pleat", "pinch-pleat", "box-pleat"] as const;

/** A valance: a soft short curtain over the top of a window. */
export const valanceSchema = z.strictObject({
  valance: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the cloth of its face" }),
  ...boardFields({
    board: "length of its board or track",
    depth: "its finished depth, where it is shortest; else a share of curtain-drop",
  }),
  ...lowerEdgeFields,
  heading: wordField(VALANCE_HEADINGS, {
    gathers: "gathered",
    pencil: "pencil-pleat",
    pinch: "pinch-pleat",
    box: "box-pleat",
    "box-pleats": "box-pleat",
  }).meta({ description: "how its top is made" }),
  fullness: fullnessField()
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
  trim: lowerTrimField(),
});

export type ValanceFields = z.output<typeof valanceSchema>;
