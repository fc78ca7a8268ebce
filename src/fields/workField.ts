import { z } from "zod";
import { refuse } from "./fault.ts";
import { nearest } from "./suggest.ts";
import { sameWord } from "./vocabulary.ts";

/** What makers do beside the making of a kind of item. */
export const WORKS = [
  "fitting",
  "hanging",
  "painting",
  "lining",
  "delivery",
  "measuring",
  "upholstery",
] as const;

/**
 * What a maker makes or does: a kind of item (in either vocabulary, one or many), one of the works, or other words, since a maker
 * may do what this program knows nothing of. A word that is nearly a known one is refused, for its rate would never be found.
 */
export function workField(kinds: readonly string[]) {
  const known = [...kinds, ...WORKS];
  return z.string().transform((text, context): string => {
    const typed = text.trim();
    if (typed === "")
      return refuse(context, text, {
        code: "text-empty",
        message: "Nothing is written here.",
        expected: "a kind of item",
        hint: "Write it, or take it out.",
      });
    const word = typed.toLowerCase().replace(/[\s_]+/g, "-");
    const same =
      sameWord(word, known) ??
      sameWord(word.replace(/s$/, ""), known) ??
      sameWord(`${word}s`, known);
    if (same !== undefined) return same;
    const near = nearest(word, known);
    if (near === null || kinds.length === 0) return typed;
    return refuse(context, text, {
      code: "work-unknown",
      message: `“${text}” is no kind of item or work that is known here.`,
      expected: near,
      hint: `Did you mean ${near}?`,
    });
  });
}
