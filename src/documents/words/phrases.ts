import type { Role } from "../../scheme/roles.ts";
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

const LOOKS: Readonly<Record<string, string>> = { stripe: "Stripe", check: "Check" };

/** A role in words; a geometric that is a stripe or a check is called so. */
export function roleWord(role: Role, kind: string | null, isPaper: boolean): string {
  if (isPaper) return "Wallpaper";
  return role === "geometric" && kind && LOOKS[kind] ? (LOOKS[kind] as string) : ROLE_WORDS[role];
}

const SMALL = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

/** A count in words up to twelve, else in figures. */
export function countWord(n: number): string {
  return SMALL[n] ?? String(n);
}

/** `two cushions`, `curtains`, `armchair`: the item's kind in the studio's vocabulary, counted. */
export function itemPhrase(item: ItemData, language: Language): string {
  const words = item.kind.words[language];
  const count = (item.record.fields as { count?: number }).count ?? 1;
  if (count > 1) return `${countWord(count)} ${words.many}`;
  return words.one;
}

/** Where a cloth goes in a room: the items that show it, in words, each once. */
export function placesOf(cloth: string, room: RoomData, language: Language): string[] {
  const out = room.items.flatMap((item) => {
    const uses = item.kind.cloths(item.record.fields as never).filter((u) => u.cloth === cloth && u.surface !== "lining" && u.surface !== "interlining");
    if (uses.length === 0) return [];
    const surfaces = uses.map((u) => u.surface);
    const phrase = itemPhrase(item, language);
    if (surfaces.every((s) => s === "welt")) return [`${language === "en-US" ? "welt" : "piping"} on the ${phrase.replace(/^\w+ (?=cushions|pillows)/, "")}`];
    if (surfaces.every((s) => s === "back")) return [`back of the ${phrase.replace(/^\w+ (?=cushions|pillows)/, "")}`];
    return [phrase];
  });
  return [...new Set(out)];
}

/** `A`, `A and B`, `A, B and C`. */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

/** With a capital at its head. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** One part in words: `one third`, `one half`, `one quarter`, else `one to 15`. */
export function scaleWords(scale: number): string {
  const names: Readonly<Record<number, string>> = { 1: "true size", 2: "half their true size", 3: "one third of their true size", 4: "one quarter of their true size", 5: "one fifth of their true size", 6: "one sixth of their true size" };
  return names[scale] ?? `1 : ${scale} of their true size`;
}
