import { z } from "zod";
import { rateField } from "../../fields/amountField.ts";
import { colourField, countField, currencyField, dateField, listField, percentField, ratioField, pictureField, textField, wordField, yesNoField } from "../../fields/plainFields.ts";

/**
 * The studio's own card. `allowances` is composed from the kinds of item (records/ takes their table as a value), so its schema is
 * a parameter here.
 */
export function studioSchema<A extends z.ZodType>(allowances: A) {
  return z.strictObject({
    studio: textField().meta({ description: "the studio's name, as it stands on documents" }),
    address: textField().optional(),
    phone: textField().optional(),
    email: textField().optional(),
    web: textField().optional(),
    mark: pictureField().optional().meta({ description: "a picture of the studio's mark, beside this file" }),
    "mark-colour": colourField().optional().meta({ description: "the one accent of its pages" }),
    language: wordField(["en-US", "en-GB"]),
    units: wordField(["inches", "centimetres"], { inch: "inches", centimeters: "centimetres", cm: "centimetres", metric: "centimetres" }),
    currency: currencyField().meta({ description: "a code of ISO 4217: USD, GBP, EUR" }),
    paper: wordField(["tabloid", "a3"]).meta({ description: "the boards' sheet; letters and sheets follow: letter with tabloid, A4 with A3" }),
    tax: z
      .strictObject({
        goods: percentField(),
        services: percentField(),
        included: yesNoField().optional().meta({ description: "yes: client prices include tax already" }),
        name: textField().optional().meta({ description: "what it is called: sales tax, VAT" }),
      })
      .optional(),
    markup: z
      .strictObject({
        cloth: ratioField().optional(),
        wallcovering: ratioField().optional(),
        lining: ratioField().optional(),
        trim: ratioField().optional(),
        hardware: ratioField().optional(),
        making: ratioField().optional(),
        fitting: ratioField().optional(),
        paint: ratioField().optional(),
        freight: ratioField().optional(),
        objects: ratioField().optional(),
      })
      .optional(),
    contingency: percentField().optional().meta({ description: "kept in reserve, as a share of the whole" }),
    freight: z.strictObject({ cloth: percentField().optional() }).optional().meta({ description: "freight as a share of the goods' trade price, where a supplier states none" }),
    allowances: allowances.optional(),
    paint: z
      .strictObject({ coverage: textField().optional().meta({ description: "10 m2/l or 375 sq ft/gal" }), tins: listField(textField()).optional(), price: rateField().optional() })
      .optional(),
    makers: z
      .record(
        z.string(),
        z.strictObject({
          name: textField(),
          makes: listField(textField()).meta({ description: "kinds of item, or fitting, hanging, painting" }),
          address: textField().optional(),
          phone: textField().optional(),
          email: textField().optional(),
          rates: z.record(z.string(), rateField()).optional(),
          weeks: countField(0, 104).optional(),
          allowances: allowances.optional(),
        }),
      )
      .optional(),
    suppliers: z
      .record(
        z.string(),
        z.strictObject({
          name: textField(),
          disclose: yesNoField().optional(),
          account: textField().optional(),
          address: textField().optional(),
          email: textField().optional(),
          phone: textField().optional(),
          freight: percentField().optional(),
          weeks: countField(0, 104).optional(),
        }),
      )
      .optional(),
    terms: listField(textField()).optional().meta({ description: "the proposal's terms, one sentence or two each" }),
    "prices-hold": dateField().optional(),
    private: textField().optional(),
  });
}
