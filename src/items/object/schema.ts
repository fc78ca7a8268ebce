import { z } from "zod";
import { dateField } from "../../fields/dateField.ts";
import { itemBase } from "../../fields/itemBase.ts";
import { refField } from "../../fields/plainFields.ts";

/** An object of the library, placed in the room: a rug, a picture, the piece that stays. */
export const objectItemSchema = z.strictObject({
  object: refField("an object").meta({ description: "the object's card" }),
  ordered: dateField()
    .optional()
    .meta({ description: "of an object that is bought: when it was ordered" }),
  arrived: dateField()
    .optional()
    .meta({ description: "of an object that is bought: when it came" }),
  ...itemBase,
});

export type ObjectItemFields = z.output<typeof objectItemSchema>;
