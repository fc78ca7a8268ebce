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
import { edgeField } from "../../common/welt/weltField.ts";

export const FASTENINGS = ["ties", "hook-and-loop", "fixed", "non-slip", "loose"] as const;

/** A pad for a chair, a bench or a window seat: boxed or knife-edged, tied, fixed or loose. */
export const seatPadSchema = z.strictObject({
  "seat-pad": textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the top's cloth" }),
  back: refField("a cloth")
    .optional()
    .meta({ description: "the bottom's cloth; the top's where nothing is said" }),
  shape: wordField(["rectangle", "tapered", "round"]).optional().meta({
    description: "rectangle where nothing is said; tapered where a back-width is given",
  }),
  size: sizeField(2).meta({
    description: "finished width at the front x depth; of a round one its diameter twice",
  }),
  "back-width": positiveLengthField()
    .optional()
    .meta({ description: "of a tapered pad: finished width at the back" }),
  thickness: positiveLengthField().optional().meta({
    description: "height of its boxing; without it the pad has a knife edge",
  }),
  boxing: refField("a cloth")
    .optional()
    .meta({ description: "the boxing's cloth; the top's where nothing is said" }),
  railroad: yesNoField().optional().meta({
    description: "yes: the cloth runs sideways, so that a long bench has no join",
  }),
  join: wordField(JOINS).optional().meta({
    description:
      "of a top wider than the cloth: a whole width in the middle and strips at both sides, or one strip at one side",
  }),
  edge: edgeField("knife", {
    welt: "the welt's cloth",
    cord: "the cord's thickness",
    cut: "on the bias where nothing is said",
  }),
  motif: wordField(["centred", "as-it-falls"])
    .optional()
    .meta({ description: "centred where the cloth has a motif and nothing is said" }),
  filling: wordField(["feather", "fibre", "foam"])
    .optional()
    .meta({ description: "foam where nothing is said" }),
  closure: wordField(["zip", "sewn"]).optional().meta({ description: "zip where nothing is said" }),
  fastening: wordField(FASTENINGS, { tied: "ties", "touch-tape": "hook-and-loop", tacked: "fixed" })
    .optional()
    .meta({
      description:
        "ties, hook-and-loop tape, fixed down to the seat, on a non-slip mat, or loose; ties where they are counted",
    }),
  ties: countField(1, 12)
    .optional()
    .meta({ description: "pairs of ties on one; two where it is tied and nothing is said" }),
  buttons: countField(1, 100)
    .optional()
    .meta({ description: "tufting buttons on one side of one" }),
});

export type SeatPadFields = z.output<typeof seatPadSchema>;
