import { capital, within } from "../units/capital.ts";
import type { ItemKind } from "./itemKind.ts";

/** What an item is called to a client: `Drapery, garden window`, in the words of a language. */
export function itemName(kind: Pick<ItemKind, "words">, title: string, language: string): string {
  return `${capital(kind.words[language as "en-US"].one)}, ${within(title)}`;
}
