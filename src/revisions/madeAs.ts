import Fraction from "fraction.js";
import { itemBase } from "../fields/itemBase.ts";
import type { ItemRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { printMeasured, type UnitSystem } from "../units/printLength.ts";

/** Of what every item can say a client reads how many alike there are, and nothing else: the rest is for makers and the studio. */
const SAID = "count";

/** When the studio ordered a piece and when it came is no part of how it is made. */
const STUDIOS_OWN: ReadonlySet<string> = new Set(["ordered", "arrived"]);

/**
 * How an item is to be made, as its room's file has it: its measures as they were typed, its words and counts, by their keys. Cards are left
 * out, since their ids are no words to a client, and so is what is made of several keys; `partsAs` tells both.
 */
export function madeAs(
  record: ItemRecord,
  units: UnitSystem,
  isCard: (id: string) => boolean,
): Record<string, string> {
  const own = Object.entries(record.fields as Record<string, unknown>).filter(
    ([key]) => key !== record.kind && !STUDIOS_OWN.has(key) && (key === SAID || !(key in itemBase)),
  );
  return Object.fromEntries(
    own.flatMap(([key, value]): [string, string][] => {
      const text = textOf(value, units);
      return text === null || isCard(text) ? [] : [[key, text]];
    }),
  );
}

/** A value of a room's file as it was typed; null where it is written in several keys. */
export function textOf(value: unknown, units: UnitSystem): string | null {
  if (value instanceof Length) return printMeasured(value, units);
  if (value instanceof Fraction) return String(value.valueOf());
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "number" || typeof value === "string") return String(value);
  if (!Array.isArray(value) || value.length === 0) return null;
  const each = value.map((one) => (Array.isArray(one) ? null : textOf(one, units)));
  if (each.includes(null)) return null;
  return each.join(value.every((one) => one instanceof Length) ? " × " : ", ");
}
