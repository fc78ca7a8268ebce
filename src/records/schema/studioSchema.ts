import { z } from "zod";
import { rateField } from "../../fields/amountField.ts";
import { positiveLengthField } from "../../fields/lengthField.ts";
import { paintPriceField } from "../../fields/paintPriceField.ts";
import {
  colourField,
  countField,
  currencyField,
  dateField,
  listField,
  nameField,
  percentField,
  pictureField,
  ratioField,
  textField,
  wordField,
  yesNoField,
} from "../../fields/plainFields.ts";
import { workField } from "../../fields/workField.ts";
import { commonItemsField } from "./commonItems.ts";

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
    tax: z
      .strictObject({
        goods: percentField().meta({ description: "on what is sold", examples: ["8.25"] }),
        services: percentField().meta({ description: "on what is done", examples: ["0"] }),
        included: yesNoField()
          .optional()
          .meta({ description: "yes: client prices include tax already" }),
        name: textField()
          .optional()
          .meta({ description: "what it is called: sales tax, VAT", examples: ["sales tax"] }),
      })
      .optional()
      .meta({ description: "tax, in per cent" }),
    markup: z
      .strictObject({
        cloth: ratioField()
          .optional()
          .meta({ description: "on cloth", examples: ["1.9"] }),
        wallcovering: ratioField()
          .optional()
          .meta({ description: "on wallcoverings", examples: ["1.4"] }),
        lining: ratioField()
          .optional()
          .meta({ description: "on linings and interlinings", examples: ["1.4"] }),
        trim: ratioField()
          .optional()
          .meta({ description: "on trims", examples: ["1.4"] }),
        hardware: ratioField()
          .optional()
          .meta({ description: "on poles, tracks and other hardware", examples: ["1.4"] }),
        making: ratioField()
          .optional()
          .meta({ description: "on makers' charges", examples: ["1.4"] }),
        fitting: ratioField()
          .optional()
          .meta({ description: "on fitters' charges", examples: ["1.4"] }),
        paint: ratioField()
          .optional()
          .meta({ description: "on paint", examples: ["1.4"] }),
        freight: ratioField()
          .optional()
          .meta({ description: "on freight", examples: ["1.4"] }),
        objects: ratioField()
          .optional()
          .meta({ description: "on objects that are bought", examples: ["1.4"] }),
      })
      .optional()
      .meta({
        description: "what trade prices are multiplied by, where a card has no client price",
      }),
    contingency: percentField()
      .optional()
      .meta({ description: "kept in reserve, as a share of the whole", examples: ["5 %"] }),
    freight: z
      .strictObject({
        cloth: percentField()
          .optional()
          .meta({
            description: "on cloth and all else that is bought by length",
            examples: ["3 %"],
          }),
      })
      .optional()
      .meta({
        description: "freight as a share of the goods' trade price, where a supplier states none",
      }),
    allowances: allowances
      .optional()
      .meta({ description: "the studio's own allowances, by kind of item" }),
    "common-items": commonItemsField().optional().meta({
      description:
        "what the studio often makes and no room asks for yet; `fits` says which of them a remnant can make",
    }),
    paint: z
      .strictObject({
        coverage: textField()
          .optional()
          .meta({
            description: "how far a tin goes, for one coat",
            examples: ["375 sq ft/gal", "10 m2/l"],
          }),
        tins: listField(textField())
          .optional()
          .meta({ description: "sizes that it is sold in", examples: ["[1 gal, 1 qt]"] }),
        price: paintPriceField()
          .optional()
          .meta({
            description: "what the studio pays; a list where sizes are priced apart",
            examples: ["58 per gallon", "[58 per gallon, 22 per quart]"],
          }),
      })
      .optional()
      .meta({ description: "the paint that the studio uses" }),
    makers: z
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
            .meta({ description: "what the maker is paid, by kind of item or work" }),
          weeks: countField(0, 104)
            .optional()
            .meta({ description: "how long the making takes, in weeks", examples: ["6"] }),
          allowances: ofMaker
            .optional()
            .meta({ description: "this maker's own allowances; they win over the studio's" }),
        }),
      )
      .optional()
      .meta({
        description: "workrooms, upholsterers, paperhangers and fitters, by a short name of yours",
      }),
    suppliers: z
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
              description: "freight as a share of the goods' trade price",
              examples: ["4 %"],
            }),
          weeks: countField(0, 104)
            .optional()
            .meta({ description: "how long a delivery takes, in weeks", examples: ["3"] }),
        }),
      )
      .optional()
      .meta({ description: "whom the studio buys from, by a short name of yours" }),
    "large-print": z
      .strictObject({
        repeat: positiveLengthField()
          .optional()
          .meta({
            description:
              "side of a square as large as its repeat, from which a print is large; else 11 cm",
            examples: [`4 1/4"`, "11 cm"],
          }),
        motif: positiveLengthField()
          .optional()
          .meta({
            description: "size of its motif, from which a print is large; else 9 cm",
            examples: [`3 1/2"`, "9 cm"],
          }),
      })
      .optional()
      .meta({ description: "what counts as a large print where a photograph is measured" }),
    phases: z
      .record(workField(kinds).meta({ examples: ["curtains"] }), countField(1, 9))
      .optional()
      .meta({
        description:
          "the phase in which each kind of item is bought, where it is not the usual one: 1 is cheap and easily changed",
      }),
    terms: listField(textField())
      .optional()
      .meta({ description: "the proposal's terms, one sentence or two each" }),
    "prices-hold": dateField()
      .optional()
      .meta({ description: "until when the prices of proposals hold" }),
    private: textField().optional().meta({ description: "for the studio alone" }),
  });
}
