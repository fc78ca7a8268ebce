import Fraction from "fraction.js";
import type { AllowanceDefinition } from "../fields/allowance.ts";
import { statedAllowance } from "../records/allowancesSchema.ts";
import type { StudioRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { parseLength } from "../units/parseLength.ts";
import { printLength, type UnitSystem } from "../units/printLength.ts";

export type AllowanceValue = Length | Fraction | number;

/** An allowance that an item's arithmetic asked for: its value, and who says so. */
export interface UsedAllowance {
  readonly allowance: string;
  readonly description: string;
  readonly value: AllowanceValue;
  /** The value for reading, in the studio's units. */
  readonly text: string;
  /** `usual`: nobody said it, so the kind's usual value was taken: that is what is listed as a default. */
  readonly from: "item" | "maker" | "studio" | "usual";
  /** Where a usual value comes from; the file's own key else. */
  readonly source: string;
}

/** Where an allowance may be said, from the nearest to the furthest. */
export interface AllowanceSources {
  readonly kind: string;
  readonly fields: Readonly<Record<string, unknown>>;
  readonly maker: string | null;
  readonly studio: StudioRecord | null;
  readonly units: UnitSystem;
}

/**
 * Looks an allowance up at the item, then its maker, then the studio; else the kind's usual value in the studio's units. A field of
 * the item counts only when it holds what the allowance is: `heading: pinch-pleat` is no heading turn.
 */
export function lookUpAllowance(
  name: string,
  definition: AllowanceDefinition,
  sources: AllowanceSources,
): UsedAllowance {
  const { kind, maker, studio, units } = sources;
  const said: readonly (readonly [UsedAllowance["from"], unknown, string])[] = [
    ["item", sources.fields[name], `the item's ${name}`],
    [
      "maker",
      statedAllowance(maker ? studio?.fields.makers?.[maker]?.allowances : undefined, kind, name),
      `${maker}'s allowances in studio.md`,
    ],
    ["studio", statedAllowance(studio?.fields.allowances, kind, name), "allowances in studio.md"],
  ];
  for (const [from, value, source] of said) {
    if (isA(definition.is, value)) return used(name, definition, value, from, source, units);
  }
  const value = readUsual(name, definition, definition.usual[units]);
  return used(name, definition, value, "usual", definition.source, units);
}

function isA(is: AllowanceDefinition["is"], value: unknown): value is AllowanceValue {
  if (is === "length") return value instanceof Length;
  if (is === "count") return typeof value === "number";
  return value instanceof Fraction;
}

/** A usual value is written by us: one that cannot be read is a programmer's mistake. */
function readUsual(name: string, definition: AllowanceDefinition, text: string): AllowanceValue {
  if (definition.is === "length") {
    const read = parseLength(text);
    if (!read.ok) throw new Error(`The usual value of the allowance ${name} is no length: ${text}`);
    return read.length;
  }
  if (definition.is === "count") return Number.parseInt(text, 10);
  const share = /%\s*$/.test(text);
  const value = new Fraction(text.replace(/\s*%\s*$/, ""));
  return share || definition.is === "percent" ? value.div(100) : value;
}

function used(
  allowance: string,
  definition: AllowanceDefinition,
  value: AllowanceValue,
  from: UsedAllowance["from"],
  source: string,
  units: UnitSystem,
): UsedAllowance {
  const text = value instanceof Length ? printLength(value, units) : value.toString();
  return { allowance, description: definition.description, value, text, from, source };
}
