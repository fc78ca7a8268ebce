import type { CurtainsFields } from "./schema.ts";

/** True of curtains before no opening: at the head of a bed, or on a bare wall as behind a bed or before shelves. Drawn together they are seen. */
export function staysClosed({ at }: Pick<CurtainsFields, "at">): boolean {
  if (typeof at !== "object") return false;
  return "wall" in at || ("on" in at && at.side === "head");
}
