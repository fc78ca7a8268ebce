import { z } from "zod";
import { amountField, signedAmountField } from "../../fields/amountField.ts";
import { dateField } from "../../fields/dateField.ts";
import { dueField } from "../../fields/dueField.ts";
import { instalmentField } from "../../fields/instalmentField.ts";
import { positiveLengthField } from "../../fields/lengthField.ts";
import { listField, refField, textField, wordField } from "../../fields/plainFields.ts";
import { discountField, feeField, fittingFeeField } from "./feeFields.ts";
import { receiptsField } from "./receiptsField.ts";

export const PROJECT_STATES = [
  "enquiry",
  "proposed",
  "approved",
  "ordered",
  "making",
  "fitted",
  "archived",
] as const;

/** The project's card: the client, what was agreed, what was paid and what arrived. */
export const projectSchema = z.strictObject({
  project: textField().meta({ description: "its name on the documents", examples: ["Quay House"] }),
  client: z
    .strictObject({
      name: textField().meta({ description: "as it stands on documents" }),
      address: textField().optional().meta({ description: "where the rooms are" }),
      email: textField().optional().meta({ description: "for the studio alone" }),
      phone: textField().optional().meta({ description: "for the studio alone" }),
    })
    .meta({ description: "the client" }),
  delivery: textField()
    .optional()
    .meta({ description: "where makers and suppliers deliver, when it is not the studio" }),
  status: wordField(PROJECT_STATES).meta({ description: "how far it has come" }),
  revision: textField()
    .optional()
    .meta({ description: "the state of the proposal that is being written", examples: ["B"] }),
  dated: dateField()
    .optional()
    .meta({ description: "the date on the documents; without it the day of the build" }),
  fitting: dateField()
    .optional()
    .meta({ description: "the day on which it is fitted; the schedule is reckoned back from it" }),
  fees: z
    .strictObject({
      design: feeField.optional().meta({ description: "for the scheme", examples: ["900"] }),
      survey: feeField.optional().meta({ description: "for the visit and the measures" }),
      management: feeField.optional().meta({ description: "for ordering and oversight" }),
      fitting: fittingFeeField.optional().meta({
        description:
          "for fitting; a sum or a share is taken to be what the fitter is paid as well, hours without a rate to be the fitter's own and marked up",
      }),
    })
    .optional()
    .meta({ description: "the studio's own fees: each a sum, hours at a rate, or a share" }),
  discounts: z
    .array(discountField)
    .optional()
    .meta({
      description:
        "what comes off the client's prices; on the proposal a line each below the fees, in the total before the reserve",
      examples: ["[{ what: For a second house, share: 5 %, of: goods }]"],
    }),
  "by-the-bolt": listField(refField("a cloth")).optional().meta({
    description: "cloths that are bought as whole bolts for this project, at the bolt's price",
  }),
  budget: amountField()
    .optional()
    .meta({
      description:
        "what the client wants to spend on the whole, fees and reserve with it; without it the rooms' budgets together, where each has one",
      examples: ["6500"],
    }),
  "prices-hold": dateField().optional().meta({ description: "until when the prices hold" }),
  rooms: listField(refField("a room"))
    .optional()
    .meta({
      description: "the rooms in their order; else by file name",
      examples: ["[dining-room, snug]"],
    }),
  decisions: listField(textField())
    .optional()
    .meta({ description: "what the client is asked to decide" }),
  instalments: z
    .array(
      z
        .strictObject({
          deposit: instalmentField()
            .optional()
            .meta({ description: "paid first: a share, a sum or rest", examples: ["50%"] }),
          interim: instalmentField()
            .optional()
            .meta({ description: "paid between: a share, a sum or rest", examples: ["25%"] }),
          balance: instalmentField()
            .optional()
            .meta({ description: "paid last: a share, a sum or rest", examples: ["rest"] }),
          due: dueField().meta({
            description: "approval, order, fitting, or a date",
            examples: ["approval"],
          }),
        })
        // One of them in each part; a starting file shows a part for each.
        .meta({ either: ["deposit", "interim", "balance"] }),
    )
    .optional()
    .meta({
      description: "what is paid when",
      examples: ["[{ deposit: 50%, due: approval }, { balance: rest, due: fitting }]"],
    }),
  approvals: z
    .array(
      z.strictObject({
        revision: textField().meta({ description: "which state was approved", examples: ["B"] }),
        by: textField().meta({ description: "who approved it" }),
        on: dateField().meta({ description: "when" }),
        total: amountField()
          .optional()
          .meta({
            description:
              "the total that was approved, with tax; the account holds today's total against it",
            examples: ["6480.00"],
          }),
      }),
    )
    .optional()
    .meta({ description: "what the client approved" }),
  payments: z
    .array(
      z.strictObject({
        amount: signedAmountField().meta({
          description: "how much; with a minus sign before it what you gave back",
        }),
        on: dateField().meta({ description: "when" }),
        what: textField()
          .optional()
          .meta({ description: "for what", examples: ["deposit"] }),
      }),
    )
    .optional()
    .meta({ description: "what the client paid" }),
  "reserve-used": z
    .array(
      z.strictObject({
        what: textField().meta({
          description: "what was unforeseen",
          examples: ["Plasterer at the bay"],
        }),
        amount: amountField().meta({
          description: "what the client pays for it, as other client prices are written",
          examples: ["120.00"],
        }),
        trade: amountField()
          .optional()
          .meta({ description: "what the studio pays for it", examples: ["95.00"] }),
        on: dateField().meta({ description: "when; it counts from that day on" }),
        kind: wordField(["goods", "services"])
          .optional()
          .meta({ description: "as what it is taxed; as a service where nothing is said" }),
      }),
    )
    .optional()
    .meta({
      description:
        "what was taken out of the reserve (`contingency` in studio.md), and is charged; what is left of it stands in the total until `status: fitted`, and is not charged then",
    }),
  orders: z
    .array(
      z.strictObject({
        cloth: refField("a cloth").meta({ description: "the cloth's card" }),
        length: positiveLengthField().meta({
          description: "how much was ordered; of rolls their lengths together",
          examples: ["12 1/2 yd"],
        }),
        on: dateField().meta({ description: "when" }),
        supplier: refField("a supplier")
          .optional()
          .meta({ description: "from whom, when it is not the card's own supplier" }),
        number: textField()
          .optional()
          .meta({ description: "the order's number", examples: ["0417"] }),
      }),
    )
    .optional()
    .meta({ description: "what was ordered" }),
  receipts: receiptsField,
  private: textField().optional().meta({ description: "for the studio alone" }),
});

export type ProjectFields = z.output<typeof projectSchema>;
