import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ClothFacts } from "../items/itemKind.ts";
import type { ProjectRecord, Records } from "../records/records.ts";
import { type AnyKind, type FurnishedRoom, furnishRoom } from "../room/furnishRoom.ts";
import type { LookUps } from "../room/lookUps.ts";
import { sameMeasures } from "./arrival/receiptsFor.ts";
import { returnFaults } from "./arrival/returned.ts";
import { boughtOf, staysAsItIs } from "./boughtOf.ts";
import { type ClothGroup, clothGroups } from "./clothGroups.ts";
import { clothQuantity } from "./clothQuantity.ts";
import { itemDefaults } from "./defaultsUsed.ts";
import { boltInTwoLots } from "./lots/boltInTwoLots.ts";
import { roomsInTwoLots } from "./lots/roomsInTwoLots.ts";
import { orderedAmiss } from "./ordered.ts";
import type {
  ClothQuantity,
  ItemQuantity,
  ProjectQuantities,
  RoomMaterial,
} from "./quantityTypes.ts";
import { receivedMore } from "./receivedMore.ts";
import { buyTogether } from "./together/buyTogether.ts";
import { trimBuys } from "./trimBuys.ts";
import { trimCards } from "./trimCards.ts";
import { unknownRepeats } from "./unknownRepeats.ts";

/**
 * What a project needs: every item worked out in its room, and the pieces that one maker cuts from one cloth planned together over
 * all rooms. `lookUps` gives what is known of the cards (`swatches/`). Deterministic; the order is that of rooms and items.
 */
export function projectQuantities(
  records: Records,
  project: ProjectRecord,
  kinds: readonly AnyKind[],
  lookUps: LookUps,
): ProjectQuantities {
  const rooms = project.rooms.map((room) => furnishRoom(records, room, kinds, lookUps));
  const units = records.studio?.fields.units ?? "inches";
  const diagnostics: Diagnostic[] = rooms.flatMap((room) => room.diagnostics);
  const alone: ClothQuantity[] = [];
  const groups = clothGroups(rooms);
  const shared = (cloth: string) => groups.filter((each) => each.cloth === cloth).length > 1;
  const remade = (group: ClothGroup, facts: ClothFacts): ClothGroup => {
    const cloth = (id: string) => (id === group.cloth ? facts : lookUps.cloth(id));
    const anew = project.rooms.map((room) =>
      furnishRoom(records, room, kinds, { ...lookUps, cloth }),
    );
    const same = (each: ClothGroup) => each.cloth === group.cloth && each.maker === group.maker;
    return clothGroups(anew).find(same) ?? group;
  };
  for (const group of groups) {
    const context = { records, project, units, cloth: lookUps.cloth, shared, remade };
    const found = clothQuantity(group, context);
    if (found.quantity) alone.push(found.quantity);
    diagnostics.push(...found.diagnostics);
  }
  const { cloths, together } = buyTogether(alone);
  const items = rooms.flatMap(({ plan, items: own }) =>
    own.map(
      (item): ItemQuantity => ({
        room: plan.room.id,
        item: item.record.id,
        kind: item.record.kind,
        title: item.record.title,
        maker: item.maker,
        made: boughtOf(item),
        allowances: item.allowances,
        defaultsUsed: staysAsItIs(item) ? [] : itemDefaults(plan.room.id, item),
      }),
    ),
  );
  const materials = items.flatMap((item) =>
    item.made.materials.map(
      (need): RoomMaterial => ({ room: item.room, item: item.item, ...need }),
    ),
  );
  const trims = trimBuys(materials, records, units);
  const used = [
    ...groups.map(({ cloth }) => cloth),
    ...materials.flatMap(({ cloth }) => cloth ?? []),
  ];
  return {
    project: project.id,
    room: null,
    rooms,
    asArrived: asArrived(records, project, kinds, lookUps, rooms, cloths),
    cloths,
    together,
    materials,
    trims,
    items,
    diagnostics: once([
      ...diagnostics,
      ...unknownRepeats(used, lookUps.cloth, records),
      ...trimCards(rooms, lookUps.cloth),
      ...roomsInTwoLots(project, rooms, cloths),
      ...boltInTwoLots(project, together, cloths),
      ...orderedAmiss(project, { cloths, together, materials, trims }, records, units),
      ...receivedMore(project, records, units),
      ...returnFaults(project),
    ]),
  };
}

/** The rooms with the items worked out on what arrived, where that is narrower or repeats otherwise than the cards say. */
function asArrived(
  records: Records,
  project: ProjectRecord,
  kinds: readonly AnyKind[],
  lookUps: LookUps,
  rooms: readonly FurnishedRoom[],
  cloths: readonly ClothQuantity[],
): readonly FurnishedRoom[] {
  const came = new Map(
    cloths.filter((each) => each.lot !== null).map((each) => [each.cloth, each.facts]),
  );
  const differs = [...came].some(([id, facts]) => {
    const card = lookUps.cloth(id);
    return card !== null && !sameMeasures(card, facts);
  });
  if (!differs) return rooms;
  const cloth = (id: string) => came.get(id) ?? lookUps.cloth(id);
  return project.rooms.map((room) => furnishRoom(records, room, kinds, { ...lookUps, cloth }));
}

/**
 * One room of a project's quantities: a filter, not a new plan. The cloths that it uses keep the project's length and what is bought;
 * the pieces listed are the room's.
 */
export function roomQuantities(whole: ProjectQuantities, room: string): ProjectQuantities {
  const ofRoom = <T extends { readonly room: string | null }>(all: readonly T[]) =>
    all.filter((each) => each.room === room);
  const used = whole.cloths.filter((each) => ofRoom(each.uses).length > 0);
  const path = whole.rooms.find((each) => each.plan.room.id === room)?.plan.room.path;
  return {
    project: whole.project,
    room,
    rooms: whole.rooms.filter((each) => each.plan.room.id === room),
    asArrived: whole.asArrived.filter((each) => each.plan.room.id === room),
    cloths: used.map((each) => ({
      ...each,
      plan: { ...each.plan, pieces: ofRoom(each.plan.pieces) },
      lots: each.lots.map((lot) => ({ ...lot, rooms: ofRoom(lot.rooms) })),
      estimates: ofRoom(each.estimates),
      uses: ofRoom(each.uses),
      defaultsUsed: each.defaultsUsed.filter((own) => own.room === null || own.room === room),
    })),
    together: whole.together.filter((each) => used.some((own) => own.cloth === each.cloth)),
    materials: ofRoom(whole.materials),
    trims: whole.trims
      .filter((each) => ofRoom(each.uses).length > 0)
      .map((each) => ({ ...each, uses: ofRoom(each.uses) })),
    items: ofRoom(whole.items),
    diagnostics: whole.diagnostics.filter((each) => each.file === path || !isRoomFile(each, whole)),
  };
}

/** Two groups may find the same fault of one receipt or card. */
function once(all: readonly Diagnostic[]): Diagnostic[] {
  const key = (each: Diagnostic) =>
    [each.file, each.line, each.column, each.code, each.message].join("|");
  return all.filter((each, at) => all.findIndex((other) => key(other) === key(each)) === at);
}

function isRoomFile(entry: Diagnostic, whole: ProjectQuantities): boolean {
  return whole.rooms.some((each) => each.plan.room.path === entry.file);
}
