/** Our own fixed sentences are written in British spelling; these are the words that differ in them. */
const AMERICAN: readonly (readonly [RegExp, string])[] = [
  [/\bcolour/g, "color"],
  [/\bColour/g, "Color"],
  [/\bgrey/g, "gray"],
  [/\bGrey/g, "Gray"],
  [/\bmetre/g, "meter"],
  [/\bfibre/g, "fiber"],
  [/\bneighbour/g, "neighbor"],
  [/\bcentred/g, "centered"],
  [/\bcentre/g, "center"],
  [/\bjudgement/g, "judgment"],
  [/\bcushion/g, "pillow"],
  [/\bCushion/g, "Pillow"],
];

/** A sentence of ours in the studio's language. Never for what a person wrote. */
export function spelled(text: string, language: string): string {
  if (language !== "en-US") return text;
  return AMERICAN.reduce((out, [from, to]) => out.replace(from, to), text);
}

/**
 * Sentences in the studio's language as a template's tag: our own words are spelled, and what is put into them (a cloth's name, a title
 * that a person wrote) stays as it is.
 */
export function wordsIn(
  language: string,
): (ours: TemplateStringsArray, ...theirs: readonly (string | number)[]) => string {
  return (ours, ...theirs) =>
    ours.reduce(
      (out, part, at) => `${out}${at > 0 ? theirs[at - 1] : ""}${spelled(part, language)}`,
      "",
    );
}
