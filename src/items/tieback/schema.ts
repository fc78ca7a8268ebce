import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { lengthField, positiveLengthField } from "../../fields/lengthField.ts";
import { refField, textField, wordField } from "../../fields/plainFields.ts";
import { lowerTrimField } from "../common/board/boardFields.ts";
import { weltParts } from "../common/welt/weltField.ts";

/** A tie-back: a stiff band that holds a curtain to the wall; `count: 2` for a pair of curtains. */
export const tiebackSchema = z.strictObject({
  tieback: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the cloth of its face" }),
  back: refField("a cloth")
    .optional()
    .meta({ description: "the side to the wall; the same cloth where nothing is said" }),
  shape: wordField(["straight", "shaped"], { crescent: "shaped", curved: "shaped" })
    .optional()
    .meta({
      description:
        "a straight band, or a shaped one that hangs lower in its middle; shaped where nothing is said",
    }),
  length: positiveLengthField()
    .optional()
    .meta({ description: "end to end, measured round the curtain with a tape" }),
  depth: positiveLengthField().optional().meta({ description: "in its middle" }),
  "end-depth": positiveLengthField()
    .optional()
    .meta({ description: "at its ends, of a shaped one" }),
  sag: lengthField()
    .optional()
    .meta({ description: "how far the middle of a shaped one hangs below its ends" }),
  "hook-height": positiveLengthField()
    .optional()
    .meta({ description: "from the floor to its hook on the wall; about a third of the drop up" }),
  interlining: refField("an interlining")
    .optional()
    .meta({ description: "soft layer over the stiffening" }),
  motif: wordField(["centred", "as-it-falls"])
    .optional()
    .meta({ description: "centred where the cloth has a motif and nothing is said" }),
  edge: z
    .strictObject({
      ...weltParts({
        welt: "cloth of the welt",
        cord: "thickness of its cord",
        cut: "bias where nothing is said",
      }),
    })
    .optional()
    .meta({ description: "welt round its edge" }),
  trim: lowerTrimField(),
});

export type TiebackFields = z.output<typeof tiebackSchema>;
