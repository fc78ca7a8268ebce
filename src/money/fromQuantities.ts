import Fraction from "fraction.js";
import type { ItemKind } from "../items/itemKind.ts";
import type {
  ClothQuantity,
  ItemQuantity,
  ProjectQuantities,
  RoomMaterial,
  SharedBuy,
} from "../quantities/quantityTypes.ts";
import { wholeLengths } from "../quantities/together/buyTogether.ts";
import { sharedBuyOf } from "../quantities/together/sharedBuyOf.ts";
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
    return [{ cloth, maker: null, whole: [], amount: { count: amount }, uses }];
  });
}

/** Trims, one purchase for each card, shared over the items by what each takes. The client's own cloth is never a trim. */
function trimPurchases(all: ProjectQuantities): Purchase[] {
  return all.trims.map(({ cloth, buy, uses }) => ({
    cloth,
    maker: null,
    whole: [{ maker: null, length: buy.length }],
    amount: { length: buy.length },
    uses: uses.map(({ room, item, length }) => ({ room, item, weight: length.mm })),
  }));
}

/** What is bought, in the form that prices are put to: planned cloths shared by area, and what comes by the roll or piece. */
export function purchasesOf(project: ProjectRecord, all: ProjectQuantities): Purchase[] {
  const paid = all.cloths.filter((c) => !c.buy.length.isZero() && paidUses(project, c).length > 0);
  const planned = paid.flatMap((c): Purchase[] => {
    const shared = sharedBuyOf(all, c);
    if (!shared) return [alonePurchase(project, c)];
    const mine = paid.filter((each) => sharedBuyOf(all, each) === shared);
    return mine[0] === c ? [sharedPurchase(project, shared, mine)] : [];
  });
  return [...planned, ...materialPurchases(project, all), ...trimPurchases(all)];
}

/** The items that pay for a maker's cloth: all but those of the client's own. */
function paidUses(project: ProjectRecord, c: ClothQuantity): ClothQuantity["uses"] {
  return c.uses.filter((u) => !ownCloth(project, u.room, u.item, c.cloth));
}

function alonePurchase(project: ProjectRecord, c: ClothQuantity): Purchase {
  const lengths = wholeLengths(c);
  return {
    cloth: c.cloth,
    maker: c.maker,
    whole: (c.needed.lengths.length > 1 ? lengths : [c.buy.length]).map((length) => ({
      maker: c.maker,
      length,
    })),
    amount: { length: c.buy.length },
    uses: paidUses(project, c).map(
      (u): PurchaseUse => ({ room: u.room, item: u.item, weight: u.areaMm2 }),
    ),
  };
}

/** One purchase for several makers: each bears it by the length that it gets, and its items that by their area. */
function sharedPurchase(
  project: ProjectRecord,
  shared: SharedBuy,
  mine: readonly ClothQuantity[],
): Purchase {
  const whole = shared.bolts
    ? mine.flatMap((c) => wholeLengths(c).map((length) => ({ maker: c.maker, length })))
    : shared.parts;
  return {
    cloth: shared.cloth,
    maker: null,
    whole,
    amount: { length: shared.buy.length },
    uses: mine.flatMap((c) => {
      const uses = paidUses(project, c);
      const area = uses.reduce((sum, u) => sum.add(u.areaMm2), new Fraction(0));
      const even = area.compare(0) === 0;
      return uses.map(({ room, item, areaMm2 }): PurchaseUse => {
        const share = even ? new Fraction(1, uses.length) : areaMm2.div(area);
        return { room, item, weight: c.buy.length.mm.mul(share) };
      });
    }),
  };
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
