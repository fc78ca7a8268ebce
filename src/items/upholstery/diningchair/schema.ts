import { z } from "zod";
import { itemBase } from "../../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../../fields/lengthField.ts";
import {
  countField,
  refField,
  textField,
  wordField,
  yesNoField,
} from "../../../fields/plainFields.ts";
import { coverFields, piecesField } from "../schemaParts.ts";

export const DINING_PIECES = [
  "seat",
  "seat-front",
  "boxing",
  "inside-back",
  "outside-back",
  "front-border",
  "skirt",
] as const;

/** Dining chairs with a seat stuffed over the rail, and perhaps a back; a seat that lifts out is a drop-in seat. */
export const diningChairSchema = z.strictObject({
  "dining-chair": textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the cover's cloth" }),
  type: wordField(["seat", "seat-and-back"]).optional().meta({
    description: "what is covered: for an estimate before it is measured, and for the drawing",
  }),
  arms: yesNoField()
    .optional()
    .meta({ description: "yes: a carver, with open arms; for the drawing" }),
  size: sizeField(3).meta({ description: "width x depth x height overall" }),
  "seat-height": positiveLengthField().optional().meta({
    description: "from the floor to the top of the seat; for the drawing",
  }),
  pieces: piecesField(DINING_PIECES)
    .optional()
    .meta({ description: "its pieces as they were measured on the frame" }),
  buttons: countField(1, 100).optional().meta({ description: "covered buttons on one" }),
  ...coverFields,
});

export type DiningChairFields = z.output<typeof diningChairSchema>;
