import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { lengthField, sizeField } from "../../fields/lengthField.ts";
import { refField, textField, wordField } from "../../fields/plainFields.ts";

/** A scatter cushion (throw pillow), knife-edged or with a welt. */
export const cushionSchema = z.strictObject({
  cushion: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth"),
  back: refField("a cloth")
    .optional()
    .meta({ description: "the back's cloth; the same where nothing is said" }),
  size: sizeField(2).meta({ description: "finished width x height" }),
  edge: z
    .union([
      wordField(["knife"]),
      z.strictObject({
        welt: refField("a cloth"),
        cord: lengthField().optional(),
        cut: wordField(["bias", "straight"]).optional(),
      }),
    ])
    .optional()
    .meta({ description: "knife, or { welt: cloth }" }),
  motif: wordField(["centred", "as-it-falls"])
    .optional()
    .meta({ description: "centred where the cloth has a motif and nothing is said" }),
  "back-motif": wordField(["centred", "as-it-falls"]).optional().meta({
    description:
      "as it falls where nothing is said: a back that is seldom seen takes less cloth so",
  }),
  filling: wordField(["feather", "fibre", "foam"]).optional(),
  closure: wordField(["zip", "envelope", "sewn"]).optional(),
});

export type CushionFields = z.output<typeof cushionSchema>;
