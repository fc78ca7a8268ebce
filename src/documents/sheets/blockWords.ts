import { marked } from "../words/marks.ts";
import { countWord, listed } from "../words/phrases.ts";
import { framesHeight } from "./itemHeights.ts";

/** A line to tick; what is to be written in is kept beside the words that ask for it. */
export function checkRow({ text, blank }: { text: string; blank: string | null }) {
  const at = blank === null ? -1 : text.lastIndexOf("; ");
  return at < 0
    ? { text: marked(text), asked: null, blank }
    : { text: marked(text.slice(0, at + 1)), asked: marked(text.slice(at + 2)), blank };
}

/** What stands on an item's second page, said on the first. */
export function onNext(drawings: number, materials: number): string {
  const parts = [
    drawings > 0 ? `${countWord(drawings)} more ${drawings > 1 ? "drawings" : "drawing"}` : "",
    materials > 0 ? "materials" : "",
    "what to check",
  ];
  return `Next page: ${listed(parts.filter((part) => part !== ""))}.`;
}

/** The mark over an item that is not the first of its page: the reasons are said once a page. */
export function notForCutting(reasons: readonly string[], first: string | null): string {
  if (reasons.length === 0) return "";
  return `NOT FOR CUTTING. ${first === null ? reasons.join(" ") : `${first} says why.`}`;
}

/** The item that says why, as wide as it can be named, while its number is not known. */
export const SOME_ITEM = "Item 88";

/** What the reasons why nothing may be cut take more where they are said whole, millimetres. */
export function reasonsMore(reasons: readonly string[]): number {
  const tall = (first: string | null) =>
    framesHeight([notForCutting(reasons, first)].filter((text) => text !== ""));
  return tall(null) - tall(SOME_ITEM);
}
