import { z } from "zod";
import { amountField } from "../../fields/amountField.ts";
import { lengthField, positiveLengthField } from "../../fields/lengthField.ts";
import { countField, dateField, listField, percentField, ratioField, refField, textField, wordField, yesNoField } from "../../fields/plainFields.ts";
import { declaredColoursSchema, photoSchema } from "./shared.ts";

/** The kinds of pattern, as in the swatch measurement. */
export const PATTERN_KINDS = ["plain", "textured-plain", "stripe", "check", "geometric", "small-print", "large-print", "irregular"] as const;

/** What a card in the library can be. */
export const CLOTH_TYPES = ["cloth", "wallcovering", "lining", "interlining", "trim", "leather"] as const;

/** A card of the cloth library: a cloth, wallcovering, lining or trim. */
export const clothSchema = z.strictObject({
  cloth: textField().meta({ description: "its name, as the client reads it" }),
  type: wordField(CLOTH_TYPES, { wallpaper: "wallcovering", fabric: "cloth" }).optional(),
  photo: photoSchema.optional(),
  colours: declaredColoursSchema.optional().meta({ description: "its colours by hand, while there is no photograph" }),
  width: positiveLengthField().optional().meta({ description: "usable width, between the selvedges" }),
  repeat: z
    .strictObject({
      up: positiveLengthField().meta({ description: "the repeat along the length" }),
      across: positiveLengthField().optional(),
      match: wordField(["straight", "half-drop", "free"]).optional(),
      "from-selvedge": lengthField().optional().meta({ description: "from the left selvedge to the middle of the first motif" }),
    })
    .optional(),
  motif: positiveLengthField().optional().meta({ description: "height of the largest motif" }),
  kind: wordField(PATTERN_KINDS, { solid: "plain" }).optional(),
  runs: wordField(["one-way", "two-way", "any-way"]).optional().meta({ description: "one-way: the motifs have a top; any-way: the cloth may be turned a quarter" }),
  nap: yesNoField().optional().meta({ description: "yes: a pile or sheen that runs one way" }),
  fibre: textField().optional(),
  weight: textField().optional().meta({ description: "grams a square metre: 290 g/m2" }),
  rubs: textField().optional().meta({ description: "abrasion: 25000 martindale, or 30000 wyzenbeek" }),
  light: countField(1, 8).optional().meta({ description: "colour fastness to light, 1 to 8 on the blue wool scale (ISO 105-B02)" }),
  care: textField().optional(),
  fire: textField().optional().meta({ description: "what the supplier states about fire tests, in the supplier's words" }),
  shrinkage: percentField().optional(),
  suits: listField(wordField(["curtains", "blinds", "cushions", "upholstery", "walls", "loose-covers", "lining"], { drapery: "curtains", shades: "blinds", pillows: "cushions", slipcovers: "loose-covers" })).optional(),
  animal: yesNoField().optional().meta({ description: "yes: an animal marking" }),
  collection: textField().optional(),
  supplier: refField("a supplier").optional(),
  reference: textField().optional().meta({ description: "the supplier's own number; the client never sees it" }),
  price: z
    .strictObject({
      trade: amountField().optional(),
      client: amountField().optional().meta({ description: "without it: trade price times the studio's markup" }),
      per: wordField(["yard", "metre", "roll", "each"], { meter: "metre", yd: "yard", m: "metre" }),
      on: dateField().optional(),
      bolt: z.strictObject({ length: positiveLengthField(), trade: amountField() }).optional(),
      minimum: positiveLengthField().optional(),
      "sold-by": positiveLengthField().optional().meta({ description: "the step that it is cut in: 1/4 yd, 0.1 m" }),
    })
    .optional(),
  roll: z
    .strictObject({ width: positiveLengthField(), length: positiveLengthField() })
    .optional()
    .meta({ description: "a wallcovering's roll" }),
  remnant: z.array(z.strictObject({ length: positiveLengthField(), width: positiveLengthField().optional(), lot: textField().optional() })).optional(),
  sample: z
    .strictObject({
      fee: amountField().optional(),
      credited: yesNoField().optional(),
      ordered: dateField().optional(),
      arrived: dateField().optional(),
      approved: dateField().optional(),
      returned: dateField().optional(),
    })
    .optional(),
  "up-is": wordField(["up", "down", "left", "right"]).optional().meta({ description: "where the photograph has the top of the motifs" }),
  contrast: ratioField().optional(),
  private: textField().optional().meta({ description: "for the studio alone" }),
});

export type ClothFields = z.output<typeof clothSchema>;
