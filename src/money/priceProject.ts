import type { ItemKind } from "../items/itemKind.ts";
import { projectQuantities } from "../quantities/projectQuantities.ts";
import type { ProjectQuantities } from "../quantities/quantityTypes.ts";
import type { ProjectRecord, Records, StudioRecord } from "../records/records.ts";
import { pricedItemsOf, purchasesOf } from "./fromQuantities.ts";
import { type ProjectMoney, projectMoney } from "./projectMoney.ts";

/** What it takes to work out a project from its records. */
export interface PriceContext {
  readonly records: Records;
  readonly studio: StudioRecord;
  readonly kinds: readonly ItemKind[];
  readonly lookUps: Parameters<typeof projectQuantities>[3];
  /** The day of the build, ISO. */
  readonly today: string;
}

/** A project with its quantities and its price. */
export interface PricedProject {
  readonly project: ProjectRecord;
  readonly quantities: ProjectQuantities;
  readonly money: ProjectMoney;
}

/** Cloths of options that do not stand: nothing is bought of them, but they were looked at. */
function considered(project: ProjectRecord, kinds: ReadonlyMap<string, ItemKind>): string[] {
  const ids = project.rooms.flatMap((room) =>
    room.items.flatMap((item) =>
      (item.options ?? []).flatMap((option) =>
        (kinds.get(item.kind)?.cloths(option.fields as never) ?? []).map((use) => use.cloth),
      ),
    ),
  );
  return [...new Set(ids)].sort();
}

/** Works out what a project needs, and prices it. Pure: the same records give the same price. */
export function priceProject(context: PriceContext, project: ProjectRecord): PricedProject {
  const { records, studio } = context;
  const kinds = new Map(context.kinds.map((kind) => [kind.kind, kind]));
  const quantities = projectQuantities(records, project, context.kinds, context.lookUps);
  const money = projectMoney({
    records,
    studio,
    project,
    purchases: purchasesOf(project, quantities),
    items: pricedItemsOf(project, quantities, kinds, studio),
    considered: considered(project, kinds),
    today: context.today,
  });
  return { project, quantities, money };
}
