import type { ItemRecord, ObjectRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { commonFields } from "./commonFields.ts";

/** How much room an item takes: seen from its front, its depth towards the viewer, its height. */
export interface ItemSize {
  readonly width: Length;
  readonly depth: Length;
  readonly height: Length;
  /** True for what lies on the floor: a rug. */
  readonly flat: boolean;
  /** True for what hangs on a wall without a depth that counts: a picture, a mirror. */
  readonly hung: boolean;
}

const HUNG: readonly string[] = ["picture", "mirror"];

/**
 * The size of an item that stands, lies or hangs by itself, from its own `size` or its object's card; null where none is written.
 * Of two measures the first is the width; the second is the length of what lies on the floor, the height of all else.
 */
export function itemSize(
  item: ItemRecord,
  objects: ReadonlyMap<string, ObjectRecord>,
): ItemSize | null {
  const fields = commonFields(item);
  const card = fields.object === undefined ? null : (objects.get(fields.object) ?? null);
  const size = fields.size ?? card?.fields.size ?? null;
  if (!size || size.length < 2) return null;
  const [width, second, third] = size as [Length, Length, Length | undefined];
  const shape = card?.fields.shape ?? null;
  const hung = shape !== null && HUNG.includes(shape);
  const flat =
    shape === "rug" ||
    (third === undefined && !hung && typeof fields.at === "object" && "floor" in fields.at);
  if (flat) return { width, depth: second, height: third ?? Length.zero, flat, hung: false };
  if (third === undefined) return { width, depth: Length.zero, height: second, flat, hung };
  return { width, depth: second, height: third, flat, hung };
}
