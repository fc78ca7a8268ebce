import { bedSkirtAllowances } from "../../src/items/bedskirt/allowances.ts";
import { makeBedSkirt } from "../../src/items/bedskirt/pieces.ts";
import { bedSkirtSchema } from "../../src/items/bedskirt/schema.ts";
import { coverletAllowances } from "../../src/items/coverlet/allowances.ts";
import { makeCoverlet } from "../../src/items/coverlet/pieces.ts";
import { coverletSchema } from "../../src/items/coverlet/schema.ts";
import type { ClothFacts, Made } from "../../src/items/itemKind.ts";
import { runnerAllowances } from "../../src/items/runner/allowances.ts";
import { makeRunner } from "../../src/items/runner/pieces.ts";
import { runnerSchema } from "../../src/items/runner/schema.ts";
import { tableclothAllowances } from "../../src/items/tablecloth/allowances.ts";
import { makeTablecloth } from "../../src/items/tablecloth/pieces.ts";
import { tableclothSchema } from "../../src/items/tablecloth/schema.ts";
import { tableSkirtAllowances } from "../../src/items/tableskirt/allowances.ts";
import { makeTableSkirt } from "../../src/items/tableskirt/pieces.ts";
import { tableSkirtSchema } from "../../src/items/tableskirt/schema.ts";
import { throwAllowances } from "../../src/items/throw/allowances.ts";
import { makeThrow } from "../../src/items/throw/pieces.ts";
import { throwSchema } from "../../src/items/throw/schema.ts";
import { Length } from "../../src/units/length.ts";
import {
  type ContextAsk,
  clothFacts,
  contextFor,
  fieldsOf,
  given,
  inUnit,
  length,
  type TradeCase,
} from "./tradeContext.ts";

export const cloth = (width: string, more: Partial<ClothFacts> = {}) =>
  clothFacts({ id: "print", name: "Print", usableWidth: length(width), ...more });
export const ask = (more: ContextAsk, print: ClothFacts = cloth('54"')): ContextAsk => ({
  ...more,
  cloths: [print, clothFacts({ id: "lining", usableWidth: length('54"') })],
});
export const coverlet = (raw: object, more: ContextAsk = {}, print?: ClothFacts) =>
  makeCoverlet(
    fieldsOf(coverletSchema, { coverlet: "Bed", cloth: "print", ...raw }),
    contextFor(coverletAllowances, ask(more, print)),
  );
export const bedSkirt = (raw: object, more: ContextAsk = {}, print?: ClothFacts) =>
  makeBedSkirt(
    fieldsOf(bedSkirtSchema, { "bed-skirt": "Bed", cloth: "print", ...raw }),
    contextFor(bedSkirtAllowances, ask(more, print)),
  );
export const runner = (raw: object, more: ContextAsk = {}, print?: ClothFacts) =>
  makeRunner(
    fieldsOf(runnerSchema, { runner: "Bed", cloth: "print", ...raw }),
    contextFor(runnerAllowances, ask(more, print)),
  );
export const throwOver = (raw: object, more: ContextAsk = {}, print?: ClothFacts) =>
  makeThrow(
    fieldsOf(throwSchema, { throw: "Bed", cloth: "print", ...raw }),
    contextFor(throwAllowances, ask(more, print)),
  );
export const tablecloth = (raw: object, more: ContextAsk = {}, print?: ClothFacts) =>
  makeTablecloth(
    fieldsOf(tableclothSchema, { tablecloth: "Table", cloth: "print", ...raw }),
    contextFor(tableclothAllowances, ask(more, print)),
  );
export const tableSkirt = (raw: object, more: ContextAsk = {}, print?: ClothFacts) =>
  makeTableSkirt(
    fieldsOf(tableSkirtSchema, { "table-skirt": "Table", cloth: "print", ...raw }),
    contextFor(tableSkirtAllowances, ask(more, print)),
  );
export const figure = (made: Made, name: string, unit: "in" | "cm") =>
  inUnit(Length.mm((made.figures[name] as number).toFixed(6)), unit);
export const handbook = (made: Made, unit: "in" | "cm" | "m" | "yd") =>
  inUnit(made.handbook.find((h) => h.cloth === "print")?.length as Length, unit);
export const pair = (c: TradeCase, name: string, unit: string) =>
  (given(c, name) as unknown as number[]).map((n) => `${n} ${unit}`);
export const codes = (made: Made) => made.diagnostics.map((d) => `${d.code} at ${d.keyPath}`);
export const NO_TURNS = { join: "0 in", "side-hem": "0 in" };
