import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { positiveLengthField } from "../../fields/lengthField.ts";
import { refField, textField, wordField } from "../../fields/plainFields.ts";

/** A Roman blind (shade). */
export const blindSchema = z.strictObject({
  blind: textField().meta({ description: "its title" }),
  ...itemBase,
  type: wordField(["roman", "hobbled"], { "soft-fold": "hobbled" }).optional().meta({
    description: "hobbled: its folds stay when it is let down; roman where nothing is said",
  }),
  cloth: refField("a cloth").meta({ description: "the cloth of its face" }),
  mount: wordField(["inside", "outside"]).optional().meta({
    description:
      "inside the recess, or outside it; inside where nothing is said and the window has a recess",
  }),
  width: positiveLengthField()
    .optional()
    .meta({ description: "finished width; else from the window" }),
  drop: positiveLengthField()
    .optional()
    .meta({ description: "finished drop; else from the window" }),
  lining: refField("a lining")
    .optional()
    .meta({ description: "its lining; unlined where nothing is said" }),
  blackout: refField("a lining")
    .optional()
    .meta({ description: "a layer between face and lining that keeps out light" }),
  interlining: refField("an interlining")
    .optional()
    .meta({ description: "a layer between face and lining; none where nothing is said" }),
  operation: wordField(["cordless", "cord", "chain", "motor"])
    .optional()
    .meta({ description: "cordless where nothing is said" }),
  side: wordField(["left", "right"]).optional().meta({
    description: "on which side the cord, chain or motor is, as one looks at it from inside",
  }),
});

export type BlindFields = z.output<typeof blindSchema>;
