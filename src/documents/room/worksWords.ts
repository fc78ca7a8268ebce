import { type Finding, type FindingCode, STUDIO_ONLY } from "../../scheme/finding.ts";
import { foldWorks } from "../../scheme/foldWorks.ts";
import { wordsIn } from "../../units/spelling.ts";
import type { RoomData } from "../projectData.ts";

/** What a client cares for first; the order in which it is said, and the last are left out where a page is full. */
const ORDER: readonly FindingCode[] = [
  "tradition",
  "collection-shared",
  "hues-few",
  "main-cloth",
  "anchor-minor-first",
  "prints-in-two-colours",
  "plain-enough",
  "ladder-holds",
  "colour-carried",
  "accent-one",
  "cloth-belongs",
  "light-and-dark",
  "reads-plain",
  "animal-marking",
  "strays-counted",
  "shares-level",
];

/** More than so many sentences nobody reads. */
const MOST = 7;

/** The tints of one colour and the marking of one cloth are said once: what another sentence holds already is left out. */
function saidElsewhere(finding: Finding, all: readonly Finding[]): boolean {
  return (
    finding.code === "animal-marking" &&
    all.some((f) => f.code === "cloth-belongs" && f.of.join() === finding.of.join())
  );
}

/** What a client reads of a room's findings. */
export interface RoomWords {
  /** What works, the weightiest first. */
  readonly works: readonly string[];
  /** What is else to be known, because the studio publishes it. */
  readonly noted: readonly string[];
}

/**
 * What a client reads of a room's findings, each a sentence: what works, with what is published by its code first; and of the others
 * only what the studio publishes and has not overruled, never of what it pays. Neither numbers beside the sentence nor a reason why one was overruled.
 */
export function worksWords(room: RoomData, language: string): RoomWords {
  const say = wordsIn(language);
  const published = new Set<string>(
    (room.record.fields.publish ?? []).filter((code) => !STUDIO_ONLY.has(code)),
  );
  const all = room.scheme.findings;
  const place = (f: { readonly code: FindingCode }): number => {
    const at = ORDER.indexOf(f.code);
    return (published.has(f.code) ? -100 : 0) + (at < 0 ? ORDER.length : at);
  };
  const works = all.filter(
    (f) => f.level === "works" && (published.has(f.code) || !saidElsewhere(f, all)),
  );
  return {
    works: foldWorks(works, say)
      .sort((a, b) => place(a) - place(b))
      .slice(0, MOST)
      .map((f) => f.message),
    noted: all
      .filter((f) => f.level !== "works" && f.accepted === null && published.has(f.code))
      .map((f) => f.message),
  };
}

/** A head with the space about it, in lines. */
const HEAD = 2.5;

/** As many sentences as one paragraph of so many lines holds, in their order. */
function paragraph(all: readonly string[], lines: number, letters: number): string[] {
  let length = 0;
  const fits = all.findIndex((text) => {
    length += text.length + 1;
    return Math.ceil(length / letters) > lines;
  });
  return fits < 0 ? [...all] : all.slice(0, fits);
}

/** Lines that are kept for what works, however much is published beside it. */
const LEAST_WORKS = 2;

/** Lines that what is published and the first of what works take, at so many letters a line. */
export function leastLines({ noted, works }: RoomWords, letters: number): number {
  const published = noted.length > 0 ? HEAD + Math.ceil(noted.join(" ").length / letters) : 0;
  return published + (works.length > 0 ? HEAD + LEAST_WORKS : 0);
}

/**
 * As many of the sentences as so many lines of so many letters hold, a paragraph for each list under its head. What the studio
 * publishes comes first; what works is left its first lines, so that it is never crowded out.
 */
export function fitting(words: RoomWords, free: number, letters: number): RoomWords {
  const kept = words.works.length > 0 ? HEAD + LEAST_WORKS : 0;
  const noted = words.noted.length > 0 ? paragraph(words.noted, free - kept - HEAD, letters) : [];
  const used = noted.length > 0 ? HEAD + Math.ceil(noted.join(" ").length / letters) : 0;
  return { noted, works: paragraph(words.works, free - used - HEAD, letters) };
}
