import { z } from "zod";
import { dateField } from "../../fields/dateField.ts";
import { lengthField, positiveLengthField } from "../../fields/lengthField.ts";
import { refField, textField, wordField } from "../../fields/plainFields.ts";

/** What came for a project, lot by lot, as it was measured; what went back; what is released to cut. */
export const receiptsField = z
  .array(
    z.strictObject({
      cloth: refField("a cloth").meta({ description: "the cloth's card" }),
      lot: textField().meta({
        description:
          "the dye lot, as the ticket has it; where no one lot holds all that a maker cuts, each room is planned from one",
        examples: ["0123"],
      }),
      maker: refField("a maker")
        .optional()
        .meta({ description: "with whom it lies, as named in studio.md" }),
      length: positiveLengthField().meta({
        description: "its length as measured; of rolls their lengths together",
        examples: ["12 1/2 yd"],
      }),
      width: positiveLengthField().optional().meta({ description: "its usable width as measured" }),
      repeat: positiveLengthField()
        .optional()
        .meta({
          description:
            "its repeat along the length as measured; lengths of one lot that repeat otherwise are not planned on together",
          examples: [`25 1/4"`],
        }),
      "first-motif": lengthField()
        .optional()
        .meta({
          description:
            "from its cut end up to the middle of the first motif of the column nearest the left selvedge; without it a repeat is kept back, since the pattern may begin anywhere",
          examples: [`9 1/2"`],
        }),
      on: dateField().optional().meta({ description: "when it came" }),
      washed: dateField().optional().meta({
        description:
          "of a cloth that is washed before it is cut: when it was. All measures of this receipt, its flaws too, are then those after washing; until then it is not for cutting",
      }),
      flaws: z
        .array(
          z.strictObject({
            from: positiveLengthField().meta({
              description: "from the bolt's outer end to the flaw",
              examples: ["4 yd"],
            }),
            length: positiveLengthField().meta({
              description: "how long the flaw is",
              examples: [`6"`],
            }),
            "from-left": lengthField().optional().meta({
              description:
                "from the left selvedge to the flaw; it reaches from selvedge to selvedge where nothing is said",
            }),
            width: positiveLengthField().optional().meta({
              description: "how wide it is; to the right selvedge where nothing is said",
            }),
            what: textField()
              .optional()
              .meta({ description: "what is wrong", examples: ["slub"] }),
          }),
        )
        .optional()
        .meta({ description: "what must be cut around" }),
      returned: z
        .strictObject({
          on: dateField().meta({ description: "when it went back" }),
          for: wordField(["replacement", "credit"]).optional().meta({
            description:
              "whether the supplier sends it anew under the same order, so where nothing is said, or credits its price: then it no longer counts as ordered",
          }),
          because: textField()
            .optional()
            .meta({ description: "what was wrong with it", examples: ["another shade"] }),
        })
        .optional()
        .meta({
          description:
            "that it went back to its supplier: nothing is planned on it, and what comes in its place is a receipt of its own",
          examples: ["{ on: 2026-12-01, because: another shade than the sample }"],
        }),
      released: z
        .strictObject({
          by: textField().meta({ description: "who looked at the plan and released it" }),
          on: dateField().meta({ description: "when" }),
          plan: textField()
            .optional()
            .meta({
              description:
                "the plan's number, as printed on the sheet: a plan that has changed since is not released",
              examples: ["4KQ7-2B"],
            }),
        })
        .optional()
        .meta({
          description:
            "the studio's word that this cloth may be cut by its plan; until then the sheet says NOT FOR CUTTING",
          examples: ["{ by: Ada Wren, on: 2026-12-01, plan: 4KQ7-2B }"],
        }),
    }),
  )
  .optional()
  .meta({
    description: "what came; until then lots are unknown, and cutting plans are not for cutting",
  });
