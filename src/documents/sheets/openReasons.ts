import type { ClothQuantity } from "../../quantities/quantityTypes.ts";
import { small } from "../../units/capital.ts";
import { listed } from "../words/phrases.ts";

/** What still stands before cutting; empty once the plan is released. */
export function openReasons({ plan }: ClothQuantity): readonly string[] {
  if (plan.released || plan.notForCutting.length > 0) return plan.notForCutting;
  return ["All is checked; the studio has still to release this plan."];
}

/** Whether anything of an item is cut, or only estimated, from this cloth. */
function isOf({ plan, estimates }: ClothQuantity, room: string, item: string): boolean {
  return [...plan.pieces, ...estimates].some((each) => each.room === room && each.item === item);
}

/**
 * Why nothing of one item may be cut yet: what holds for all of its cloths as it is, what holds for some under their names, since a
 * lining is planned together with what is cut from it for other rooms. Of an item for which nothing stands open, or that has no cloth,
 * what holds for the sheet: nobody begins on half of it.
 */
export function itemReasons(
  cloths: readonly ClothQuantity[],
  room: string,
  item: string,
): readonly string[] {
  const own = cloths.filter((cloth) => isOf(cloth, room, item));
  const holds = new Map<string, string[]>();
  for (const cloth of own)
    for (const reason of openReasons(cloth))
      holds.set(reason, [...(holds.get(reason) ?? []), cloth.facts.name]);
  if (holds.size === 0) return [...new Set(cloths.flatMap(openReasons))];
  return [...holds].map(([reason, names]) =>
    names.length === own.length ? reason : `${listed(names)}: ${small(reason)}`,
  );
}
