import { ITEM_DRAWINGS } from "../../items/drawings.ts";
import type { FittingContext, FittingLine } from "../../items/itemDrawing.ts";
import { itemName } from "../../items/itemName.ts";
import { hangsOn } from "../../room/hangsOn.ts";
import type { ItemPlacement } from "../../room/placements.ts";
import type { ItemData, ProjectData, RoomData } from "../projectData.ts";
import { lookUpsOf } from "../sheets/lookUps.ts";
import { madeOnArrival } from "../sheets/madeOnArrival.ts";
import type { Language } from "../words/phrases.ts";
import { fitterOf } from "./fitter.ts";

/** One item that a fitter puts up, with its wall; null where no wall is named. */
export interface FittingItem {
  readonly item: ItemData;
  readonly line: FittingLine;
  readonly wall: string | null;
  /** The bed that it hangs on instead of a wall. */
  readonly piece: string | null;
  /** What hangs there, as the drawing of its wall shows it. */
  readonly box: FittingContext["box"];
}

/** An item that goes up on a wall, with its number on the sheet. */
export type NumberedItem = FittingItem & { readonly number: number };

/** Where an item is, or what it hangs on is. */
function placementOf(room: RoomData, item: ItemData): ItemPlacement | null {
  const { placements } = room.plan;
  const own = placements.get(item.record.id) ?? null;
  return own?.how === "on" && own.on ? (placements.get(own.on) ?? own) : own;
}

/** The item that another is on. */
function hostOf(room: RoomData, item: ItemData): ItemData | null {
  const on = room.plan.placements.get(item.record.id)?.on;
  return room.items.find(({ record }) => record.id === on) ?? null;
}

function contextOf(
  data: ProjectData,
  room: RoomData,
  item: ItemData,
  at: ItemPlacement | null,
): FittingContext {
  const host = hostOf(room, item);
  const cardTitle = (id: string) => data.records.objects.get(id)?.fields.object ?? null;
  const carrier = ({ record }: ItemData) => hangsOn(record, room.plan, cardTitle);
  return {
    ...lookUpsOf(data),
    // A tie-back goes up where the curtain hangs that it holds.
    hangsOn: carrier(item) ?? (host && carrier(host)),
    window: at?.window ?? null,
    box: at?.wallBox ?? null,
    on: host
      ? itemName(host.kind, host.record.title, data.studio.fields.language as Language)
      : null,
    assumed: at?.assumed ?? [],
  };
}

/** What one fitter puts up in a room: wall by wall as the room names them, on each from the left to the right and from the top down; then what hangs on a bed. */
export function fittingItems(data: ProjectData, room: RoomData, fitter: string): FittingItem[] {
  const walls = (room.plan.walls ?? []).map(({ name }) => name);
  const found = room.items
    .filter((item) => fitterOf(data, item) === fitter)
    .map((item) => madeOnArrival(data, room, item))
    .flatMap((item): FittingItem[] => {
      const drawn = ITEM_DRAWINGS.find(({ kind }) => kind === item.kind.kind);
      const at = placementOf(room, item);
      const context = contextOf(data, room, item, at);
      const line = drawn?.fitting?.(item.record.fields as never, item.made as never, context);
      if (!line) return [];
      const piece = context.hangsOn?.title ?? null;
      const wall = piece === null ? (at?.wall ?? at?.window?.wall ?? null) : null;
      return [{ item, line, wall, piece, box: context.box }];
    });
  const wallAt = ({ wall, piece }: FittingItem) =>
    wall !== null && walls.includes(wall)
      ? walls.indexOf(wall)
      : walls.length + (piece === null ? 1 : 0);
  const leftAt = ({ box }: FittingItem) => box?.left.plus(box.width.dividedBy(2)).toMm() ?? 0;
  const highAt = ({ line }: FittingItem) => line.mark?.height.toMm() ?? 0;
  // Middles, so that what hangs at one window stays together; equal but for rounding is equal.
  return found.sort(
    (a, b) =>
      wallAt(a) - wallAt(b) ||
      (a.piece ?? "").localeCompare(b.piece ?? "") ||
      Math.round(leftAt(a) - leftAt(b)) ||
      Math.round(highAt(b) - highAt(a)),
  );
}
