import Fraction from "fraction.js";
import type { ItemKind } from "../items/itemKind.ts";
import type { ItemQuantity, ProjectQuantities, RoomMaterial } from "../quantities/quantityTypes.ts";
import { isClientsOwn } from "../records/clientsOwn.ts";
import { phaseOf } from "../records/phaseOf.ts";
import type { ProjectRecord, StudioRecord } from "../records/records.ts";
import type { PaintTins, PricedItem, Purchase, PurchaseUse } from "./purchase.ts";

function ownCloth(project: ProjectRecord, room: string, item: string, cloth: string): boolean {
  const record = project.rooms.find((r) => r.id === room)?.items.find((i) => i.id === item);
  return isClientsOwn(record, cloth);
}

/** Cards bought by the roll or piece (wallpapers, borders), one purchase for each item's. */
function materialPurchases(project: ProjectRecord, all: ProjectQuantities): Purchase[] {
  return all.materials.flatMap((material): Purchase[] => {
    const { room, item, cloth, unit, amount } = material;
    const isCounted = unit === "roll" || unit === "piece";
    if (cloth === null || !isCounted || ownCloth(project, room, item, cloth)) return [];
    const uses = [{ room, item, weight: new Fraction(1) }];
    return [{ cloth, maker: null, amount: { count: amount }, uses }];
  });
}

/** Trims, one purchase for each card, shared over the items by what each takes. The client's own cloth is never a trim. */
function trimPurchases(all: ProjectQuantities): Purchase[] {
  return all.trims.map(({ cloth, buy, uses }) => ({
    cloth,
    maker: null,
    amount: { length: buy.length },
    uses: uses.map(({ room, item, length }) => ({ room, item, weight: length.mm })),
  }));
}

/** What is bought, in the form that prices are put to: planned cloths shared by area, and what comes by the roll or piece. */
export function purchasesOf(project: ProjectRecord, all: ProjectQuantities): Purchase[] {
  const planned = all.cloths.flatMap((c): Purchase[] => {
    const uses = c.uses
      .filter((u) => !ownCloth(project, u.room, u.item, c.cloth))
      .map((u): PurchaseUse => ({ room: u.room, item: u.item, weight: u.areaMm2 }));
    return uses.length > 0 && !c.buy.length.isZero()
      ? [
          {
            cloth: c.cloth,
            maker: c.maker,
            amount: { length: c.buy.length },
            uses,
          },
        ]
      : [];
  });
  return [...planned, ...materialPurchases(project, all), ...trimPurchases(all)];
}

function paintTins(material: RoomMaterial): PaintTins[] {
  const { unit, amount, tins } = material;
  return unit === "litre" || unit === "gallon" || unit === "quart"
    ? [{ tins: tins ?? 1, amount, unit }]
    : [];
}

function pricedItem(
  item: ItemQuantity,
  kinds: ReadonlyMap<string, ItemKind>,
  all: ProjectQuantities,
  project: ProjectRecord,
  studio: StudioRecord | null,
): PricedItem {
  const record = project.rooms
    .find((r) => r.id === item.room)
    ?.items.find((i) => i.id === item.item);
  const kind = kinds.get(item.kind);
  const usual = kind?.phase ?? 1;
  const paint = all.materials
    .filter((m) => m.room === item.room && m.item === item.item)
    .flatMap(paintTins);
  return {
    room: item.room,
    item: item.item,
    kind: item.kind,
    title: item.title,
    maker: item.maker,
    usualPhase: record ? phaseOf(record, studio, usual) : usual,
    commitment: usual,
    makingCounts: item.made.makingCounts,
    paint,
    needsMaking: item.kind !== "object" && Object.keys(item.made.makingCounts).length > 0,
  };
}

/** The project's items as money sees them. */
export function pricedItemsOf(
  project: ProjectRecord,
  all: ProjectQuantities,
  kinds: ReadonlyMap<string, ItemKind>,
  studio: StudioRecord | null,
): PricedItem[] {
  return all.items.map((item) => pricedItem(item, kinds, all, project, studio));
}
