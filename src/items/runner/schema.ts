import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import { textField } from "../../fields/plainFields.ts";
import { flatFields } from "../common/flat/flatFields.ts";

/** A runner: a band of cloth across the foot of a bed, or along a table. */
export const runnerSchema = z.strictObject({
  runner: textField().meta({ description: "its title" }),
  ...itemBase,
  ...flatFields,
  bed: sizeField(3)
    .optional()
    .meta({
      description:
        "the made-up bed: width x length x height of its top; else from the card of the bed that it lies on",
      examples: [`60" x 80" x 25"`],
    }),
  table: sizeField(3)
    .optional()
    .meta({
      description:
        "the table: length that the runner follows x depth x height; else from the card of the table that it lies on",
      examples: [`72" x 36" x 29"`],
    }),
  drop: positiveLengthField().meta({ description: "how far it hangs down at each end" }),
  depth: positiveLengthField().meta({ description: "finished, from its front to its back edge" }),
});

export type RunnerFields = z.output<typeof runnerSchema>;
