import { z } from "zod";
import { itemBase } from "../../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../../fields/lengthField.ts";
import { refField, textField, yesNoField } from "../../../fields/plainFields.ts";

/** Seats that lift out of their chairs: a frame or board, its stuffing, and one piece of cloth wrapped round. */
export const dropInSchema = z.strictObject({
  "drop-in-seat": textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the seat's cloth" }),
  size: sizeField(2).meta({
    description: "width at its widest, the front, x depth, over the stuffing",
  }),
  "back-width": positiveLengthField().optional().meta({
    description: "width at the back, where the seat is narrower there; for the drawing",
  }),
  thickness: positiveLengthField()
    .optional()
    .meta({ description: "of frame and stuffing together, at the middle" }),
  centred: yesNoField().optional().meta({
    description:
      "yes where nothing is said and the cloth has a motif: its middle stands in the middle of the seat",
  }),
  railroad: yesNoField().optional().meta({ description: "yes: the cloth runs sideways" }),
});

export type DropInFields = z.output<typeof dropInSchema>;
