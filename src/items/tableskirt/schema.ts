import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import { refField, textField, wordField, yesNoField } from "../../fields/plainFields.ts";
import { SKIRT_STYLES } from "../common/skirt/skirtRun.ts";

/** A skirt round a table, from its edge to the floor. */
export const tableSkirtSchema = z.strictObject({
  "table-skirt": textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the skirt's cloth" }),
  form: wordField(["round", "oval", "rectangular"], { square: "rectangular", ellipse: "oval" })
    .optional()
    .meta({
      description:
        "rectangular where nothing is said, unless the table's card says that it is round: then round, or an oval where its two sizes differ",
    }),
  table: sizeField(3)
    .optional()
    .meta({
      description:
        "the table: width x depth x height, a round one its diameter twice, an oval one its longest and its shortest; else from the card of the table that it stands round",
      examples: [`60" x 36" x 29"`],
    }),
  drop: positiveLengthField().optional().meta({
    description: "finished; from the table's edge to just above the floor where nothing is said",
  }),
  style: wordField(SKIRT_STYLES).optional().meta({
    description: "gathered where nothing is said; tailored is flat, with a pleat at each corner",
  }),
  top: refField("a cloth").optional().meta({
    description:
      "cloth of a fitted top that carries it; it is clipped to the edge where nothing is said",
  }),
  railroad: yesNoField().optional().meta({
    description:
      "yes: the cloth runs sideways, in strips along it; where nothing is said so for plain cloth that may turn, unless it took over a quarter more than widths",
  }),
});

export type TableSkirtFields = z.output<typeof tableSkirtSchema>;
