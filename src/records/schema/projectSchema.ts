import { z } from "zod";
import { amountField } from "../../fields/amountField.ts";
import { positiveLengthField } from "../../fields/lengthField.ts";
import { dateField, listField, percentField, refField, textField, wordField } from "../../fields/plainFields.ts";

export const PROJECT_STATES = ["enquiry", "proposed", "approved", "ordered", "making", "fitted", "archived"] as const;

/** A share (50%), a sum, or the word `rest`. */
const instalmentPart = z.union([wordField(["rest"]), percentField(), amountField()]);

/** The project's card: the client, what was agreed, what was paid and what arrived. */
export const projectSchema = z.strictObject({
  project: textField().meta({ description: "its name on the documents" }),
  client: z.strictObject({
    name: textField(),
    address: textField().optional(),
    email: textField().optional(),
    phone: textField().optional(),
  }),
  delivery: textField().optional().meta({ description: "where makers and suppliers deliver, when it is not the studio" }),
  status: wordField(PROJECT_STATES),
  revision: textField().optional(),
  dated: dateField().optional().meta({ description: "the date on the documents; without it the day of the build" }),
  fitting: dateField().optional(),
  fees: z
    .strictObject({ design: amountField().optional(), survey: amountField().optional(), management: amountField().optional(), fitting: amountField().optional() })
    .optional(),
  budget: amountField().optional(),
  "prices-hold": dateField().optional().meta({ description: "until when the prices hold" }),
  rooms: listField(refField("a room")).optional().meta({ description: "the rooms in their order; else by file name" }),
  decisions: listField(textField()).optional().meta({ description: "what the client is asked to decide" }),
  instalments: z
    .array(
      z.strictObject({
        deposit: instalmentPart.optional(),
        interim: instalmentPart.optional(),
        balance: instalmentPart.optional(),
        due: textField().meta({ description: "approval, order, fitting, or a date" }),
      }),
    )
    .optional(),
  approvals: z.array(z.strictObject({ revision: textField(), by: textField(), on: dateField() })).optional(),
  payments: z.array(z.strictObject({ amount: amountField(), on: dateField(), what: textField().optional() })).optional(),
  orders: z.array(z.strictObject({ cloth: refField("a cloth"), length: positiveLengthField(), on: dateField(), supplier: refField("a supplier").optional(), number: textField().optional() })).optional(),
  receipts: z
    .array(
      z.strictObject({
        cloth: refField("a cloth"),
        lot: textField(),
        maker: refField("a maker").optional(),
        length: positiveLengthField(),
        width: positiveLengthField().optional(),
        repeat: positiveLengthField().optional(),
        on: dateField().optional(),
        flaws: z.array(z.strictObject({ from: positiveLengthField(), length: positiveLengthField(), what: textField().optional() })).optional(),
      }),
    )
    .optional(),
  private: textField().optional().meta({ description: "for the studio alone" }),
});

export type ProjectFields = z.output<typeof projectSchema>;
