/** The words with a capital at their head, as a line or a title begins. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
