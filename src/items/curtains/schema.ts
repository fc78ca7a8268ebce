import { z } from "zod";
import { fullnessField } from "../../fields/factorFields.ts";
import { itemBase } from "../../fields/itemBase.ts";
import { lengthField, positiveLengthField } from "../../fields/lengthField.ts";
import {
  countField,
  refField,
  textField,
  wordField,
  yesNoField,
} from "../../fields/plainFields.ts";

export const HEADINGS = [
  "pinch-pleat",
  "pencil-pleat",
  "goblet",
  "eyelet",
  "tab",
  "slot",
  "s-fold",
] as const;

/** Curtains (drapery) at a window, one or a pair. */
export const curtainsSchema = z.strictObject({
  curtains: textField().meta({ description: "their title, for example the window's name" }),
  ...itemBase,
  cloth: refField("a cloth").meta({ description: "the cloth of their face" }),
  mount: wordField(["inside", "outside"])
    .optional()
    .meta({ description: "inside the recess, or outside it; outside where nothing is said" }),
  "hangs-from": wordField(["pole", "track"]).optional().meta({
    description:
      "a pole, with the heading under its rings, or a track, which the heading covers; where nothing is said a track inside a recess and for s-folds, else a pole",
  }),
  pole: positiveLengthField().optional().meta({
    description:
      "length of the pole or track between its finials or ends; else the opening and what stands beyond it at each side",
  }),
  "pole-height": positiveLengthField().optional().meta({
    description: "from the floor to the pole's middle, or to the top of a heading on a track",
  }),
  drop: positiveLengthField()
    .optional()
    .meta({ description: "finished drop, from heading top to hem" }),
  to: wordField(["floor", "sill", "below-sill"])
    .optional()
    .meta({ description: "where the hem ends, instead of a drop" }),
  heading: wordField(HEADINGS, {
    "triple-pleat": "pinch-pleat",
    grommet: "eyelet",
    pinch: "pinch-pleat",
    pencil: "pencil-pleat",
    "goblet-pleat": "goblet",
    tabs: "tab",
    "tab-top": "tab",
    "rod-pocket": "slot",
    wave: "s-fold",
  }).meta({ description: "how the top is made" }),
  fullness: fullnessField().optional().meta({
    description:
      "flat width over the width to be covered; the usual one of its heading where nothing is said",
  }),
  pleats: countField(2, 500)
    .optional()
    .meta({ description: "pinch or goblet pleats of one curtain; else by the widest space" }),
  panels: wordField(["pair", "single", "single-left", "single-right"])
    .optional()
    .meta({ description: "a pair where nothing is said" }),
  lining: refField("a lining")
    .optional()
    .meta({ description: "its lining; unlined where nothing is said" }),
  blackout: refField("a lining")
    .optional()
    .meta({ description: "a layer between face and lining that keeps out light" }),
  interlining: refField("an interlining")
    .optional()
    .meta({ description: "a layer between face and lining; none where nothing is said" }),
  "half-widths": yesNoField()
    .optional()
    .meta({ description: "no: whole widths only; a pair may else have half widths" }),
  railroad: yesNoField()
    .optional()
    .meta({ description: "yes: the cloth runs sideways, so that the widths need no joins" }),
  "tab-match": wordField(["alike", "as-it-falls"]).optional().meta({
    description:
      "tabs of patterned cloth: all alike with a motif or stripe in their middle, or as the pattern falls, which takes less; as it falls where nothing is said",
  }),
  "door-rod": wordField(["fixed", "rising"], { portiere: "rising" }).optional().meta({
    description:
      "at a door: a fixed pole over it, or a portière rod on the door itself that lifts the curtain as it opens",
  }),
  "door-hinge": wordField(["left", "right"]).optional().meta({
    description: "at a door: the side of its hinges, seen from the room; the curtain stacks there",
  }),
  edge: z
    .strictObject({
      trim: refField("a trim").optional().meta({ description: "the trim's card" }),
      where: wordField(["leading", "all-round", "hem"]).optional().meta({
        description:
          "along the leading edges, all round, or along the hem; the leading edges where nothing is said",
      }),
    })
    .optional()
    .meta({ description: "a trim sewn to the edges" }),
  hem: lengthField().optional().meta({
    description:
      "cloth turned up for the hem, both turns together, in place of the maker's or studio's allowance",
  }),
  "heading-turn": lengthField()
    .optional()
    .meta({ description: "cloth turned down for the heading, in place of the allowance" }),
  return: lengthField()
    .optional()
    .meta({ description: "from the front of the pole or track back to the wall, at each end" }),
  overlap: lengthField()
    .optional()
    .meta({ description: "how far the two curtains cross in the middle, in all" }),
  "stack-back": lengthField()
    .optional()
    .meta({ description: "what both curtains together take up drawn back" }),
  "lowest-motif": lengthField()
    .optional()
    .meta({ description: "from the finished hem up to the middle of the lowest whole motif" }),
});

export type CurtainsFields = z.output<typeof curtainsSchema>;
