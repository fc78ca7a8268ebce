import { type ChangedItem, madeOtherwise } from "../../revisions/changes.ts";
import type { SentItem } from "../../revisions/sentRevision.ts";
import { small } from "../../units/capital.ts";
import { madeWords } from "./madeWords.ts";
import { type Language, listed } from "./phrases.ts";

/** `in Vestry and Sorrel`; empty where it has no cloth. */
export function inCloths({ cloths }: SentItem): string {
  return cloths.length === 0 ? "" : `in ${listed(cloths)}`;
}

/**
 * What is another of a thing than it was when it was sent, each as a phrase: `in Vestry, before in Pomander`, `drop 92″, before 90″`; none
 * where the price alone is another. Of more than `most` measures and words the others are not told one by one.
 */
export function changeWords(
  { before, now, in: differs }: ChangedItem,
  language: Language,
  most: number,
): string[] {
  // Another way to make it is told by its name, with all that it changes.
  if (differs.includes("way") && now.way !== null)
    return [`${now.way}${before.way === null ? "" : `, before ${small(before.way)}`}`];
  const was = inCloths(before);
  const is = inCloths(now);
  const cloths =
    differs.includes("cloths") && is !== "" ? [was === "" ? is : `${is}, before ${was}`] : [];
  return [...cloths, ...madeWords(untold(before, now, cloths.length > 0), language, most)];
}

/** In what a thing is made otherwise, but for the cloths of its parts where the cloths' own words hold them. */
function untold(before: SentItem, now: SentItem, clothsAreTold: boolean) {
  const isTold = (name: string | null, { cloths }: SentItem): boolean =>
    name === null || cloths.includes(name);
  return madeOtherwise(before, now).filter(
    (way) => !(clothsAreTold && isTold(way.before, before) && isTold(way.now, now)),
  );
}
