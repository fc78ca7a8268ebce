import type { ItemKind } from "../../src/items/itemKind.ts";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { pricedItemsOf, purchasesOf } from "../../src/money/fromQuantities.ts";
import { type ProjectMoney, projectMoney } from "../../src/money/projectMoney.ts";
import type { StudioRecord } from "../../src/records/records.ts";
import {
  projectOf,
  quantitiesOf,
  recordsOf,
  type SmallStudio,
  STUDIO_INCHES,
} from "../quantities/studioOf.ts";

const KINDS = new Map<string, ItemKind>(ITEM_KINDS.map((kind) => [kind.kind, kind]));
const MAKER = `makers:\n  bench: { name: Bench, makes: [curtains, cushion], rates: { cushion: 30 per item } }`;
/** A studio with round figures: cloth doubled, making half as much again, ten per cent on goods. */
export const STUDIO = `${STUDIO_INCHES}\nmarkup: { cloth: 2, making: 1.5 }\ntax: { goods: 10, services: 0 }\n${MAKER}`;
export const PLAIN = `cloth: Plain\nwidth: 54"\nkind: plain\nprice: { trade: 10, per: yard }`;
export const CUSHION = `  - cushion: One\n    cloth: plain\n    size: 20" x 20"\n    edge: knife\n    filling: feather\n    maker: bench\n`;
export const ROOM = `room: Den\nbudget: 200\nitems:\n${CUSHION}`;

/** One cushion in one room, with whatever a test changes. */
export const small = (more: Partial<SmallStudio> = {}): SmallStudio => ({
  studio: STUDIO,
  cloths: { plain: PLAIN },
  rooms: { den: ROOM },
  ...more,
});

/** A small studio's one project, read and priced by the program. */
export function priced(files: SmallStudio): ProjectMoney {
  const records = recordsOf(files);
  const project = projectOf(records);
  const quantities = quantitiesOf(files);
  return projectMoney({
    records,
    studio: records.studio as StudioRecord,
    project,
    purchases: purchasesOf(project, quantities),
    items: pricedItemsOf(project, quantities, KINDS),
  });
}

export const lineOf = (money: ProjectMoney, what: string) =>
  money.lines.find((l) => l.what === what);
