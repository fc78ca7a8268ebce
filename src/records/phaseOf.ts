import type { ItemRecord, StudioRecord } from "./records.ts";

/** The phase of an item: its own, else what the studio says of its kind, else its kind's usual one. */
export function phaseOf(item: ItemRecord, studio: StudioRecord | null, usual: number): number {
  const own = (item.fields as { readonly phase?: number }).phase;
  return own ?? studio?.fields.phases?.[item.kind] ?? usual;
}
