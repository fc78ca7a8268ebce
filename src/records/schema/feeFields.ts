import { z } from "zod";
import { amountField } from "../../fields/amountField.ts";
import { percentField, ratioField, textField, wordField } from "../../fields/plainFields.ts";

const hours = ratioField().meta({ description: "how many hours", examples: ["12.5"] });
const hourly = amountField().meta({ description: "for an hour", examples: ["85"] });
const shareOfSold = z.strictObject({
  share: percentField().meta({
    description: "a share of the client's prices",
    examples: ["10 %"],
  }),
  of: wordField(["all", "cloth", "goods", "making"]).optional().meta({
    description:
      "of what; of all that is bought and made, fees and reserve left out, where nothing is said. Linings, wallcoverings and trims count as cloth",
  }),
});

/** A fee: a sum, hours at a rate, or a share of what is sold. */
export const feeField = z.union([
  amountField(),
  z.strictObject({ hours, rate: hourly }),
  shareOfSold,
]);

/** What comes off the client's prices: a share of what is sold, or a sum. */
export const discountField = z.strictObject({
  what: textField().meta({
    description: "what the client reads",
    examples: ["Less 5 % for a second house"],
  }),
  share: percentField()
    .optional()
    .meta({
      description: "a share of the client's prices, before tax; write this or amount",
      examples: ["5 %"],
    }),
  amount: amountField()
    .optional()
    .meta({
      description: "a sum, as other client prices are written",
      examples: ["120.00"],
    }),
  of: wordField(["all", "cloth", "goods", "making"]).optional().meta({
    description:
      "off what; off all that is bought and made, fees and reserve left out, where nothing is said. Linings, wallcoverings and trims count as cloth",
  }),
});

/** The fee for fitting: where only the hours are said, the fitter's own rate is taken, with its markup. */
export const fittingFeeField = z.union([
  amountField(),
  z.strictObject({
    hours,
    rate: hourly.optional().meta({
      description: "for an hour; without it the fitter's own rate and the markup on fitting",
    }),
  }),
  shareOfSold,
]);
