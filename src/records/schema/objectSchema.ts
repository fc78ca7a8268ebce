import { z } from "zod";
import { amountField } from "../../fields/amountField.ts";
import { dateField } from "../../fields/dateField.ts";
import { sizeField } from "../../fields/lengthField.ts";
import { refField, textField, wordField, yesNoField } from "../../fields/plainFields.ts";
import { declaredColoursSchema, photoSchema } from "./shared.ts";

/** What an object looks like when it is drawn. */
export const OBJECT_SHAPES = [
  "rug",
  "picture",
  "chair",
  "table",
  "chest",
  "lamp",
  "stove",
  "seat",
  "mirror",
  "box",
  "bed",
] as const;

/** A thing that is placed but not made: a rug, a picture, a stove. */
export const objectSchema = z.strictObject({
  object: textField().meta({ description: "its name", examples: ["Tiled stove"] }),
  shape: wordField(OBJECT_SHAPES)
    .optional()
    .meta({ description: "how it is drawn; a box where nothing is said" }),
  photo: photoSchema
    .optional()
    .meta({ description: "its photograph; its colours are measured in it" }),
  colours: declaredColoursSchema
    .optional()
    .meta({ description: "its colours by hand, while there is no photograph" }),
  size: z
    .union([sizeField(3), sizeField(2)])
    .optional()
    .meta({
      description: "width x depth x height; a rug or a picture: width x height",
      examples: [`30" x 20" x 72"`, `5' x 8'`],
    }),
  round: yesNoField().optional().meta({
    description:
      "yes: it is round from above, as a round table is; an oval where its width and its depth differ",
  }),
  mattress: sizeField(3)
    .optional()
    .meta({
      description:
        "of a bed, measured made up: width x length x height of its top above the floor; covers and skirts are cut to it",
      examples: [`60" x 80" x 25"`],
    }),
  owner: refField("an owner")
    .optional()
    .meta({ description: "client, when it is the client's own" }),
  stays: yesNoField()
    .optional()
    .meta({ description: "yes: it stays in the room whatever else changes" }),
  weight: textField()
    .optional()
    .meta({ description: "for what hangs", examples: ["18 kg", "40 lb"] }),
  price: z
    .strictObject({
      trade: amountField().optional().meta({ description: "what the studio pays" }),
      client: amountField()
        .optional()
        .meta({ description: "what the client pays; else trade price times markup" }),
      on: dateField().optional().meta({ description: "when the price was given" }),
    })
    .optional()
    .meta({ description: "what it costs, where it is bought" }),
  supplier: refField("a supplier")
    .optional()
    .meta({ description: "whom it is bought from, as named in studio.md" }),
  private: textField().optional().meta({ description: "for the studio alone" }),
});

export type ObjectFields = z.output<typeof objectSchema>;
