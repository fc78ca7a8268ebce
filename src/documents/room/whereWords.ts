import type { RoomData } from "../projectData.ts";
import { itemPhrase, type Language } from "../words/phrases.ts";

const HIDDEN: ReadonlySet<string> = new Set(["lining", "interlining"]);

/** The places of a cloth, each by its item's own title: `Garden window, drapery; Stove chair, welt`. Linings are not seen. */
export function whereWords(cloth: string, room: RoomData, language: Language): string {
  const words = room.items.flatMap((item): string[] => {
    const uses = item.kind
      .cloths(item.record.fields as never)
      .filter((u) => u.cloth === cloth && !HIDDEN.has(u.surface))
      .map((u) => u.surface);
    if (uses.length === 0) return [];
    const { title: own, kind } = item.record;
    // A chair and its cushion may bear one title: then the kind tells them apart.
    const isShared = room.items.some((i) => i !== item && i.record.title === own);
    const title = isShared ? `${own} ${item.kind.words[language].one}` : own;
    if (uses.every((s) => s === "welt" || s === "back")) {
      const welt = language === "en-US" ? "welt" : "piping";
      const parts = [
        ...(uses.includes("back") ? ["back"] : []),
        ...(uses.includes("welt") ? [welt] : []),
      ];
      return [`${title}, ${parts.join(" and ")}`];
    }
    const phrase = itemPhrase(item, language);
    const isSaid = kind === "wallpaper" || title.toLowerCase().includes(phrase.toLowerCase());
    return [isSaid ? title : `${title}, ${phrase}`];
  });
  return words.join("; ");
}
