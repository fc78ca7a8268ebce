import { ITEM_KINDS } from "../../src/items/kinds.ts";
import {
  type PriceContext,
  type PricedProject,
  priceProject,
} from "../../src/money/priceProject.ts";
import type { ProjectMoney } from "../../src/money/projectMoney.ts";
import type { StudioRecord } from "../../src/records/records.ts";
import { lookUpsOf, projectOf, recordsOf, type SmallStudio } from "../quantities/studioOf.ts";

export interface Priced extends PricedProject {
  readonly context: PriceContext;
}

/** A small studio's one project, read, measured out and priced by the program. Reading errors fail the test that asks. `today` is an ISO date. */
export function pricedOf(small: SmallStudio, today = "2026-12-01"): Priced {
  const records = recordsOf(small);
  const context: PriceContext = {
    records,
    studio: records.studio as StudioRecord,
    kinds: ITEM_KINDS,
    lookUps: lookUpsOf(records),
    today,
  };
  return { ...priceProject(context, projectOf(records)), context };
}

/** Client prices in minor units of the lines of one sort. */
export const clientOf = (money: ProjectMoney, what: string): number[] =>
  money.lines.filter((l) => l.what === what).map((l) => Number(l.client.minor));
export const tradeOf = (money: ProjectMoney, what: string): number[] =>
  money.lines.filter((l) => l.what === what).map((l) => Number(l.trade.minor));
