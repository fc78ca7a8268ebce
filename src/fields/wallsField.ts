import { z } from "zod";
import { refuse } from "./fault.ts";
import { listField, refField } from "./plainFields.ts";
import { alignmentDistance } from "./suggest.ts";
import { sameWord } from "./vocabulary.ts";

/** The word that a slip of one letter stands for, no more: a wall may well be called wall-a. */
export function wordMeant(text: string, words: readonly string[]): string | undefined {
  return words.find((each) => alignmentDistance(text.toLowerCase(), each) === 1);
}

/**
 * Which walls: one of some words (`walls` for all of them), the name of one wall, or a list of names. One name is read as a list of
 * one; names with commas between them and no brackets are refused, for they would be the name of one wall that is not there.
 */
export function wallsField<const W extends string>(words: readonly W[]) {
  const alone = z
    .string()
    .transform((text, context): W | string[] => {
      const clean = text.trim();
      const word = sameWord(clean.toLowerCase(), words) as W | undefined;
      if (word !== undefined) return word;
      const names = clean.split(/\s*,\s*/).filter((each) => each !== "");
      const near = wordMeant(clean, words);
      if (names.length === 1 && near === undefined) return [clean.normalize("NFC")];
      return refuse(context, text, {
        code: "word-unknown",
        message: `“${text}” is not one of the words that can stand here.`,
        expected: `${words.join(", ")}, a wall's name, or some walls in [ ]`,
        hint: near ? `Did you mean ${near}?` : `Write [${names.join(", ")}].`,
      });
    })
    .meta({ words: [...words], ref: "a wall" });
  return z.union([alone, listField(refField("a wall"))]);
}
