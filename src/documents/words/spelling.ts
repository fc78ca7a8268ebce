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
