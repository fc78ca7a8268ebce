import Fraction from "fraction.js";
import { z } from "zod";
import { LITRES, type VolumeUnit } from "../units/volume.ts";
import { type Amount, amountIn } from "./amountField.ts";
import { refuse } from "./fault.ts";

/** What paint costs, and what that is for: `58 per gallon`, `42 per tin`, `47.30 per 2.5 l`. */
export interface PaintPrice extends Amount {
  readonly per: VolumeUnit | "tin";
  /** Of a price for tins of one size alone: what such a tin holds. */
  readonly litres?: Fraction;
}

const UNITS: readonly (readonly [RegExp, PaintPrice["per"]])[] = [
  [/^(?:l|litres?|liters?)$/, "litre"],
  [/^(?:us )?(?:gal|gallons?)$/, "gallon"],
  [/^(?:qt|quarts?)$/, "quart"],
  [/^(?:tins?|cans?|pots?)$/, "tin"],
];

/** What a tin of one size holds, as in `per 2.5 l` or `per 5 litre tin`; null where that is no size. */
function tinSize(text: string): Fraction | null {
  const found = /^(\d+(?:[.,]\d+)?)\s*([a-z ]+?)(?:[\s-]+(?:tins?|cans?|pots?))?$/.exec(text);
  const [, number, word] = found ?? [];
  if (number === undefined || word === undefined) return null;
  const amount = new Fraction(number.replace(",", "."));
  if (amount.compare(0) <= 0) return null;
  if (/^(?:ml|millilitres?|milliliters?)$/.test(word)) return amount.div(1000);
  const unit = UNITS.find(([spelt]) => spelt.test(word))?.[1];
  return unit === undefined || unit === "tin" ? null : amount.mul(LITRES[unit]);
}

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
    const litres = tinSize((word ?? "").trim().toLowerCase());
    if (litres) return { ...sum, per: "tin", litres };
    return refuse(context, text, {
      code: "paint-price-for-what",
      message: word
        ? `Paint cannot be priced “per ${word.trim()}”.`
        : `${text.trim()} is the price of what: a gallon, a quart, a litre or a tin?`,
      expected: "a sum and what it is for",
      hint: `Write for example ${sum.decimal} per gallon, ${sum.decimal} per 2.5 l for a tin of that size, or ${sum.decimal} per tin where every size costs the same.`,
    });
  })
  .meta({ money: true, examples: ["58 per gallon", "24 per litre", "52 per 2.5 l"] });

/**
 * One price of paint, or a list where sizes are priced apart: `[58 per gallon, 22 per quart]`, `[52 per 2.5 l, 91 per 5 l]`; litres are
 * sold in tins that are priced by their size.
 */
export function paintPriceField() {
  return z
    .union([one, z.array(one)])
    .transform((read): readonly PaintPrice[] => (Array.isArray(read) ? read : [read]))
    .meta({
      examples: ["58 per gallon", "[58 per gallon, 22 per quart]", "[52 per 2.5 l, 91 per 5 l]"],
    });
}
