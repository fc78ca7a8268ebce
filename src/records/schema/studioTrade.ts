import { z } from "zod";
import { rateField } from "../../fields/amountField.ts";
import { closedField } from "../../fields/closedField.ts";
import { durationField } from "../../fields/durationField.ts";
import {
  countField,
  listField,
  nameField,
  percentField,
  textField,
  yesNoField,
} from "../../fields/plainFields.ts";
import { workField } from "../../fields/workField.ts";

/** A lead in whole weeks as a bare number: an older way to say it, which files still have. */
function weeksField() {
  return countField(0, 104)
    .optional()
    .meta({ description: "the same as lead, in whole weeks; lead wins", examples: ["6"] });
}

/** Workrooms, upholsterers, paperhangers and fitters; `kinds` are what they can make, where they are known. */
export function makersField<A extends z.ZodType>(kinds: readonly string[], ofMaker: A) {
  return z
    .record(
      nameField("a maker").meta({ examples: ["workroom"] }),
      z.strictObject({
        name: textField().meta({ description: "as it stands on the sheets" }),
        makes: listField(workField(kinds)).meta({
          description: "kinds of item, or fitting, hanging, painting",
          examples: ["[curtains, blind, cushion]"],
        }),
        address: textField().optional().meta({ description: "where the cloth is sent" }),
        phone: textField().optional().meta({ description: "for the studio" }),
        email: textField().optional().meta({ description: "for the studio" }),
        rates: z
          .record(workField(kinds).meta({ examples: ["curtains"] }), rateField())
          .optional()
          .meta({
            description:
              "what the maker is paid, by kind of item or work: per item, width, drop, roll, yard, metre, square-foot or square-metre, as the kind can be counted (you are told where it cannot), per item where nothing is said; fitting per hour",
          }),
        lead: durationField()
          .optional()
          .meta({
            description:
              "how long the making takes, from the day all cloth is there; the schedule is reckoned with it",
            examples: ["6 weeks"],
          }),
        weeks: weeksField(),
        closed: listField(closedField())
          .optional()
          .meta({
            description: "days on which this maker does not work, beside the studio's",
            examples: ["[2027-08-02 to 2027-08-20 summer closing]"],
          }),
        allowances: ofMaker
          .optional()
          .meta({ description: "this maker's own allowances; they win over the studio's" }),
      }),
    )
    .optional()
    .meta({
      description: "workrooms, upholsterers, paperhangers and fitters, by a short name of yours",
    });
}

/** Whom the studio buys from. */
export function suppliersField() {
  return z
    .record(
      nameField("a supplier").meta({ examples: ["north-mill"] }),
      z.strictObject({
        name: textField().meta({ description: "as it stands on orders" }),
        disclose: yesNoField()
          .optional()
          .meta({ description: "yes: the client may read who it is" }),
        account: textField().optional().meta({ description: "the studio's account there" }),
        address: textField().optional().meta({ description: "for the studio" }),
        email: textField().optional().meta({ description: "for the studio" }),
        phone: textField().optional().meta({ description: "for the studio" }),
        freight: percentField()
          .optional()
          .meta({
            description:
              "freight as a share of the trade price of all that comes from this supplier: cloth, hardware, objects",
            examples: ["4 %"],
          }),
        lead: durationField()
          .optional()
          .meta({
            description:
              "how long it takes from the order until the cloth is there; a card's own `lead` wins",
            examples: ["3 weeks"],
          }),
        weeks: weeksField(),
        closed: listField(closedField())
          .optional()
          .meta({
            description: "days on which this supplier sends nothing, beside the studio's",
            examples: ["[2026-12-24 to 2027-01-01]"],
          }),
      }),
    )
    .optional()
    .meta({ description: "whom the studio buys from, by a short name of yours" });
}
