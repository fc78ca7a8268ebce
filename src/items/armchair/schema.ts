import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import {
  countField,
  refField,
  textField,
  wordField,
  yesNoField,
} from "../../fields/plainFields.ts";

export const CHAIR_PIECES = [
  "seat",
  "seat-front",
  "inside-back",
  "outside-back",
  "inside-arm",
  "outside-arm",
  "arm-front",
  "front-border",
  "cushion-top",
  "cushion-bottom",
  "boxing",
  "wing-inside",
  "wing-outside",
  "skirt",
] as const;
export const CHAIR_TYPES = ["occasional", "club", "wing"] as const;

/** An upholstered armchair, from measured pieces or, as an estimate, from a range by its type. */
export const armchairSchema = z.strictObject({
  armchair: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth"),
  type: wordField(CHAIR_TYPES)
    .optional()
    .meta({ description: "occasional, club or wing: for an estimate before it is measured" }),
  size: sizeField(3).meta({ description: "width x depth x height overall" }),
  "seat-height": positiveLengthField().optional(),
  pieces: z
    .array(
      z.strictObject({
        piece: wordField(CHAIR_PIECES),
        size: sizeField(2).meta({
          description: "width x length at its widest, as seen; the pull is added",
        }),
        count: countField().optional(),
        centred: yesNoField().optional(),
        cloth: refField("a cloth").optional(),
        "may-turn": yesNoField().optional(),
      }),
    )
    .optional(),
  welt: refField("a cloth").optional(),
  "welt-length": positiveLengthField().optional(),
});

export type ArmchairFields = z.output<typeof armchairSchema>;
