import type { BedSide } from "../fields/placementField.ts";
import type { HangsOn, WindowFacts } from "../items/itemKind.ts";
import type { ItemRecord, RoomRecord } from "../records/records.ts";
import { commonFields } from "./commonFields.ts";
import type { ItemPlacement } from "./placements.ts";

/** Kinds that hang, at a window, on a wall or on the posts of a bed; in the order in which they hang before each other. */
export const HANG: readonly string[] = ["curtains", "pelmet", "valance"];

/** What is known of a room's items when it is asked what they hang on. */
export interface Hung {
  readonly room: RoomRecord;
  readonly windows: ReadonlyMap<string, WindowFacts>;
  /** By item id. */
  readonly placements: ReadonlyMap<string, ItemPlacement>;
}

/** The piece that an item hangs on by its `at: { on: … }`; null for what hangs at a window or on a wall, and for what lies. */
export function hangsOn(
  item: ItemRecord,
  { room, windows, placements }: Hung,
  cardTitle: (object: string) => string | null,
): HangsOn | null {
  const placed = placements.get(item.id);
  if (!HANG.includes(item.kind) || placed?.how !== "on" || placed.on === null) return null;
  if (windows.has(placed.on)) return null;
  const host = room.items.find((each) => each.id === placed.on);
  // An object is called as its card is; its item is titled after the card's file.
  const card = host ? commonFields(host).object : placed.on;
  const title = (card && cardTitle(card)) ?? host?.title ?? placed.on;
  return { title, side: sideOf(item) };
}

/** The side of its bed at which an item hangs; null where none is said. */
export function sideOf(item: ItemRecord): BedSide | null {
  const { at } = commonFields(item);
  return typeof at === "object" && "on" in at ? (at.side ?? null) : null;
}
