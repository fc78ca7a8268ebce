/** The words with a capital at their head, as a line or a title begins. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The words with a small letter at their head, as they stand within a sentence. */
export function small(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

/** Whose a room may be without being anybody's in particular. */
const NOBODY = [
  "boy",
  "butler",
  "child",
  "children",
  "cook",
  "girl",
  "guest",
  "maid",
  "master",
  "men",
  "nurse",
  "women",
];

/**
 * A name that somebody gave, as it stands within a sentence: with a small letter at its head (`dining room`), but as it was typed where it has
 * capitals of its own (`Oak Room`, `TV corner`), begins with somebody's name (`Anna’s room`), or is a letter or a number of a plan (`B`, `C1`,
 * `W2 left`).
 */
export function within(name: string): string {
  const owner = /^(\p{L}+)['’]s\b/u.exec(name)?.[1];
  const isSomebodys = owner !== undefined && !NOBODY.includes(owner.toLowerCase());
  const isOfPlan = /^\p{L}(?:$|[^\p{L}\s]*\d)/u.test(name);
  return isOfPlan || isSomebodys || /\p{Lu}/u.test(name.slice(1)) ? name : small(name);
}
