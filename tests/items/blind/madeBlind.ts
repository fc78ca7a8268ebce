import { blindAllowances } from "../../../src/items/blind/allowances.ts";
import { makeBlind } from "../../../src/items/blind/pieces.ts";
import { blindSchema } from "../../../src/items/blind/schema.ts";
import type { ClothFacts } from "../../../src/items/itemKind.ts";
import { Length } from "../../../src/units/length.ts";
import { clothFacts, fieldsOf, inUnit, length } from "../tradeContext.ts";
import { hangingContext, type WindowAsk } from "../windowContext.ts";

export const inches = (n: number) => `${n}"`;
export const cm = (n: number) => `${n} cm`;
export const PLAIN = clothFacts({ id: "print", name: "Print", usableWidth: length(`54"`) });

export function make(raw: Record<string, unknown>, ask: WindowAsk = {}, cloth: ClothFacts = PLAIN) {
  const fields = fieldsOf(blindSchema, { blind: "Bay", cloth: "print", ...raw });
  return {
    fields,
    made: makeBlind(fields, hangingContext(blindAllowances, { cloths: [cloth], ...ask })),
  };
}
export const figure = (
  made: { figures: Readonly<Record<string, number>> },
  name: string,
  unit: "in" | "cm",
) => inUnit(Length.mm((made.figures[name] as number).toFixed(6)), unit);
export const codes = (made: { diagnostics: readonly { code: string; keyPath: string | null }[] }) =>
  made.diagnostics.map((d) => `${d.code} at ${d.keyPath}`);
