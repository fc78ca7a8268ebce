import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { positiveLengthField } from "../../fields/lengthField.ts";
import { paintPriceField } from "../../fields/paintPriceField.ts";
import {
  colourField,
  countField,
  listField,
  textField,
  wordField,
} from "../../fields/plainFields.ts";
import { wallsField } from "../../fields/wallsField.ts";
import { coverageField, tinField } from "./fields.ts";

/** Paint on walls, ceiling or woodwork; what is papered is left out. */
export const paintSchema = z.strictObject({
  paint: textField().meta({ description: "its title" }),
  ...itemBase,
  on: wallsField(["walls", "ceiling", "woodwork"]).meta({
    description:
      "what is painted: all walls, the ceiling, the woodwork, one wall or a list of walls",
  }),
  colour: colourField().meta({ description: "the colour as a screen shows it; in quotes" }),
  name: textField().optional().meta({ description: "what you call the colour" }),
  finish: textField().optional().meta({ description: "its sheen, in the maker's words" }),
  coats: countField(1, 6)
    .optional()
    .meta({ description: "how many coats; the studio's usual number where nothing is said" }),
  coverage: coverageField()
    .optional()
    .meta({ description: "the tin's own: 12 m2/l or 400 sq ft/gal" }),
  tins: listField(tinField())
    .optional()
    .meta({ description: "sizes that it is sold in: 1 gal, 1 qt; 2.5 l, 5 l" }),
  price: paintPriceField().optional().meta({
    description:
      "what this paint costs, in place of the studio's price; where every size has its price, the cheapest tins that hold enough are bought, else those that leave least over",
  }),
  skirting: positiveLengthField()
    .optional()
    .meta({ description: "height of the baseboard, for woodwork" }),
  surface: wordField(["smooth", "rough", "bare"])
    .optional()
    .meta({ description: "what it is painted on; a rough or bare wall takes more" }),
});

export type PaintFields = z.output<typeof paintSchema>;
