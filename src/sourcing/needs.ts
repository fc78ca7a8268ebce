import type Fraction from "fraction.js";
import { arrivedLots } from "../quantities/arrival/receiptsFor.ts";
import { materialLength } from "../quantities/materialLength.ts";
import type {
  ClothQuantity,
  ProjectQuantities,
  RoomMaterial,
} from "../quantities/quantityTypes.ts";
import type { ProjectRecord, Records } from "../records/records.ts";
import { Length } from "../units/length.ts";

/** An item of a room. */
export interface ItemOf {
  readonly room: string;
  readonly item: string;
}

/** What one maker needs of one card: a cloth that is cut, a paper that is hung, a trim that is sewn on. */
export interface Need {
  readonly cloth: string;
  readonly maker: string | null;
  readonly items: readonly ItemOf[];
  /** What is to be bought; of rolls their lengths together, of a trim what is sewn on. */
  readonly length: Length;
  /** How many rolls; null of what is bought by length. */
  readonly rolls: Fraction | null;
  /** True where it is the client's own: it comes, and is never ordered. */
  readonly clientsOwn: boolean;
  /** As it is planned; null of papers and trims. */
  readonly planned: ClothQuantity | null;
}

/** What is bought from a card by its name: papers and borders by the roll, trims by the length. */
export type OfCard = RoomMaterial & { readonly cloth: string };

export function isOfCard(material: RoomMaterial): material is OfCard {
  return material.cloth !== null && ["roll", "piece", "metre", "yard"].includes(material.unit);
}

/** What each maker needs of each card, cloths first, in the order of rooms and items. */
export function needsOf(quantities: ProjectQuantities, records: Records): Need[] {
  const { cloths, materials, items } = quantities;
  const out: Need[] = cloths.map((c) => ({
    cloth: c.cloth,
    maker: c.maker,
    items: c.uses.map(({ room, item }) => ({ room, item })),
    length: c.buy.length,
    rolls: null,
    clientsOwn: c.clientsOwn,
    planned: c,
  }));
  for (const material of materials.filter(isOfCard)) {
    const { room, item, cloth } = material;
    const maker = items.find((i) => i.room === room && i.item === item)?.maker ?? null;
    const roll = records.cloths.get(cloth)?.fields.roll?.length ?? null;
    const isRoll = material.unit === "roll" || material.unit === "piece";
    const same = out.findIndex((n) => !n.planned && n.cloth === cloth && n.maker === maker);
    const own: Need = {
      cloth,
      maker,
      items: [{ room, item }],
      length: materialLength(material, roll),
      rolls: isRoll ? material.amount : null,
      clientsOwn: false,
      planned: null,
    };
    const known = out[same];
    if (!known) out.push(own);
    else
      out[same] = {
        ...known,
        items: [...known.items, ...own.items],
        length: known.length.plus(own.length),
        rolls: known.rolls && own.rolls ? known.rolls.add(own.rolls) : (known.rolls ?? own.rolls),
      };
  }
  return out;
}

/** What the project's file says has come of a need. */
export interface Arrived {
  readonly receipts: readonly NonNullable<ProjectRecord["fields"]["receipts"]>[number][];
  /** True where all that is needed can be made of it. */
  readonly isAll: boolean;
  /** The last day on which some of it came; null where no day was written. */
  readonly on: string | null;
}

/** What has come of a need; null where nothing has. A receipt without a maker is nobody's where several makers share the cloth. */
export function arrivedOf(
  need: Need,
  needs: readonly Need[],
  project: ProjectRecord,
): Arrived | null {
  const isShared = needs.filter((n) => n.cloth === need.cloth).length > 1;
  const lots = arrivedLots(project, need.cloth, need.maker, isShared);
  const receipts = lots.flatMap((lot) => lot.receipts.map(({ receipt }) => receipt));
  if (receipts.length === 0) return null;
  const came = Length.sum(receipts.map((receipt) => receipt.length));
  const days = receipts.flatMap((receipt) => receipt.on ?? []).sort();
  return {
    receipts,
    // A cloth that is cut has lots once its plan was made on what came.
    isAll: need.planned ? need.planned.lots.length > 0 : !came.isLessThan(need.length),
    on: days.at(-1) ?? null,
  };
}

/** Every maker with the items that are made, papered or painted. What is bought ready is put in its place on the day of the fitting. */
export function workOf({ items }: ProjectQuantities): {
  readonly maker: string;
  readonly items: readonly ItemOf[];
}[] {
  const out = new Map<string, ItemOf[]>();
  for (const { maker, room, item, kind, made } of items) {
    const isWork = Object.keys(made.makingCounts).length > 0 || made.cuts.length > 0;
    if (maker === null || kind === "object" || !isWork) continue;
    out.set(maker, [...(out.get(maker) ?? []), { room, item }]);
  }
  return [...out].map(([maker, own]) => ({ maker, items: own }));
}
