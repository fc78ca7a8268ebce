import type { OtherWay } from "../../revisions/changes.ts";
import { inVocabulary, keyWords } from "./inVocabulary.ts";
import type { Language } from "./phrases.ts";

/** What a thing is without where its key is not written; of the rest the trade's usual stands then. */
const ELSE_NONE: ReadonlySet<string> = new Set(["lining", "interlining", "padding", "trim"]);

/** What says by itself what it is: `with brass pole`, `at garden`. */
const WHOLE: ReadonlySet<string> = new Set(["at", "hardware"]);

/**
 * How a thing is made otherwise than it was: `5 of them, before 4`; `heading goblet, before pinch pleat`; `seat 22″ × 21″,
 * before 22″ × 20″`; `with brass pole, before with oak pole`; `no lining any more, before Tallow`. Of more than `most` ways the others are not told one by one.
 */
export function madeWords(ways: readonly OtherWay[], language: Language, most: number): string[] {
  const told = ways.slice(0, most).map((way) => wayWords(way, language));
  return ways.length > most ? [...told, "and made otherwise"] : told;
}

function wayWords({ key, before, now, isPart }: OtherWay, language: Language): string {
  const said = (text: string): string => (isPart ? inVocabulary : keyWords)(text, language);
  // A part of a list is called by its own name: `pieces/seat`.
  const called = keyWords(key.slice(key.indexOf("/") + 1), language);
  if (key === "count") return `${now ?? 1} of them, before ${before ?? 1}`;
  if ([before, now].some((text) => text?.startsWith("#"))) return `another ${called}`;
  const was = before === null ? "" : `, before ${said(before)}`;
  if (WHOLE.has(key)) return now === null ? `no longer ${said(before ?? "")}` : said(now) + was;
  if (now !== null) return `${called} ${said(now)}${was}`;
  const isNone = ELSE_NONE.has(key) || key.includes("/");
  return isNone ? `no ${called} any more${was}` : `${called} as is usual${was}`;
}
