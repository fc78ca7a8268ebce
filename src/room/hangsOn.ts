import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { HangsOn, WindowFacts } from "../items/itemKind.ts";
import type { ItemRecord, RoomRecord } from "../records/records.ts";
import { commonFields } from "./commonFields.ts";
import type { ItemPlacement } from "./placements.ts";

/** Kinds that hang, at a window, on a wall or on the posts of a bed. */
export const HANG: ReadonlySet<string> = new Set(["curtains", "valance", "pelmet"]);

/** What is known of a room's items when it is asked what they hang on. */
interface Placed {
  readonly room: RoomRecord;
  readonly windows: ReadonlyMap<string, WindowFacts>;
  /** By item id. */
  readonly placements: ReadonlyMap<string, ItemPlacement>;
}

/** The piece that an item hangs on by its `at: { on: … }`; null for what hangs at a window or on a wall, and for what lies. */
export function hangsOn(
  item: ItemRecord,
  { room, windows, placements }: Placed,
  cardTitle: (object: string) => string | null,
): HangsOn | null {
  const placed = placements.get(item.id);
  if (!HANG.has(item.kind) || placed?.how !== "on" || placed.on === null) return null;
  if (windows.has(placed.on)) return null;
  const { at } = commonFields(item);
  const host = room.items.find((each) => each.id === placed.on);
  // An object is called as its card is; its item is titled after the card's file.
  const card = host ? commonFields(host).object : placed.on;
  const title = (card && cardTitle(card)) ?? host?.title ?? placed.on;
  const side = typeof at === "object" && "on" in at ? (at.side ?? null) : null;
  return { title, side };
}

/** A side that is said of what does not hang on a bed. */
export function sideFaults(
  item: ItemRecord,
  { windows, placements }: Pick<Placed, "windows" | "placements">,
): Diagnostic[] {
  const { at } = commonFields(item);
  if (typeof at !== "object" || !("on" in at) || at.side === undefined) return [];
  const on = placements.get(item.id)?.on;
  if (HANG.has(item.kind) && on && !windows.has(on)) return [];
  return [
    diagnostic(
      item.place(["at", "side"]),
      "side-of-no-bed",
      "side says nothing here: only curtains, a valance or a pelmet that hang on a bed have one.",
      { severity: "warning", actual: at.side, hint: "Take side out." },
    ),
  ];
}
