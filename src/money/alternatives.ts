import type { ItemKind } from "../items/itemKind.ts";
import { inOption } from "../records/itemOptions.ts";
import type { ItemRecord, ProjectRecord } from "../records/records.ts";
import { withItem, withValue } from "../records/variants.ts";
import { addMoney, type Money, subtractMoney, sumMoney } from "../units/money.ts";
import { type PriceContext, type PricedProject, priceProject } from "./priceProject.ts";
import type { ProjectMoney } from "./projectMoney.ts";

/** What something finished costs: all its lines together. */
export interface FinishedCost {
  readonly trade: Money;
  /** What the client pays for it: prices, and the tax that comes on top. */
  readonly client: Money;
  /** True where one of its prices is not known yet. */
  readonly open: boolean;
}

/** An alternative, compared by what is finished: its own quantities, widths, waste, making and tax. */
export interface Alternative {
  readonly room: string;
  /** The item, or null where a cloth is exchanged in the whole room. */
  readonly item: string | null;
  readonly title: string;
  /** True for what the sums and drawings now show. */
  readonly stands: boolean;
  readonly cost: FinishedCost;
  /** What the client pays for the whole project more than as it stands; less is negative. */
  readonly more: Money;
  readonly priced: PricedProject;
}

/** What an item (or, without one, a room) comes to. */
export function finishedCost(money: ProjectMoney, room: string, item: string | null): FinishedCost {
  const lines = money.lines.filter(
    (l) => l.room === room && l.item !== null && (item === null || l.item === item),
  );
  return {
    trade: sumMoney(
      lines.map((l) => l.trade),
      money.currency,
    ),
    client: sumMoney(
      lines.map((l) => (money.taxIncluded ? l.client : addMoney(l.client, l.tax))),
      money.currency,
    ),
    open: lines.some((l) => l.open),
  };
}

function alternative(
  standing: PricedProject,
  priced: PricedProject,
  what: Pick<Alternative, "room" | "item" | "title" | "stands">,
): Alternative {
  return {
    ...what,
    cost: finishedCost(priced.money, what.room, what.item),
    more: subtractMoney(priced.money.totals.total, standing.money.totals.total),
    priced,
  };
}

/** Every option of an item that was not refused, in the order of the file, each with the whole project worked out anew. */
export function optionsOf(
  context: PriceContext,
  standing: PricedProject,
  room: string,
  item: ItemRecord,
): Alternative[] {
  return (item.options ?? []).flatMap((option, at) => {
    if (option.answer === "no") return [];
    const stands = at === item.stands;
    const priced = stands
      ? standing
      : priceProject(context, withItem(standing.project, room, inOption(item, at)));
    return [alternative(standing, priced, { room, item: item.id, title: option.title, stands })];
  });
}

/** The project with one cloth of a room exchanged for another wherever it is used, linings and welts included. */
export function withCloth(
  project: ProjectRecord,
  room: string,
  from: string,
  to: string,
  kinds: readonly ItemKind[],
): ProjectRecord {
  const record = project.rooms.find((r) => r.id === room);
  return (record?.items ?? []).reduce((all, item) => {
    const kind = kinds.find((k) => k.kind === item.kind);
    const uses = (kind?.cloths(item.fields as never) ?? []).filter((use) => use.cloth === from);
    if (uses.length === 0) return all;
    const fields = uses.reduce((f, use) => withValue(f, use.keyPath, to), item.fields);
    return withItem(all, room, { ...item, fields });
  }, project);
}

/** The cloths that a room's file asks to compare: the room as it stands, and with each of the others in a cloth's place. */
export function comparedCloths(
  context: PriceContext,
  standing: PricedProject,
  room: string,
): Alternative[] {
  const record = standing.project.rooms.find((r) => r.id === room);
  const name = (id: string): string => context.records.cloths.get(id)?.fields.cloth ?? id;
  return (record?.fields.compare ?? []).flatMap(({ cloth, with: other }): Alternative[] => {
    const project = withCloth(standing.project, room, cloth, other, context.kinds);
    const title = `${name(other)} for ${name(cloth)}`;
    return [
      alternative(standing, priceProject(context, project), {
        room,
        item: null,
        title,
        stands: false,
      }),
    ];
  });
}
