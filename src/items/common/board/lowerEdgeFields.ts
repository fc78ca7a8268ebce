import { positiveLengthField } from "../../../fields/lengthField.ts";
import { countField, wordField } from "../../../fields/plainFields.ts";

/** What a pelmet or a valance says of its lower edge. */
export const lowerEdgeFields = {
  "lower-edge": wordField(["straight", "arched", "scalloped"], {
    scallop: "scalloped",
    arch: "arched",
  })
    .optional()
    .meta({
      description:
        "straight where nothing is said; arched: one arc, deeper at the ends; scalloped: equal arcs that hang down",
    }),
  "end-depth": positiveLengthField()
    .optional()
    .meta({ description: "of an arched one: its depth at the ends" }),
  scallops: countField(1, 60).optional().meta({ description: "of a scalloped one: how many arcs" }),
  "scallop-depth": positiveLengthField()
    .optional()
    .meta({ description: "of a scalloped one: how far each arc hangs below the depth" }),
} as const;
