import { z } from "zod";
import { itemBase } from "../../../fields/itemBase.ts";
import { lengthField, sizeField } from "../../../fields/lengthField.ts";
import {
  countField,
  refField,
  textField,
  wordField,
  yesNoField,
} from "../../../fields/plainFields.ts";
import { JOINS } from "../../common/join/joinedPart.ts";
import { coverFields, piecesField } from "../schemaParts.ts";

export const OTTOMAN_PIECES = ["top", "front", "back", "side", "boxing", "skirt"] as const;

/** An ottoman or footstool: a top sewn to its sides, from its size or from measured pieces. */
export const ottomanSchema = z.strictObject({
  ottoman: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the cover's cloth" }),
  size: sizeField(3).meta({
    description: "width x depth x height overall, legs with it; of a round one its width twice",
  }),
  shape: wordField(["rectangle", "round"])
    .optional()
    .meta({ description: "rectangle where nothing is said" }),
  legs: lengthField().optional().meta({
    description:
      "height of the legs below the cloth; none where nothing is said: the sides reach the floor",
  }),
  measured: yesNoField().optional().meta({
    description: "no: the size is only about, and the cloth an estimate from a range",
  }),
  pieces: piecesField(OTTOMAN_PIECES).optional().meta({
    description: "its pieces as measured, where they do not follow from the size",
  }),
  centred: yesNoField().optional().meta({
    description:
      "yes where nothing is said and the cloth has a motif: its middle stands in the middle of the top",
  }),
  join: wordField(JOINS).optional().meta({
    description: "how what is wider than the cloth is joined; both-sides where nothing is said",
  }),
  buttons: countField(1, 200).optional().meta({ description: "covered buttons on one" }),
  ...coverFields,
});

export type OttomanFields = z.output<typeof ottomanSchema>;
