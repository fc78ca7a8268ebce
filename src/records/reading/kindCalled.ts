import { nearest } from "../../fields/suggest.ts";
import { sameWord } from "../../fields/vocabulary.ts";
import type { ItemEntry } from "../itemTable.ts";
import type { Synonyms } from "./resolveKeys.ts";

/** The other words for each kind of item, to its own. */
export function kindSynonyms(table: readonly Pick<ItemEntry, "kind" | "synonyms">[]): Synonyms {
  return new Map(table.flatMap(({ kind, synonyms }) => synonyms.map((word) => [word, kind])));
}

/** The kind of item that goes by a word of either vocabulary; nothing where none does. */
export function kindCalled<Entry extends Pick<ItemEntry, "kind">>(
  word: string,
  table: readonly Entry[],
  synonyms: Synonyms,
): Entry | undefined {
  const kinds = table.map((entry) => entry.kind);
  const kind = synonyms.get(word) ?? sameWord(word, kinds) ?? word;
  return table.find((entry) => entry.kind === kind);
}

/** What the trade calls by a name of its own and is written as a form of another kind. */
const FORMS: Readonly<Record<string, string>> = {
  bolster: "A bolster is a cushion: write cushion and its title, and below it form: bolster.",
  "box-cushion": "Write cushion and its title, and below it a thickness: that makes it a box.",
  "bench-cushion": "Write seat-pad and its title, and below it a thickness.",
  portiere: "A portière is a curtain at a door: write curtains and its title, and at: the door.",
  loveseat: "A loveseat is a sofa: write sofa and its title, and below it type: loveseat.",
  "two-seater": "A two-seater is a sofa: write sofa and its title, and below it type: loveseat.",
  "wing-chair":
    "A wing chair is an armchair: write armchair and its title, and below it type: wing.",
  "club-chair":
    "A club chair is an armchair: write armchair and its title, and below it type: club.",
  carver: "A carver is a dining chair: write dining-chair and its title, and below it arms: yes.",
  slipcover:
    "A slipcover is made of what it covers: write armchair or sofa and its title, and below it cover: loose.",
  "loose-cover":
    "A loose cover is made of what it covers: write armchair or sofa and its title, and below it cover: loose.",
  bed: "A bed is a card in objects: write object and the card's name; its headboard, coverlet and bed-skirt are items of their own.",
};

/** What is meant by a word that is no kind of item: one that is written as another, or one that is spelled nearly so; null where neither is. */
export function kindHint(
  word: string,
  table: readonly Pick<ItemEntry, "kind" | "synonyms">[],
): string | null {
  const near = nearest(
    word,
    table.flatMap((entry) => [entry.kind, ...entry.synonyms]),
  );
  return FORMS[word.toLowerCase().replace(/s$/, "")] ?? (near ? `Did you mean ${near}?` : null);
}
