import { z } from "zod";
import { amountField } from "../../fields/amountField.ts";
import { sizeField } from "../../fields/lengthField.ts";
import { refField, textField, wordField, yesNoField } from "../../fields/plainFields.ts";
import { declaredColoursSchema, photoSchema } from "./shared.ts";

/** What an object looks like when it is drawn. */
export const OBJECT_SHAPES = ["rug", "picture", "chair", "table", "chest", "lamp", "stove", "seat", "mirror", "box"] as const;

/** A thing that is placed but not made: a rug, a picture, a stove. */
export const objectSchema = z.strictObject({
  object: textField().meta({ description: "its name" }),
  shape: wordField(OBJECT_SHAPES).optional().meta({ description: "how it is drawn; a box where nothing is said" }),
  photo: photoSchema.optional(),
  colours: declaredColoursSchema.optional(),
  size: z
    .union([sizeField(3), sizeField(2)])
    .optional()
    .meta({ description: "width x depth x height; a rug or a picture: width x height" }),
  owner: refField("an owner").optional(),
  stays: yesNoField().optional(),
  weight: textField().optional().meta({ description: "for what hangs: 18 kg or 40 lb" }),
  price: z.strictObject({ trade: amountField().optional(), client: amountField().optional() }).optional(),
  supplier: refField("a supplier").optional(),
  private: textField().optional(),
});

export type ObjectFields = z.output<typeof objectSchema>;
