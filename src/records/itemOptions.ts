import type { ItemRecord } from "./records.ts";

/** The item made in another of its ways. */
export function inOption(item: ItemRecord, at: number): ItemRecord {
  const option = item.options?.[at];
  return option ? { ...item, fields: option.fields, stands: at, place: option.place } : item;
}

/** True where the client has still to choose: until then nothing of it is ordered. */
export function isOpen(item: ItemRecord): boolean {
  return item.options !== undefined && !item.options.some((o) => o.answer === "yes");
}
