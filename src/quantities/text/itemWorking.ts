import type { Made, WorkingLine } from "../../items/itemKind.ts";

/** All sums of an item: those of its cloth, then those of the trims that it takes. */
export function itemWorking({
  working,
  materials,
}: Pick<Made, "working" | "materials">): readonly WorkingLine[] {
  return [...working, ...materials.flatMap((need) => need.working ?? [])];
}
