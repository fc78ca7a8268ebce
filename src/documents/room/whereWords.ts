import type { ItemData, RoomData } from "../projectData.ts";
import { itemPhrase, type Language, listed } from "../words/phrases.ts";

const HIDDEN: ReadonlySet<string> = new Set(["lining", "interlining"]);
/** The surfaces that an item's name stands for. */
const MAIN: ReadonlySet<string> = new Set(["face", "cover", "paper", "panel"]);

/** A part in plain words: `welt`, `inside back`, `border`. */
function partWord(surface: string, language: Language): string {
  if (surface === "welt") return language === "en-US" ? "welt" : "piping";
  if (surface.startsWith("border-")) return "border";
  return surface.replaceAll("-", " ");
}

const NO_PLURAL: ReadonlySet<string> = new Set(["piping", "boxing"]);

/** True where a title names the kind already: `Stove chair` an armchair, `Lane shade` a Roman shade. */
function saysKind(title: string, item: ItemData, language: Language): boolean {
  if (item.kind.kind === "wallpaper") return true;
  const noun = item.kind.words[language].one.toLowerCase();
  const last = noun.split(" ").at(-1) as string;
  return title
    .toLowerCase()
    .split(/[^a-z]+/)
    .some((word) => word.length > 3 && (last.endsWith(word) || word.replace(/s$/, "") === last));
}

interface Use {
  readonly item: ItemData;
  readonly surfaces: readonly string[];
}

/** What a cloth is on one item: nothing where the title itself says it, else its kind, or the parts that are in this cloth. */
function phraseOf({ item, surfaces }: Use, isShared: boolean, language: Language): string {
  const { title } = item.record;
  const said = saysKind(title, item, language);
  if (surfaces.some((s) => MAIN.has(s))) return said ? "" : itemPhrase(item, language);
  const count = (item.record.fields as { count?: number }).count ?? 1;
  const words = [...new Set(surfaces.map((s) => partWord(s, language)))];
  const parts = listed(words.map((w) => (count > 1 && !said && !NO_PLURAL.has(w) ? `${w}s` : w)));
  if (said && (!isShared || item.kind.kind !== "cushion")) return parts;
  const { one, many } = item.kind.words[language];
  const noun = count > 1 ? many : one;
  return `${parts} of ${isShared ? "its" : "the"} ${noun}`;
}

/** The places of one title in words: `Stove chair: welt, and back of its pillow`. */
function placeWords(title: string, phrases: readonly string[]): string {
  const named = phrases.filter((p) => p !== "");
  if (named.length === 0) return title;
  const others =
    named.length > 1 ? `${named.slice(0, -1).join(", ")}, and ${named.at(-1)}` : named[0];
  return named.length < phrases.length ? `${title}, and ${others}` : `${title}: ${others}`;
}

/**
 * The places of a cloth, by the items' own titles, each title once: `Garden window: drapery`, `Stove chair: welt, and back of its
 * pillow`. The kind is left out where the title says it. Linings are not seen.
 */
export function clothPlaces(cloth: string, room: RoomData, language: Language): string[] {
  const uses = room.items.flatMap((item): Use[] => {
    const surfaces = item.kind
      .cloths(item.record.fields as never)
      .filter((u) => u.cloth === cloth && !HIDDEN.has(u.surface))
      .map((u) => u.surface);
    return surfaces.length > 0 ? [{ item, surfaces }] : [];
  });
  const titles = [...new Set(uses.map((u) => u.item.record.title))];
  return titles.map((title) => {
    const isShared = room.items.filter((i) => i.record.title === title).length > 1;
    const own = uses.filter((u) => u.item.record.title === title);
    return placeWords(
      title,
      own.map((u) => phraseOf(u, isShared, language)),
    );
  });
}
