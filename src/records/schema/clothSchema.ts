import { z } from "zod";
import { amountField } from "../../fields/amountField.ts";
import { dateField } from "../../fields/dateField.ts";
import { durationField } from "../../fields/durationField.ts";
import { lengthField, positiveLengthField } from "../../fields/lengthField.ts";
import {
  countField,
  listField,
  lossField,
  ratioField,
  refField,
  textField,
  wordField,
  yesNoField,
} from "../../fields/plainFields.ts";
import { soldByField } from "../../fields/soldByField.ts";
import { declaredColoursSchema, photoSchema } from "./shared.ts";

/** The kinds of pattern, as in the swatch measurement. */
export const PATTERN_KINDS = [
  "plain",
  "textured-plain",
  "stripe",
  "check",
  "geometric",
  "small-print",
  "large-print",
  "irregular",
] as const;

/** What a card in the library can be. */
export const CLOTH_TYPES = [
  "cloth",
  "wallcovering",
  "lining",
  "interlining",
  "trim",
  "leather",
] as const;

/** A card of the cloth library: a cloth, wallcovering, lining or trim. */
export const clothSchema = z.strictObject({
  cloth: textField().meta({
    description: "its name, as the client reads it",
    examples: ["Fern trellis"],
  }),
  type: wordField(CLOTH_TYPES, { wallpaper: "wallcovering", fabric: "cloth" })
    .optional()
    .meta({ description: "what it is; a cloth where nothing is said" }),
  photo: photoSchema
    .optional()
    .meta({ description: "its photograph; colours and pattern are measured in it" }),
  colours: declaredColoursSchema
    .optional()
    .meta({ description: "its colours by hand, while there is no photograph" }),
  width: positiveLengthField()
    .optional()
    .meta({ description: "usable width, between the selvedges" }),
  repeat: z
    .strictObject({
      up: positiveLengthField()
        .optional()
        .meta({
          description:
            "the repeat along the length; left out of a stripe that runs along the cloth, which has one across alone",
          examples: [`25 1/4"`],
        }),
      across: positiveLengthField()
        .optional()
        .meta({
          description:
            "the repeat across the width; of a half-drop to the next column, which hangs half a repeat lower",
          examples: [`13 1/2"`],
        }),
      match: wordField(["straight", "half-drop", "free"])
        .optional()
        .meta({ description: "how one width joins the next; straight where nothing is said" }),
      "from-selvedge": lengthField()
        .optional()
        .meta({ description: "from the left selvedge to the middle of the first motif" }),
    })
    .superRefine(({ up, across, match }, context) => {
      if (up || across) return;
      const message = "This repeat has no length.";
      const add =
        'Add up: for the repeat along the length, or across: alone for a stripe, for example across: 2 1/2".';
      const hint =
        match === "free"
          ? `Where nothing has to meet at a join write matched: no in place of this line; else add up: for the repeat along the length.`
          : match === "half-drop"
            ? 'Add up: and across:, as the supplier states them, for example up: 25 1/4", across: 13 1/2".'
            : add;
      context.addIssue({
        code: "custom",
        message,
        params: { code: "repeat-without-length", message, hint },
      });
    })
    .optional()
    .meta({ description: "the pattern's repeat, as the supplier states it" }),
  motif: positiveLengthField().optional().meta({ description: "height of the largest motif" }),
  kind: wordField(PATTERN_KINDS, { solid: "plain" })
    .optional()
    .meta({ description: "the kind of pattern; wins over what is measured" }),
  runs: wordField(["one-way", "two-way", "any-way"]).optional().meta({
    description:
      "one-way: its motifs have a top, or its bands are not the same read backwards; two-way: the same upside down; any-way: the cloth may be turned a quarter",
  }),
  nap: yesNoField().optional().meta({ description: "yes: a pile or sheen that runs one way" }),
  fibre: textField()
    .optional()
    .meta({ description: "what it is made of", examples: ["linen 55, cotton 45"] }),
  weight: textField()
    .optional()
    .meta({ description: "grams a square metre", examples: ["290 g/m2"] }),
  rubs: textField()
    .optional()
    .meta({
      description: "abrasion, with the name of the test",
      examples: ["25000 martindale", "30000 wyzenbeek"],
    }),
  light: countField(1, 8)
    .optional()
    .meta({
      description: "colour fastness to light, 1 to 8 on the blue wool scale (ISO 105-B02)",
      examples: ["5"],
    }),
  care: textField()
    .optional()
    .meta({
      description: "how it is cleaned: a cleaning code (S, W, WS) or words",
      examples: ["S"],
    }),
  fire: textField()
    .optional()
    .meta({
      description: "what the supplier states about fire tests, in the supplier's words",
      examples: ["passes with an interliner"],
    }),
  shrinkage: lossField()
    .optional()
    .meta({
      description:
        "how much it may shrink along its length: curtains and their linings are cut so much longer, for all else it is told what washing before cutting takes",
      examples: ["3 %"],
    }),
  "shrinkage-across": lossField()
    .optional()
    .meta({
      description:
        "how much it may shrink across its width; it counts where the cloth is washed before it is cut, and is asked for there: 0 % where it loses nothing",
      examples: ["2 %"],
    }),
  "wash-first": yesNoField().optional().meta({
    description:
      "yes: it is washed before it is cut, as for loose covers. So much more is bought as it may shrink, it is planned narrower and with a shorter repeat, and curtains are not cut longer again",
  }),
  suits: listField(
    wordField(
      [
        "curtains",
        "blinds",
        "cushions",
        "upholstery",
        "walls",
        "loose-covers",
        "lining",
        "bedding",
        "table-linen",
        "lampshades",
      ],
      {
        drapery: "curtains",
        shades: "blinds",
        pillows: "cushions",
        slipcovers: "loose-covers",
        bedspreads: "bedding",
        tablecloths: "table-linen",
      },
    ),
  )
    .optional()
    .meta({
      description: "what the supplier says it is fit for",
      examples: ["[curtains, cushions]"],
    }),
  matched: yesNoField()
    .optional()
    .meta({
      description:
        "no: it has a pattern, but nothing of it has to meet at a join; a patterned cloth needs this or its repeat before anything is cut",
      examples: ["no"],
    }),
  animal: yesNoField().optional().meta({ description: "yes: an animal marking" }),
  collection: textField()
    .optional()
    .meta({ description: "the collection that it belongs to", examples: ["Harbour"] }),
  supplier: refField("a supplier")
    .optional()
    .meta({ description: "whom it is bought from, as named in studio.md" }),
  reference: textField()
    .optional()
    .meta({ description: "the supplier's own number; the client never sees it" }),
  lead: durationField()
    .optional()
    .meta({
      description:
        "how long this one takes from the order until it is there; without it as long as its supplier's `lead`",
      examples: ["8 weeks"],
    }),
  price: z
    .strictObject({
      trade: amountField()
        .optional()
        .meta({ description: "what the studio pays", examples: ["38.00"] }),
      client: amountField()
        .optional()
        .meta({
          description: "without it: trade price times the studio's markup",
          examples: ["72.00"],
        }),
      per: wordField(["yard", "metre", "roll", "each"], {
        meter: "metre",
        yd: "yard",
        m: "metre",
      }).meta({ description: "what the price is for" }),
      on: dateField().optional().meta({ description: "when the price was given" }),
      bolt: z
        .strictObject({
          length: positiveLengthField().meta({
            description: "length of a whole bolt",
            examples: ["30 yd"],
          }),
          trade: amountField().meta({
            description: "trade price by the bolt, for the same unit",
            examples: ["29.00"],
          }),
        })
        .optional()
        .meta({ description: "a better price for a whole bolt" }),
      minimum: positiveLengthField()
        .optional()
        .meta({
          description:
            "the shortest length that is sold; it holds for all makers together, who divide it",
          examples: ["2 yd"],
        }),
      "sold-by": soldByField()
        .optional()
        .meta({
          description:
            "the step that it is cut in: a length, `repeat` for whole repeats, or `bolt` for whole bolts only, which several makers divide where one holds their lengths",
          examples: ["1/4 yd", "0.1 m", "repeat", "bolt"],
        }),
    })
    .optional()
    .meta({ description: "what it costs" }),
  roll: z
    .strictObject({
      width: positiveLengthField().meta({
        description: "the roll's width, trimmed",
        examples: [`20 1/2"`],
      }),
      length: positiveLengthField().meta({ description: "the roll's length", examples: ["11 yd"] }),
    })
    .optional()
    .meta({ description: "a wallcovering's roll" }),
  remnant: z
    .array(
      z.strictObject({
        length: positiveLengthField().meta({
          description: "how long it is",
          examples: ["1 3/4 yd"],
        }),
        width: positiveLengthField()
          .optional()
          .meta({ description: "how wide; the cloth's width where nothing is said" }),
        lot: textField()
          .optional()
          .meta({ description: "its dye lot", examples: ["0123"] }),
      }),
    )
    .optional()
    .meta({ description: "pieces of it that the studio has" }),
  sample: z
    .strictObject({
      fee: amountField()
        .optional()
        .meta({ description: "what the sample costs", examples: ["2.00"] }),
      credited: yesNoField()
        .optional()
        .meta({ description: "yes: the fee is taken off the order" }),
      ordered: dateField().optional().meta({ description: "when it was ordered" }),
      arrived: dateField().optional().meta({ description: "when it came" }),
      approved: dateField().optional().meta({ description: "when the client approved it" }),
      returned: dateField().optional().meta({ description: "when it went back" }),
    })
    .optional()
    .meta({ description: "the sample and where it is" }),
  "up-is": wordField(["up", "down", "left", "right"])
    .optional()
    .meta({ description: "where the photograph has the top of the motifs" }),
  contrast: ratioField()
    .optional()
    .meta({
      description:
        "contrast of the pattern by hand, as a ratio of lightness; wins over what is measured",
      examples: ["2.5"],
    }),
  private: textField().optional().meta({ description: "for the studio alone" }),
});

export type ClothFields = z.output<typeof clothSchema>;
