import { within } from "../../units/capital.ts";
import { listed } from "../words/phrases.ts";

const STEP_NAMES = ["First", "Second", "Third", "Fourth", "Fifth"];
/** How easily a step is undone, by its hardest item. */
const STEP_WORDS: Readonly<Record<1 | 2 | 3, string>> = {
  1: "Quick to do and easy to change. It sets the colours at once.",
  2: "Made to measure, once its samples have hung in the room.",
  3: "Hard to undo, so it waits until the rest has proved itself.",
};

/** What is said of a step that is hard to undo where no other goes before it. */
const HARD_ALONE = "Hard to undo, so its samples hang in the room first.";

/** First, second … last; where there is one alone it has no number. */
export function stepName(at: number, of: number): string {
  if (of === 1) return "All at once";
  return at === of - 1 && of > 1 ? "Last" : (STEP_NAMES[at] ?? `Step ${at + 1}`);
}

/** How easily a step is undone, and what goes before it: nothing but its samples where it stands alone. */
export function stepSentence(commitment: 1 | 2 | 3, isAlone: boolean): string {
  return isAlone && commitment === 3 ? HARD_ALONE : STEP_WORDS[commitment];
}

/** The rooms in a sentence, with one article: a name that brings its own, or begins with its owner, has none put before it. */
export function roomsPhrase(names: readonly string[]): string {
  if (names.length === 0) return "the project";
  const [first = "", ...others] = names.map(within);
  const bare = first.replace(/^the\s+(?=\S)/iu, "");
  const isOwned = /^\p{Lu}\p{L}*['’]s\b/u.test(bare);
  return `${isOwned && bare === first ? "" : "the "}${listed([bare, ...others])}`;
}

const STEP_COUNTS = ["", "", "Two", "Three", "Four", "Five"];

/** The head over the stair: fees are no step. */
export function stairHead(steps: number): string {
  if (steps < 2) return "Where the money goes";
  return `${STEP_COUNTS[steps] ?? steps} steps, one after another`;
}
