import { percentWords } from "../../items/common/shrinkage.ts";
import type { ClothFacts } from "../../items/itemKind.ts";

/** What a washed cloth is expected to lose: `3 % along and 2 % across`, or `nobody said how much`. */
export function lossWords({ along, across }: NonNullable<ClothFacts["washing"]>): string {
  const losses = [
    along.compare(0) > 0 ? `${percentWords(along)} along` : "",
    across.compare(0) > 0 ? `${percentWords(across)} across` : "",
  ].filter((words) => words !== "");
  return losses.length > 0 ? losses.join(" and ") : "nobody said how much";
}
