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
