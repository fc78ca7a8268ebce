import { z } from "zod";
import { itemBase } from "../../fields/itemBase.ts";
import { lengthField, positiveLengthField } from "../../fields/lengthField.ts";
import { countField, refField, textField, wordField } from "../../fields/plainFields.ts";
import { wallsField } from "../../fields/wallsField.ts";

/** Wallpaper hung in whole strips on walls, on one part of a wall or on the ceiling. */
export const wallpaperSchema = z.strictObject({
  wallpaper: textField().meta({ description: "its title" }),
  ...itemBase,
  cloth: refField("a wallcovering").meta({ description: "the wallcovering's card" }),
  on: z
    .union([
      wallsField(["walls", "ceiling"]),
      z.strictObject({
        wall: refField("a wall").meta({ description: "the wall" }),
        "from-left": lengthField().optional().meta({
          description: "from the wall's left end, seen from inside, to the left edge of the part",
        }),
        width: positiveLengthField()
          .optional()
          .meta({ description: "width of the part; the whole wall where nothing is said" }),
        breast: wordField(["face", "face-and-sides"])
          .optional()
          .meta({ description: "the wall's chimney breast alone: its face, or its sides too" }),
      }),
    ])
    .meta({ description: "walls, the ceiling, one wall or a list of walls, or a part of one" }),
  height: positiveLengthField()
    .optional()
    .meta({ description: "height to paper; the room's height where nothing is said" }),
  "strips-run": wordField(["north-south", "east-west"]).optional().meta({
    description: "of a ceiling, which way its strips run; the shorter way where nothing is said",
  }),
  "spare-rolls": countField(0, 20)
    .optional()
    .meta({ description: "rolls beyond what is hung, for damage and mending" }),
  borders: z
    .array(
      z.strictObject({
        cloth: refField("a wallcovering").meta({ description: "the border's card, with its roll" }),
        at: wordField(["ceiling", "rail", "skirting"], {
          cornice: "ceiling",
          "dado-rail": "rail",
          "chair-rail": "rail",
          dado: "rail",
        }).meta({
          description: "under the ceiling line, at a rail's height, or on the skirting (baseboard)",
        }),
        height: lengthField().optional().meta({
          description: "from the floor to the border's lower edge; needed at a rail",
        }),
      }),
    )
    .optional()
    .meta({ description: "borders hung over the paper, each all along the same walls" }),
  hanging: wordField(["in-turn", "two-stocks"]).optional().meta({
    description:
      "a half-drop cut in turn from one roll, or odd and even strips from two stocks of rolls",
  }),
});

export type WallpaperFields = z.output<typeof wallpaperSchema>;
