import type { ItemRecord } from "./records.ts";

/**
 * True where the cloth of an item is the client's own: it is cut and made up, but never bought. Only the cloth that the item is named
 * by (`cloth`) is meant; its lining, welt, trim and all else of it are bought as ever.
 */
export function isClientsOwn(item: ItemRecord | undefined, cloth: string): boolean {
  const fields = item?.fields as { readonly owner?: string; readonly cloth?: string } | undefined;
  return fields?.owner === "client" && fields.cloth === cloth;
}
