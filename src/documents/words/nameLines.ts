import { shortened } from "./phrases.ts";

/**
 * A name on one line where it has no more than `letters`, else on two that are as alike as they can be. Where that is not enough, a line
 * may have `most` letters; what is longer than even two of them, or a word that is longer than one, ends in an ellipsis.
 */
export function nameLines(name: string, letters: number, most = letters): string[] {
  const lines = brokenAt(name, letters);
  return lines.at(-1)?.endsWith("…") && most > letters ? brokenAt(name, most) : lines;
}

function brokenAt(name: string, letters: number): string[] {
  if (name.length <= letters) return [name];
  // A hyphen stays at the end of its line; a space goes.
  const breaks = [...name.matchAll(/\s+|(?<=[\p{L}\p{N}]-)(?=\p{L})/gu)].map((found) => ({
    first: name.slice(0, found.index),
    rest: name.slice(found.index + found[0].length),
  }));
  const longest = ({ first, rest }: { first: string; rest: string }): number =>
    Math.max(first.length, rest.length);
  const [best] = breaks
    .filter((at) => longest(at) <= letters)
    .sort((a, b) => longest(a) - longest(b));
  if (best) return [best.first, best.rest];
  // As much as there is room for: the first line is filled, the second is cut.
  const filled = breaks.filter(({ first }) => first.length <= letters).at(-1);
  return filled ? [filled.first, shortened(filled.rest, letters)] : [shortened(name, letters)];
}
