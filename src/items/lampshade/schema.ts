import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import { refField, textField, wordField, yesNoField } from "../../fields/plainFields.ts";

/** A lampshade: cloth on a stiff backing between two rings, or pleated on a frame. */
export const lampshadeSchema = z.strictObject({
  lampshade: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the cloth of its face" }),
  form: wordField(["drum", "cone", "empire"]).optional().meta({
    description:
      "drum: upright sides, where nothing is said and no top is given; empire: sloping sides, the top about half the foot or more; cone: steeper, with a small top",
  }),
  style: wordField(["smooth", "knife-pleat", "box-pleat", "gathered"], {
    hard: "smooth",
    laminated: "smooth",
    pleated: "knife-pleat",
    "knife-pleats": "knife-pleat",
    "box-pleats": "box-pleat",
    gathers: "gathered",
  })
    .optional()
    .meta({
      description:
        "smooth: the cloth lies on a stiff backing, where nothing is said; else a soft shade on a frame, pleated or gathered into both rings",
    }),
  size: sizeField(2).meta({
    description: "diameter at the foot x upright height, over the rings",
    examples: [`16" x 10"`],
  }),
  top: positiveLengthField()
    .optional()
    .meta({ description: "diameter of the top ring, of a cone or an empire" }),
  slant: positiveLengthField().optional().meta({
    description: "measured along the side, as a check: it must agree with the height within 1/4 in",
  }),
  motif: wordField(["centred", "as-it-falls"])
    .optional()
    .meta({ description: "centred opposite the seam where nothing is said and the cloth has one" }),
  railroad: yesNoField()
    .optional()
    .meta({ description: "yes: the cloth runs sideways round the shade" }),
  fitting: wordField(["table", "pendant", "clip"], { ceiling: "pendant", standard: "table" })
    .optional()
    .meta({
      description: "how its ring sits: on a table or floor lamp, hung, or clipped to the lamp",
    }),
  trim: refField("a trim").optional().meta({ description: "braid round both edges" }),
});

export type LampshadeFields = z.output<typeof lampshadeSchema>;
