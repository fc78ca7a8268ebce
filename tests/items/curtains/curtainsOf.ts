import { curtainsAllowances } from "../../../src/items/curtains/allowances.ts";
import { makeCurtains } from "../../../src/items/curtains/pieces.ts";
import { curtainsSchema } from "../../../src/items/curtains/schema.ts";
import type { ClothFacts } from "../../../src/items/itemKind.ts";
import { clothFacts, fieldsOf, length } from "../tradeContext.ts";
import { hangingContext, type WindowAsk, windowFacts } from "../windowContext.ts";

export const LARGE = clothFacts({
  id: "fern",
  name: "Fern trellis",
  usableWidth: length(`54"`),
  repeat: {
    up: length(`25 1/4"`),
    across: length(`54"`),
    match: "half-drop",
    fromSelvedge: length(`27"`),
  },
});
export const IVORY = clothFacts({
  id: "ivory",
  name: "Ivory",
  type: "lining",
  usableWidth: length(`54"`),
});
export const BAY = windowFacts(`72"`, `60"`, `30"`, `5"`);

export function make(raw: Record<string, unknown>, ask: WindowAsk = {}, cloth: ClothFacts = LARGE) {
  const fields = fieldsOf(curtainsSchema, {
    curtains: "Bay",
    cloth: "fern",
    heading: "pinch-pleat",
    ...raw,
  });
  const context = hangingContext(curtainsAllowances, { cloths: [cloth, IVORY], ...ask });
  return { fields, made: makeCurtains(fields, context) };
}
