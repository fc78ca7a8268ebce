import { scaleWords } from "../words/phrases.ts";

/** How a board speaks of its cloths: of one alone nothing is said of each, nor that it is compared with others. */

/** The scale of the cuttings on paper: one to so much. */
export function shownAt(cloths: number, scale: number): string {
  return cloths === 1
    ? `The cloth is shown at ${scaleWords(scale, "its")}.`
    : `Cloths are shown at ${scaleWords(scale)}.`;
}

/** The same on a screen, where no scale in figures is true. */
export function shownAlike(cloths: number): string {
  return cloths === 1 ? "" : "All cloths are shown at one scale.";
}

/** The heads of the lists of where each cloth and each colour goes; in British spelling. */
export function listHead(of: "cloth" | "colour", count: number): string {
  return `${count === 1 ? "The" : "Each"} ${of}`;
}

/** What is said of the cuttings beside the first list's head; empty of one alone, which stands beside no other scale. */
export function cuttingWords(cloths: number): string {
  return cloths === 1 ? "" : "Each cutting shows a motif of its cloth; they are not at one scale.";
}

/** The scale page's title, by how many patterns hang on it. */
export function scaleTitle(patterns: number): string {
  if (patterns === 1) return "How large it is";
  return patterns > 2 ? "Large, middling, small" : "Large and small";
}
