import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { lengthField, positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import { countField, refField, textField, wordField } from "../../fields/plainFields.ts";
import { JOINS } from "../common/join/joinedPart.ts";

/** A wall set out in panels: mouldings planted on it, and perhaps cloth stretched within them. */
export const panelledWallSchema = z.strictObject({
  "panelled-wall": textField().meta({ description: "its title" }),
  ...itemBase,
  size: sizeField(2).meta({
    description: "width x height of the wall that is panelled; at: says which wall and where",
  }),
  panels: countField(1, 60).meta({ description: "panels side by side" }),
  rows: countField(1, 2)
    .optional()
    .meta({ description: "rows of panels one above the other; one where nothing is said" }),
  lower: positiveLengthField().optional().meta({
    description: "of two rows: height of the lower panels, outside their moulding",
  }),
  margin: positiveLengthField().optional().meta({
    description: "plain wall between panels and round them; alike everywhere",
  }),
  moulding: lengthField().optional().meta({
    description: "width of the moulding round each panel; 0 for panels without one",
  }),
  "moulding-length": positiveLengthField()
    .optional()
    .meta({
      description: "length in which the moulding is sold",
      examples: ["8 ft"],
    }),
  cloth: refField("a cloth")
    .optional()
    .meta({ description: "stretched in the panels; they are painted where nothing is said" }),
  motif: wordField(["centred", "as-it-falls"])
    .optional()
    .meta({ description: "centred in each panel where the cloth has a motif and nothing is said" }),
  join: wordField(JOINS).optional().meta({
    description: "how cloth is joined in a panel wider than it; both-sides where nothing is said",
  }),
  trim: textField()
    .optional()
    .meta({
      description:
        "what covers the edge of the cloth, bought by the length: a trim's card, or in words what its maker brings",
      examples: ["gimp", "double welt"],
    }),
});

export type PanelledWallFields = z.output<typeof panelledWallSchema>;
