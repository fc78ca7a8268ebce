import type { ClothFacts } from "../itemKind.ts";

/** How the pieces of a cloth with a pile, or whose pattern runs one way, lie to each other; null where it does not matter. */
export function wayLine({ nap, oneWay }: ClothFacts, pieces = "pieces"): string | null {
  if (nap) return `Pile or sheen: all ${pieces} one way.`;
  return oneWay ? `All ${pieces} the same way up.` : null;
}
