import { percentWords } from "../../items/common/shrinkage.ts";
import type { ClothFacts } from "../../items/itemKind.ts";

/** What is still to be done with a cloth that is washed first: to wash it, else what of it is to be measured again; null where nothing is. */
export type WashingLeft = "wash" | "repeat" | "width" | "repeat and width" | null;

/** What is to be measured again of a cloth that was washed, with its verb: `repeat and width have`; null where nothing is, or it is unwashed. */
export function toMeasure(
  left: WashingLeft,
  verbs: readonly [one: string, two: string],
): string | null {
  if (left === null || left === "wash") return null;
  return `${left} ${left === "repeat and width" ? verbs[1] : verbs[0]}`;
}

/**
 * What a washed cloth is expected to lose: `3 % along and 2 % across`; `3 % along, how much across nobody said`; or `nobody said how
 * much`.
 */
export function lossWords({
  along,
  across,
  acrossUnsaid,
}: NonNullable<ClothFacts["washing"]>): string {
  const losses = [
    along.compare(0) > 0 ? `${percentWords(along)} along` : "",
    across.compare(0) > 0 ? `${percentWords(across)} across` : "",
  ].filter((words) => words !== "");
  if (losses.length === 0) return "nobody said how much";
  return `${losses.join(" and ")}${acrossUnsaid ? ", how much across nobody said" : ""}`;
}
