import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import { textField } from "../../fields/plainFields.ts";
import { flatFields } from "../common/flat/flatFields.ts";

/** A throw: a loose cover over the foot of a bed, a sofa or a chair. */
export const throwSchema = z.strictObject({
  throw: textField().meta({ description: "its title" }),
  ...itemBase,
  ...flatFields,
  size: sizeField(2).meta({
    description: "finished width x length, a fringe not counted",
    examples: [`50" x 60"`, "130 cm x 170 cm"],
  }),
  fringe: positiveLengthField()
    .optional()
    .meta({ description: "of its own threads, drawn at both ends: its length" }),
});

export type ThrowFields = z.output<typeof throwSchema>;
