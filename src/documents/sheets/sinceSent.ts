import { ITEM_DRAWINGS } from "../../items/drawings.ts";
import { within } from "../../units/capital.ts";
import type { ProjectData } from "../projectData.ts";
import { changeWords } from "../words/changeWords.ts";
import { type Language, listed } from "../words/phrases.ts";

/**
 * What of an item is another than in the last revision that was sent, for a maker who may have that sheet on the wall: all of it, in a
 * sentence; empty where nothing was sent, and where nothing but a price is another.
 */
export function sinceSent({ changes, studio }: ProjectData, room: string, item: string): string {
  if (!changes) return "";
  const isIt = (each: { readonly room: string; readonly item: string }): boolean =>
    each.room === room && each.item === item;
  const { revision } = changes.since;
  if (changes.added.some(isIt)) return `New since revision ${revision}.`;
  const changed = changes.changed.find(({ now }) => isIt(now));
  if (!changed) return "";
  const words = changeWords(changed, studio.fields.language as Language, Number.POSITIVE_INFINITY);
  return words.length === 0 ? "" : `Changed since revision ${revision}: ${words.join("; ")}.`;
}

/**
 * What a room no longer has of what its last sent revision had, for the only maker of such things: `Pillow, reading chair`. A record does not
 * say who was to make a thing, so where several could, none is told.
 */
export function goneSince({ changes, studio }: ProjectData, room: string, maker: string): string {
  const makers = Object.entries(studio.fields.makers ?? {});
  const onlyMaker = (kind: string): string | null => {
    const able = makers.filter(([, { makes }]) => makes.includes(kind));
    return able.length === 1 ? (able[0]?.[0] ?? null) : null;
  };
  const gone = (changes?.removed ?? []).filter(({ room: of, item }) => {
    const kind = kindOf(item);
    return of === room && kind !== null && onlyMaker(kind) === maker;
  });
  if (!changes || gone.length === 0) return "";
  const names = listed(gone.map(({ what }) => within(what)));
  return `No longer in this room since revision ${changes.since.revision}: ${names}. Do not make ${gone.length === 1 ? "it" : "them"}.`;
}

/** The kind that an item's id begins with: of `seat-pad-bench` not a seat, but a seat-pad. */
function kindOf(id: string): string | null {
  const kinds = ITEM_DRAWINGS.map(({ kind }) => kind).filter((kind) => id.startsWith(`${kind}-`));
  return kinds.sort((a, b) => b.length - a.length)[0] ?? null;
}
