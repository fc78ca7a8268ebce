import { dateInWords } from "../words/dates.ts";

const WORDS: Readonly<Record<string, string>> = {
  approval: "when you sign",
  order: "when the cloth is ordered",
  fitting: "when everything is fitted",
};

/** When a part is to be paid, as the client reads it: by what happens, or on a day in the words of the documents' language. */
export function whenDue(due: string, language: string): string {
  const word = WORDS[due.trim().toLowerCase()];
  if (word) return word;
  return /^\d{4}-\d{2}-\d{2}$/.test(due) ? `on ${dateInWords(due, language)}` : due;
}
