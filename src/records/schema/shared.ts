import { z } from "zod";
import { positiveLengthField } from "../../fields/lengthField.ts";
import { colourField, percentField, pictureField, textField } from "../../fields/plainFields.ts";
import { patchField, spotField } from "../../fields/regionField.ts";

/** A photograph and how much of the thing it shows. */
export const photoSchema = z.strictObject({
  file: pictureField().meta({ description: "the picture's file, beside this card" }),
  shows: positiveLengthField()
    .optional()
    .meta({
      description:
        "how much cloth the picture shows from its left to its right edge, along its middle",
      examples: [`27"`],
    }),
  neutral: patchField().optional().meta({
    description:
      "a white or grey patch in the picture: left, top, width and height in pixels, and its reflectance: 40 60 200 150 at 90%",
  }),
  "motif-at": spotField().optional().meta({
    description:
      "the middle of the motif that a board should show, from the picture's left and top edge; without it the most telling place is found",
  }),
});

/** Colours said by hand: of a cloth whose photograph is still to come. */
export const declaredColoursSchema = z.array(
  z.strictObject({
    colour: colourField().meta({ description: "the colour as a screen shows it; in quotes" }),
    share: percentField()
      .optional()
      .meta({ description: "its share of the area", examples: ["40 %"] }),
    name: textField()
      .optional()
      .meta({ description: "what you call it", examples: ["parchment"] }),
  }),
);

export type PhotoFields = z.output<typeof photoSchema>;
