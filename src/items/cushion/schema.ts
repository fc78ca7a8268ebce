import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import { refField, textField, wordField, yesNoField } from "../../fields/plainFields.ts";
import { JOINS } from "../common/join/joinedPart.ts";
import { edgeField } from "../common/welt/weltField.ts";

export const CUSHION_FORMS = ["knife", "flange", "box", "bolster"] as const;

/** A cushion (pillow): a scatter cushion with a knife edge or a flange, a box cushion or seat pad, a bolster. */
export const cushionSchema = z.strictObject({
  cushion: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the cloth of its face" }),
  back: refField("a cloth")
    .optional()
    .meta({ description: "the back's cloth; the same where nothing is said" }),
  form: wordField(CUSHION_FORMS).optional().meta({
    description:
      "knife where nothing is said; box where a thickness is given, flange where a flange is",
  }),
  size: sizeField(2).meta({
    description:
      "finished width x height; of a box its width x depth, of a bolster its length x diameter, of a flange without the flange",
  }),
  thickness: positiveLengthField()
    .optional()
    .meta({ description: "of a box: height of its boxing" }),
  boxing: refField("a cloth")
    .optional()
    .meta({ description: "the boxing's cloth; the face's where nothing is said" }),
  flange: positiveLengthField()
    .optional()
    .meta({ description: "width of the flat border beyond the stuffing" }),
  section: wordField(["round", "square"])
    .optional()
    .meta({ description: "of a bolster; round where nothing is said" }),
  railroad: yesNoField().optional().meta({
    description: "yes: the cloth runs sideways, so that a long seat has no join",
  }),
  join: wordField(JOINS).optional().meta({
    description:
      "of a top wider than the cloth: a whole width in the middle and strips at both sides, or one strip at one side",
  }),
  edge: edgeField("knife", {
    welt: "the cloth that covers the cord",
    cord: "thickness of the cord",
    cut: "on the bias, or straight; bias where nothing is said",
  }),
  motif: wordField(["centred", "as-it-falls"])
    .optional()
    .meta({ description: "centred where the cloth has a motif and nothing is said" }),
  "back-motif": wordField(["centred", "as-it-falls"]).optional().meta({
    description:
      "as it falls where nothing is said: a back that is seldom seen takes less cloth so",
  }),
  filling: wordField(["feather", "fibre", "foam"])
    .optional()
    .meta({ description: "what it is filled with" }),
  closure: wordField(["zip", "envelope", "sewn"])
    .optional()
    .meta({ description: "how it opens; a zip where nothing is said" }),
});

export type CushionFields = z.output<typeof cushionSchema>;
