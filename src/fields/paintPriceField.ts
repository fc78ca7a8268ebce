import { z } from "zod";
import type { VolumeUnit } from "../units/volume.ts";
import { type Amount, amountIn } from "./amountField.ts";
import { refuse } from "./fault.ts";

/** What paint costs, and what that is for: `58 per gallon`, `42 per tin`. */
export interface PaintPrice extends Amount {
  readonly per: VolumeUnit | "tin";
}

const UNITS: readonly (readonly [RegExp, PaintPrice["per"]])[] = [
  [/^(?:l|litres?|liters?)$/, "litre"],
  [/^(?:us )?(?:gal|gallons?)$/, "gallon"],
  [/^(?:qt|quarts?)$/, "quart"],
  [/^(?:tins?|cans?|pots?)$/, "tin"],
];

const one = z
  .string()
  .transform((text, context): PaintPrice => {
    const sum = amountIn(text);
    if (!sum)
      return refuse(context, text, {
        code: "paint-price-unreadable",
        message: `“${text}” cannot be read as the price of paint.`,
        expected: "a sum and what it is for, such as 58 per gallon",
        hint: "After “per” may stand: gallon, quart, litre, tin.",
      });
    const [, word] = text.split(/\s+(?:per|a|an|each)\s+/i);
    const unit = UNITS.find(([spelt]) => spelt.test((word ?? "").trim().toLowerCase()))?.[1];
    if (unit) return { ...sum, per: unit };
    return refuse(context, text, {
      code: "paint-price-for-what",
      message: word
        ? `Paint cannot be priced “per ${word.trim()}”.`
        : `${text.trim()} is the price of what: a gallon, a quart, a litre or a tin?`,
      expected: "a sum and what it is for",
      hint: `Write for example ${sum.decimal} per gallon, or ${sum.decimal} per tin where every size costs the same.`,
    });
  })
  .meta({ money: true, examples: ["58 per gallon", "24 per litre"] });

/** One price of paint, or a list where a gallon and a quart are priced apart: `[58 per gallon, 22 per quart]`. */
export function paintPriceField() {
  return z
    .union([one, z.array(one)])
    .transform((read): readonly PaintPrice[] => (Array.isArray(read) ? read : [read]))
    .meta({ examples: ["58 per gallon", "[58 per gallon, 22 per quart]"] });
}
