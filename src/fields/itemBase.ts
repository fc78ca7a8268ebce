import { z } from "zod";
import { amountField } from "./amountField.ts";
import { dateField } from "./dateField.ts";
import { placementField } from "./placementField.ts";
import {
  countField,
  listField,
  refField,
  textField,
  wordField,
  yesNoField,
} from "./plainFields.ts";

/** A thing that is bought ready with an item, as the item's file names it. */
export type HardwareFields = NonNullable<z.output<typeof itemBase.hardware>>[number];

/** What every kind of item may say, beside its own fields. */
export const itemBase = {
  at: placementField().optional().meta({ description: "where it is" }),
  count: countField().optional().meta({
    description:
      "how many alike; one where nothing is said, and always of a wall that is papered, panelled or painted",
  }),
  maker: refField("a maker").optional().meta({
    description: "who makes it, as named in studio.md; else the first maker of this kind",
  }),
  making: amountField().optional().meta({
    description:
      "a charge agreed with the maker for the whole item, however many there are of it, instead of the maker's rate; the markup on making comes on it",
  }),
  phase: countField(1, 9).optional().meta({ description: "the phase that it is bought in" }),
  after: listField(refField("an item"))
    .optional()
    .meta({ description: "items that must be done before it; none of them may be bought later" }),
  options: z
    .array(
      z.looseObject({
        option: textField().meta({
          description: "what the client calls it; below it stand the keys in which it differs",
          examples: ["In damask"],
        }),
        answer: wordField(["open", "yes", "no"]).optional().meta({
          description:
            "what the client answered; open where nothing is said, and then nothing is ordered",
        }),
      }),
    )
    .optional()
    .meta({
      description:
        "ways to make it, shown side by side; the first that is not refused is drawn and priced until one has the answer yes",
    }),
  "second-hand": yesNoField().optional().meta({
    description:
      "yes: it comes ready made and is only altered: its cloth is not bought, the work is",
  }),
  owner: refField("an owner").optional().meta({
    description:
      "client, when the cloth that it is made of is the client's own: it is made up and not bought, its lining, welt and trim are; for a piece of the client's that is covered anew write existing: yes",
  }),
  existing: yesNoField()
    .optional()
    .meta({ description: "yes: the piece is there already and stays; we re-cover or re-hang it" }),
  touches: listField(refField("an item"))
    .optional()
    .meta({ description: "items or objects that it stands against" }),
  note: textField()
    .optional()
    .meta({ description: "for the maker; printed on the specification sheet" }),
  private: textField()
    .optional()
    .meta({ description: "for the studio alone; never printed for a client or a maker" }),
  hardware: listField(
    z.strictObject({
      what: textField().meta({ description: "what it is", examples: ["brass pole"] }),
      supplier: refField("a supplier")
        .optional()
        .meta({ description: "whom it is bought from, as named in studio.md" }),
      trade: amountField()
        .optional()
        .meta({
          description: "what the studio pays for one; 0 where the agreed making holds it",
          examples: ["85.00"],
        }),
      client: amountField()
        .optional()
        .meta({
          description: "what the client pays for one; else trade price times markup",
          examples: ["119.00"],
        }),
      count: countField().optional().meta({
        description:
          "how many in all; one where nothing is said, however many there are of the item",
      }),
      ordered: dateField().optional().meta({ description: "when it was ordered" }),
      arrived: dateField().optional().meta({ description: "when it came" }),
    }),
  )
    .optional()
    .meta({
      description:
        "pole, track, brackets, rails and whatever else is bought ready with the item, such as a cushion's pad: what is not written here is not charged",
    }),
} as const;
