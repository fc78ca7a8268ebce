/** The words with a capital at their head, as a line or a title begins. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The words with a small letter at their head, as they stand within a sentence. */
export function small(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
