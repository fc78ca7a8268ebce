import { z } from "zod";
import { markupFactorField } from "../../fields/factorFields.ts";
import { percentField, textField, yesNoField } from "../../fields/plainFields.ts";

/** Tax on what is sold and on what is done, in per cent. */
export function taxField() {
  return z
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
    .meta({
      description:
        "tax, in per cent; reckoned once of all goods and once of all services, to the nearest cent, and shared out over their lines",
    });
}

/** What trade prices are multiplied by where a card has no client price. */
export function markupField() {
  return z
    .strictObject({
      cloth: markupFactorField()
        .optional()
        .meta({ description: "on cloth", examples: ["1.9"] }),
      wallcovering: markupFactorField()
        .optional()
        .meta({ description: "on wallcoverings", examples: ["1.4"] }),
      lining: markupFactorField()
        .optional()
        .meta({ description: "on linings and interlinings", examples: ["1.4"] }),
      trim: markupFactorField()
        .optional()
        .meta({ description: "on trims", examples: ["1.4"] }),
      hardware: markupFactorField()
        .optional()
        .meta({ description: "on poles, tracks and other hardware", examples: ["1.4"] }),
      making: markupFactorField()
        .optional()
        .meta({ description: "on makers' charges", examples: ["1.4"] }),
      fitting: markupFactorField()
        .optional()
        .meta({ description: "on fitters' charges", examples: ["1.4"] }),
      paint: markupFactorField()
        .optional()
        .meta({ description: "on paint", examples: ["1.4"] }),
      freight: markupFactorField()
        .optional()
        .meta({ description: "on freight", examples: ["1.4"] }),
      objects: markupFactorField()
        .optional()
        .meta({ description: "on objects that are bought", examples: ["1.4"] }),
    })
    .optional()
    .meta({
      description:
        "what trade prices are multiplied by, where a card has no client price; where nothing is said wallcoverings, linings and trims are as cloth, and all else as it is bought",
    });
}

/** Freight as a share of the goods' trade price, where a supplier states none. */
export function freightField() {
  return z
    .strictObject({
      cloth: percentField()
        .optional()
        .meta({
          description: "on cloth, wallcoverings and all else that is bought by length or roll",
          examples: ["3 %"],
        }),
    })
    .optional()
    .meta({
      description: "freight as a share of the goods' trade price, where a supplier states none",
    });
}
