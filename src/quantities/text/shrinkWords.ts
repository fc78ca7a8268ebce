import type Fraction from "fraction.js";
import { percentWords } from "../../items/common/shrinkage.ts";
import type { ClothFacts, WorkingLine } from "../../items/itemKind.ts";
import type { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import { beforeWashing } from "../../units/washing.ts";
import type { ClothGroup } from "../clothGroups.ts";
import { clothText } from "./clothText.ts";

/**
 * A line of working for a cloth whose card says that it shrinks, where something is cut of it for which nothing is added: what it takes
 * if it is washed before it is cut, its length ÷ (1 − shrinkage). Only curtains that hang along the cloth are cut longer by themselves.
 */
export function shrinkWorking(
  group: ClothGroup,
  facts: ClothFacts,
  need: Length,
  units: UnitSystem,
): WorkingLine[] {
  const share = facts.shrinkage;
  if (!share || share.compare(0) <= 0) return [];
  const added = group.users.every(({ room, item }) => {
    const own = group.cuts.filter((each) => each.room === room && each.item === item.record.id);
    const sideways = (item.record.fields as { railroad?: boolean }).railroad === true;
    const grows = (surface: string, piece: string) =>
      surface !== "face" || (!sideways && piece !== "tab");
    return (
      item.kind.kind === "curtains" &&
      own.length > 0 &&
      own.every(({ cut }) => grows(cut.surface, cut.piece))
    );
  });
  if (added) return [];
  const washed = beforeWashing(need, share);
  return [
    {
      what: "Shrinkage",
      sum: `its card says ${percentWords(share)} along its length; nothing is added but to curtains. With wash-first: yes on it, ${clothText(need, units)} ÷ (1 − ${percentWords(share)})`,
      result: clothText(washed, units),
      rounded: null,
    },
  ];
}

/** How what is cut after washing comes to what is bought before it: `7.8 m ÷ (1 − 3 %)`. */
export function washedSum(
  sum: string,
  hasTerms: boolean,
  need: Length,
  share: Fraction,
  units: UnitSystem,
): { readonly sum: string; readonly length: Length } {
  const length = beforeWashing(need, share);
  const all = printLength(length, units);
  const after = hasTerms ? `${sum} after washing; ` : `${sum} after washing, `;
  return {
    sum: `${after}${printLength(need, units)} ÷ (1 − ${percentWords(share)}) = ${all} before`,
    length,
  };
}
