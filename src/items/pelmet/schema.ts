import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { refField, textField, wordField, yesNoField } from "../../fields/plainFields.ts";
import { boardFields, lowerTrimField } from "../common/board/boardFields.ts";
import { lowerEdgeFields } from "../common/board/lowerEdgeFields.ts";
import { weltParts } from "../common/welt/weltField.ts";

/** A pelmet (cornice): a stiff front over a window, covered with cloth. */
export const pelmetSchema = z.strictObject({
  pelmet: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the cloth of its front" }),
  ...boardFields({
    board: "length of its front",
    depth: "its depth where it is shortest; else a share of curtain-drop",
  }),
  ...lowerEdgeFields,
  stiffening: wordField(["buckram", "board"], { plywood: "board", wood: "board" }).optional().meta({
    description:
      "pelmet buckram on a board, or a box of thin board under padding; buckram where nothing is said",
  }),
  padding: refField("an interlining")
    .optional()
    .meta({ description: "soft layer between stiffening and cloth" }),
  lining: refField("a lining")
    .optional()
    .meta({ description: "its lining; unlined where nothing is said" }),
  railroad: yesNoField()
    .optional()
    .meta({ description: "yes: the cloth runs sideways, so that it needs no joins" }),
  motif: wordField(["centred", "as-it-falls"])
    .optional()
    .meta({ description: "centred on the front where the cloth has a motif and nothing is said" }),
  edge: z
    .strictObject({
      ...weltParts({
        welt: "cloth of the welt",
        cord: "thickness of its cord",
        cut: "bias where nothing is said",
      }),
      where: wordField(["lower", "both"])
        .optional()
        .meta({ description: "along the lower edge, or both edges; lower where nothing is said" }),
    })
    .optional()
    .meta({ description: "welt along its edges" }),
  trim: lowerTrimField(),
});

export type PelmetFields = z.output<typeof pelmetSchema>;
