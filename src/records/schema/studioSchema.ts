import { z } from "zod";
import { acuityField } from "../../fields/acuityField.ts";
import { dateField } from "../../fields/dateField.ts";
import {
  colourField,
  currencyField,
  listField,
  percentField,
  pictureField,
  textField,
  wordField,
} from "../../fields/plainFields.ts";
import { commonItemsField } from "./commonItems.ts";
import { freightField, markupField, taxField } from "./studioMoney.ts";
import { makersField, suppliersField } from "./studioTrade.ts";
import {
  closedDaysField,
  largePrintField,
  paintField,
  phasesField,
  scheduleField,
} from "./studioUsage.ts";

/**
 * The studio's own card. `allowances` is composed from the kinds of item (records/ takes their table as a value), so its schema is
 * a parameter here; `kinds` are the kinds that a maker can make, where they are known.
 */
export function studioSchema<A extends z.ZodType>(
  allowances: A,
  kinds: readonly string[] = [],
  ofMaker: A = allowances,
) {
  return z.strictObject({
    studio: textField().meta({
      description: "the studio's name, as it stands on documents",
      examples: ["Larkfield Rooms"],
    }),
    address: textField().optional().meta({ description: "for the letterhead" }),
    phone: textField().optional().meta({ description: "for the letterhead" }),
    email: textField().optional().meta({ description: "for the letterhead" }),
    web: textField().optional().meta({ description: "for the letterhead" }),
    mark: pictureField()
      .optional()
      .meta({ description: "a picture of the studio's mark, beside this file" }),
    "mark-colour": colourField().optional().meta({ description: "the one accent of its pages" }),
    language: wordField(["en-US", "en-GB"]).meta({
      description: "the words and spelling of the documents; files may use either",
    }),
    units: wordField(["inches", "centimetres"], {
      inch: "inches",
      centimeters: "centimetres",
      cm: "centimetres",
      metric: "centimetres",
    }).meta({ description: "what lengths are printed in; files may use either" }),
    currency: currencyField().meta({ description: "a code of ISO 4217: USD, GBP, EUR" }),
    paper: wordField(["tabloid", "a3"]).meta({
      description: "the boards' sheet; letters and sheets follow: letter with tabloid, A4 with A3",
    }),
    tax: taxField(),
    markup: markupField(),
    contingency: percentField()
      .optional()
      .meta({
        description:
          "kept in reserve for the unforeseen, as a share of all else that the client pays, with its tax, and itself untaxed; what is not used of it is not charged in the last account",
        examples: ["5 %"],
      }),
    freight: freightField(),
    allowances: allowances
      .optional()
      .meta({ description: "the studio's own allowances, by kind of item" }),
    "common-items": commonItemsField().optional().meta({
      description:
        "what the studio often makes and no room asks for yet; `fits` says which of them a remnant can make",
    }),
    paint: paintField(),
    makers: makersField(kinds, ofMaker),
    suppliers: suppliersField(),
    schedule: scheduleField(),
    closed: closedDaysField(),
    "large-print": largePrintField(),
    acuity: acuityField().optional().meta({
      description:
        "of the eye by which a pattern is told from a plain across the room, as an eye test gives it; else 1, a good eye",
    }),
    phases: phasesField(kinds),
    terms: listField(textField())
      .optional()
      .meta({ description: "the proposal's terms, one sentence or two each" }),
    "prices-hold": dateField()
      .optional()
      .meta({ description: "until when the prices of proposals hold" }),
    private: textField().optional().meta({ description: "for the studio alone" }),
  });
}
