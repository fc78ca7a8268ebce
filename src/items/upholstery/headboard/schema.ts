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
import { JOINS } from "../../common/join/joinedPart.ts";
import { coverFields } from "../schemaParts.ts";

/** An upholstered headboard: plain, buttoned or with a border, from its size. */
export const headboardSchema = z.strictObject({
  headboard: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the face's cloth" }),
  size: sizeField(3).meta({
    description: "width x depth x height of the padded board",
    examples: [`62" x 3" x 30"`],
  }),
  shape: wordField(["straight", "arched"])
    .optional()
    .meta({ description: "of its head; straight where nothing is said" }),
  rise: positiveLengthField().optional().meta({
    description:
      "of an arched head: how far its middle stands above its ends; the height counts to the middle",
  }),
  border: positiveLengthField().optional().meta({
    description: "width of a border at the head and both sides, sewn round an inner panel",
  }),
  "border-cloth": refField("a cloth")
    .optional()
    .meta({ description: "the border's cloth; the face's where nothing is said" }),
  measured: yesNoField().optional().meta({
    description: "no: the size is only about, and the cloth an estimate from a range",
  }),
  centred: yesNoField().optional().meta({
    description:
      "yes where nothing is said and the cloth has a motif: its middle stands in the middle of the face",
  }),
  join: wordField(JOINS).optional().meta({
    description: "how a face wider than the cloth is joined; both-sides where nothing is said",
  }),
  buttons: countField(1, 500).optional().meta({ description: "covered buttons on one" }),
  buttoning: wordField(["shallow", "deep"]).optional().meta({
    description: "shallow where nothing is said; deep takes up cloth in its pleats",
  }),
  fixing: wordField(["bed", "wall", "legs"]).optional().meta({
    description: "to the bed's frame, hung on the wall, or on legs behind the bed",
  }),
  weight: textField()
    .optional()
    .meta({ description: "of one, as it is known: printed for the fixer", examples: ["14 kg"] }),
  ...coverFields,
});

export type HeadboardFields = z.output<typeof headboardSchema>;
