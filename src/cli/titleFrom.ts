/** A title made from a file name: `fern-trellis` is Fern trellis. */
export function titleFrom(name: string): string {
  const words = name.replace(/[-_]+/g, " ").trim();
  return words.charAt(0).toUpperCase() + words.slice(1);
}
