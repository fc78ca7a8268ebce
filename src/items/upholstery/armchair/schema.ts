import { z } from "zod";
import { itemBase } from "../../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../../fields/lengthField.ts";
import { countField, refField, textField, wordField } from "../../../fields/plainFields.ts";
import { coverFields, piecesField } from "../schemaParts.ts";

export const CHAIR_PIECES = [
  "seat",
  "seat-front",
  "inside-back",
  "outside-back",
  "inside-arm",
  "outside-arm",
  "arm-front",
  "arm-cap",
  "front-border",
  "cushion-top",
  "cushion-bottom",
  "boxing",
  "back-cushion-front",
  "back-cushion-back",
  "back-boxing",
  "wing-inside",
  "wing-outside",
  "skirt",
] as const;
export const CHAIR_TYPES = ["occasional", "club", "wing"] as const;

/** An upholstered armchair, from measured pieces or, as an estimate, from a range by its type. */
export const armchairSchema = z.strictObject({
  armchair: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the cover's cloth" }),
  type: wordField(CHAIR_TYPES)
    .optional()
    .meta({ description: "occasional, club or wing: for an estimate before it is measured" }),
  cover: wordField(["fixed", "loose"]).optional().meta({
    description: "fixed where nothing is said; loose: a loose cover (slipcover)",
  }),
  size: sizeField(3).meta({ description: "width x depth x height overall" }),
  "seat-height": positiveLengthField().optional().meta({
    description: "from the floor to the top of the seat; for the drawing",
  }),
  pieces: piecesField(CHAIR_PIECES)
    .optional()
    .meta({ description: "its pieces as they were measured on the frame" }),
  buttons: countField(1, 500).optional().meta({ description: "covered buttons on one" }),
  ...coverFields,
});

export type ArmchairFields = z.output<typeof armchairSchema>;
