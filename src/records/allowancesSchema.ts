import type Fraction from "fraction.js";
import { z } from "zod";
import type { AllowanceDefinition } from "../fields/allowance.ts";
import { fullnessField } from "../fields/factorFields.ts";
import { lengthField } from "../fields/lengthField.ts";
import { countField, lossField, ratioField } from "../fields/plainFields.ts";
import type { Length } from "../units/length.ts";
import type { ItemTable } from "./itemTable.ts";
import type { AllowanceValues } from "./schema/studioFields.ts";

/** `fullness-eyelet`, `hobble-fullness`: how much flat cloth is taken; it is asked about where no cloth is taken so. */
const isFullness = (name: string) => /^fullness|fullness$/.test(name);

function field(
  name: string,
  definition: AllowanceDefinition,
): z.ZodType<Length | Fraction | number> {
  switch (definition.is) {
    case "length":
      return lengthField();
    case "ratio":
      return isFullness(name) ? fullnessField() : ratioField();
    case "count":
      return countField(0);
    case "percent":
      return lossField();
  }
}

function describe({ description, usual, source }: AllowanceDefinition): string {
  const values =
    usual.inches === usual.centimetres ? usual.inches : `${usual.inches}, or ${usual.centimetres}`;
  return `${description}; ${values} where nothing is said (${source})`;
}

/**
 * The schema of `allowances` in studio.md, for the studio or one maker, composed from the kinds of item: a kind, then its allowances
 * by name, each a length, ratio, count or share as the kind declares.
 */
export function allowancesSchema(items: ItemTable): z.ZodType<AllowanceValues> {
  const kinds = items.map(({ kind, allowances }) => {
    const fields = Object.entries(allowances).map(
      ([name, definition]) =>
        [
          name,
          field(name, definition)
            .optional()
            .meta({ description: describe(definition), examples: [definition.usual.inches] }),
        ] as const,
    );
    const ofKind = z.strictObject(Object.fromEntries(fields)).optional();
    return [kind, ofKind.meta({ description: `allowances of the kind ${kind}` })] as const;
  });
  return z.strictObject(Object.fromEntries(kinds)) as unknown as z.ZodType<AllowanceValues>;
}

/** An allowance that a studio or maker states itself, by the exact kind and name; null where they are silent. */
export function statedAllowance(
  values: AllowanceValues | undefined,
  kind: string,
  name: string,
): Length | Fraction | number | null {
  if (!values || !Object.hasOwn(values, kind)) return null;
  const ofKind = values[kind];
  return ofKind && Object.hasOwn(ofKind, name) ? (ofKind[name] ?? null) : null;
}
