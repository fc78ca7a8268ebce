import type { Made } from "../../src/items/itemKind.ts";
import { diningChairKind } from "../../src/items/upholstery/diningchair/kind.ts";
import { dropInKind } from "../../src/items/upholstery/dropin/kind.ts";
import { headboardKind } from "../../src/items/upholstery/headboard/kind.ts";
import { ottomanKind } from "../../src/items/upholstery/ottoman/kind.ts";
import { sofaKind } from "../../src/items/upholstery/sofa/kind.ts";
import { Length } from "../../src/units/length.ts";
import {
  type ContextAsk,
  clothFacts,
  contextFor,
  fieldsOf,
  inUnit,
  length,
} from "./tradeContext.ts";

export const PLAIN = clothFacts({ id: "slub", usableWidth: length('54"'), mayTurn: true });
export const PLAIN137 = clothFacts({ id: "plain137", usableWidth: length("137 cm") });
export const PRINT = clothFacts({
  id: "fern",
  name: "Fern",
  usableWidth: length('54"'),
  repeat: {
    up: length('25 1/4"'),
    across: length('27"'),
    match: "straight",
    fromSelvedge: length('13 1/2"'),
  },
});
/** Three columns to a width: neighbours joined at the selvedge hang half a repeat lower. */
export const HALF_DROP = clothFacts({
  id: "bough",
  name: "Bough",
  usableWidth: length('54"'),
  repeat: {
    up: length('24"'),
    across: length('18"'),
    match: "half-drop",
    fromSelvedge: length('9"'),
  },
});
export const CLOTHS = [PLAIN, PLAIN137, PRINT, HALF_DROP];
export const pair = (v: unknown) => (v as { value: [number, number] }).value;

export const KINDS = {
  sofa: { kind: sofaKind, raw: { sofa: "Long", size: '84" x 36" x 34"' } },
  dining: { kind: diningChairKind, raw: { "dining-chair": "Side", size: '19" x 21" x 38"' } },
  seat: { kind: dropInKind, raw: { "drop-in-seat": "Six", size: '18" x 16"' } },
  ottoman: { kind: ottomanKind, raw: { ottoman: "Stool", size: '24" x 20" x 17"', legs: '5"' } },
  headboard: { kind: headboardKind, raw: { headboard: "End", size: '42" x 3" x 36"' } },
} as const;

export function make(
  which: keyof typeof KINDS,
  raw: Record<string, unknown>,
  ask: ContextAsk = {},
): Made {
  const { kind, raw: usual } = KINDS[which];
  const fields = fieldsOf(kind.schema, { cloth: "slub", ...usual, ...raw });
  const context = contextFor(kind.allowances, { cloths: CLOTHS, ...ask });
  return (kind.make as (f: unknown, c: typeof context) => Made)(fields, context);
}
export const sizes = (made: Made, unit: "in" | "cm") =>
  made.cuts.map((c) => [c.piece, inUnit(c.width, unit), inUnit(c.height, unit), c.count]);
export const total = (made: Made, cloth: string) =>
  made.handbook.find((h) => h.cloth === cloth)?.length ?? Length.zero;
