import type { Role } from "../../scheme/roles.ts";
import { within } from "../../units/capital.ts";
import type { ItemData, RoomData } from "../projectData.ts";

export type Language = "en-US" | "en-GB";

const ROLE_WORDS: Readonly<Record<Role, string>> = {
  main: "Main cloth",
  supporting: "Supporting print",
  geometric: "Geometric",
  "small-print": "Small print",
  plain: "Plain",
  accent: "Accent",
};

const LOOKS: Readonly<Record<string, string>> = {
  stripe: "Stripe",
  check: "Check",
};

/** A role in words; a geometric that is a stripe or a check is called so. */
export function roleWord(role: Role, kind: string | null, isPaper: boolean): string {
  if (isPaper) return "Wallpaper";
  return role === "geometric" && kind && LOOKS[kind] ? (LOOKS[kind] as string) : ROLE_WORDS[role];
}

const SMALL = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/** A count in words up to twelve, else in figures. */
export function countWord(n: number): string {
  return SMALL[n] ?? String(n);
}

/** How the counts of one sentence or list are written: in words, or all in figures where one of them is over twelve. */
export function countsAlike(counts: readonly number[]): (n: number) => string {
  return counts.some((n) => n >= SMALL.length) ? String : countWord;
}

/** `two cushions`, `curtains`, `armchair`: the item's kind in the studio's vocabulary, counted. */
export function itemPhrase(item: ItemData, language: Language): string {
  return kindPhrase(item, (item.record.fields as { count?: number }).count ?? 1, language);
}

function kindPhrase(
  item: ItemData,
  count: number,
  language: Language,
  said: (n: number) => string = countWord,
): string {
  const words = item.kind.words[language];
  return count > 1 ? `${said(count)} ${words.many}` : words.one;
}

/** Items in words, each kind once with its count: `drapery`, `two armchairs`; in the order of the first of each kind. */
export function itemsPhrases(items: readonly ItemData[], language: Language): string[] {
  const kinds = new Map<string, { first: ItemData; count: number }>();
  for (const item of items) {
    const own = (item.record.fields as { count?: number }).count ?? 1;
    const { first, count } = kinds.get(item.kind.kind) ?? { first: item, count: 0 };
    kinds.set(item.kind.kind, { first, count: count + own });
  }
  const said = countsAlike([...kinds.values()].map(({ count }) => count));
  return [...kinds.values()].map(({ first, count }) => kindPhrase(first, count, language, said));
}

/** Where a cloth goes in a room: the items that show it, in words, each once. */
export function placesOf(cloth: string, room: RoomData, language: Language): string[] {
  const counted = new Map<string, { kind: ItemData; count: number }>();
  const out: string[] = [];
  let backs = 0;
  let welts = 0;
  for (const item of room.items) {
    const surfaces = item.kind
      .cloths(item.record.fields as never)
      .filter((u) => u.cloth === cloth && u.surface !== "lining" && u.surface !== "interlining")
      .map((u) => u.surface);
    if (surfaces.length === 0) continue;
    const count = (item.record.fields as { count?: number }).count ?? 1;
    if (surfaces.every((s) => s === "welt")) welts += count;
    else if (surfaces.every((s) => s === "back" || s === "welt")) backs += count;
    else if (item.kind.kind === "wallpaper") out.push(within(item.record.title));
    else
      counted.set(item.kind.kind, {
        kind: item,
        count: count + (counted.get(item.kind.kind)?.count ?? 0),
      });
  }
  out.push(...[...counted.values()].map(({ kind, count }) => kindPhrase(kind, count, language)));
  if (backs > 0) out.push(backs === 1 ? "a back" : "backs");
  if (welts > 0) out.push(language === "en-US" ? (welts === 1 ? "a welt" : "welts") : "piping");
  return out;
}

/** `A`, `A and B`, `A, B and C`. */
export function listed(words: readonly string[]): string {
  return words.length < 2
    ? (words[0] ?? "")
    : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

/** A name that stands in full elsewhere on the same sheet or board, cut at a word where it is longer than `letters`. */
export function shortened(name: string, letters: number): string {
  if (name.length <= letters) return name;
  const head = name.slice(0, letters - 1);
  // Whole words; one word alone is cut within.
  const cut = /\s/.test(name.charAt(letters - 1)) ? head : head.replace(/\s+\S*$/, "");
  return `${(cut === "" ? head : cut).trimEnd()}…`;
}

/** At what part of true size, in words: `one third of their true size`. */
export function scaleWords(scale: number, whose: "their" | "its" = "their"): string {
  const parts = [
    "",
    "",
    "half",
    "one third of",
    "one quarter of",
    "one fifth of",
    "one sixth of",
    "one seventh of",
    "one eighth of",
    "one ninth of",
    "one tenth of",
  ];
  if (scale === 1) return `${whose} true size`;
  return `${parts[scale] ?? `one part in ${scale} of`} ${whose} true size`;
}
