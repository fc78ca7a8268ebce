import { z } from "zod";
import { itemBase } from "../../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../../fields/lengthField.ts";
import { countField, refField, textField, wordField } from "../../../fields/plainFields.ts";
import { CHAIR_PIECES } from "../armchair/schema.ts";
import { coverFields, piecesField } from "../schemaParts.ts";

export const SOFA_TYPES = ["loveseat", "sofa"] as const;

/** A sofa or loveseat, from measured pieces or, as an estimate, from a range by its type. */
export const sofaSchema = z.strictObject({
  sofa: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the cover's cloth" }),
  type: wordField(SOFA_TYPES, {
    "two-seater": "loveseat",
    "two-seat": "loveseat",
    "three-seater": "sofa",
    settee: "sofa",
    couch: "sofa",
  })
    .optional()
    .meta({
      description:
        "loveseat (two seats, up to 6 ft) or sofa (about 7 ft), a wider one taking more in proportion: for an estimate before it is measured",
    }),
  cover: wordField(["fixed", "loose"]).optional().meta({
    description: "fixed where nothing is said; loose: a loose cover (slipcover)",
  }),
  size: sizeField(3).meta({ description: "width x depth x height overall" }),
  seats: countField(1, 6).optional().meta({
    description:
      "seats side by side; else the count of the cushion tops, or two for a loveseat and three for a sofa",
  }),
  "seat-height": positiveLengthField().optional().meta({
    description: "from the floor to the top of the seat; for the drawing",
  }),
  pieces: piecesField(CHAIR_PIECES)
    .optional()
    .meta({ description: "its pieces as they were measured on the frame" }),
  buttons: countField(1, 500).optional().meta({ description: "covered buttons on one" }),
  ...coverFields,
});

export type SofaFields = z.output<typeof sofaSchema>;
