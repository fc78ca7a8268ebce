import { capital } from "../../units/capital.ts";
import type { Language } from "./phrases.ts";

/** Words that an item's own arithmetic writes in one vocabulary, in British and in American use. */
const PAIRS: readonly (readonly [gb: string, us: string])[] = [
  ["fibre", "fiber"],
  ["neighbouring", "neighboring"],
  ["moulding", "molding"],
  ["mouldings", "moldings"],
  ["mitre", "miter"],
  ["mitres", "miters"],
  ["centred", "centered"],
  ["colour", "color"],
  ["piping cord", "welt cord"],
  ["piping", "welt"],
  ["skirting", "baseboard"],
];

/** A line of an item (a material, a question) in the studio's vocabulary; whole words only, capitals kept. */
export function inVocabulary(text: string, language: Language): string {
  return PAIRS.reduce((line, [gb, us]) => {
    const [from, to] = language === "en-US" ? [gb, us] : [us, gb];
    return line
      .replace(new RegExp(`\\b${from}\\b`, "g"), to)
      .replace(new RegExp(`\\b${capital(from)}\\b`, "g"), capital(to));
  }, text);
}

/** A key or word of a room's file as it is read: `border-top` as border top, in the studio's vocabulary. */
export function keyWords(text: string, language: Language): string {
  return inVocabulary(text.replace(/(?<=\p{L})-(?=\p{L})/gu, " "), language);
}

const BLINDS: ReadonlySet<string> = new Set(["blind", "roller-blind"]);

/** What an item says, in the studio's vocabulary; a blind is a shade to an American, and only there: a lampshade is one everywhere. */
export function inItemWords(text: string, kind: string, language: Language): string {
  const said = inVocabulary(text, language);
  if (!BLINDS.has(kind) || language !== "en-US") return said;
  return said.replace(
    /\b([Bb])lind(s?)\b/g,
    (_, b: string, many: string) => `${b === "B" ? "Shade" : "shade"}${many}`,
  );
}
