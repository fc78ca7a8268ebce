import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { positiveLengthField } from "../../fields/lengthField.ts";
import { refField, textField, wordField, yesNoField } from "../../fields/plainFields.ts";

/** A roller blind (shade) of the studio's own cloth, stiffened and cut to size. */
export const rollerBlindSchema = z.strictObject({
  "roller-blind": textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the cloth that is stiffened for it" }),
  mount: wordField(["inside", "outside"]).optional().meta({
    description:
      "inside the recess, or outside it; inside where nothing is said and the window has a recess",
  }),
  width: positiveLengthField().optional().meta({
    description: "its whole width, brackets and all; else from the window",
  }),
  drop: positiveLengthField()
    .optional()
    .meta({ description: "from its head to the foot of its bar; else from the window" }),
  railroad: yesNoField().optional().meta({
    description: "yes: the cloth runs sideways, for a blind wider than the cloth",
  }),
  roll: wordField(["behind", "before"]).optional().meta({
    description:
      "whether the cloth falls from behind the roller, close to the glass, or from before it; behind where nothing is said",
  }),
  operation: wordField(["spring", "chain", "motor"])
    .optional()
    .meta({ description: "a spring, without a cord, where nothing is said" }),
  side: wordField(["left", "right"]).optional().meta({
    description: "on which side the chain or motor is, as one looks at it from inside",
  }),
});

export type RollerBlindFields = z.output<typeof rollerBlindSchema>;
