import { refField, wordField, yesNoField } from "../../../fields/plainFields.ts";
import { edgeField } from "../welt/weltField.ts";

/** What every flat cover may say of its cloths and edges: coverlet, runner, throw, tablecloth. */
export const flatFields = {
  cloth: refField("a cloth").meta({ description: "the cloth that is seen" }),
  back: refField("a cloth").optional().meta({
    description: "cloth or lining of its back; one layer with a hem where nothing is said",
  }),
  wadding: refField("an interlining")
    .optional()
    .meta({ description: "the soft layer between face and back" }),
  quilted: yesNoField()
    .optional()
    .meta({ description: "yes: it is quilted, which takes up cloth each way" }),
  edge: edgeField("plain", {
    welt: "the cloth of its welt (piping)",
    cord: "thickness of the cord",
    cut: "how the strips are cut; on the bias where nothing is said",
  }),
  trim: refField("a trim").optional().meta({ description: "braid or fringe sewn along its edge" }),
  motif: wordField(["centred", "as-it-falls"]).optional().meta({
    description:
      "centred: a motif in the middle of the bed or table; so where the cloth has a motif and nothing is said",
  }),
  railroad: yesNoField().optional().meta({
    description:
      "yes: the cloth runs sideways; done of itself where plain cloth saves a join by it",
  }),
} as const;
