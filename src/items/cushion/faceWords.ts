import { hasMotif } from "../common/join/centredMotif.ts";
import type { ClothFacts } from "../itemKind.ts";

/** What a drawing says in the middle of a face that no motif stands in; of a face without any pattern its own words. */
export function faceWords(shown: string, cloth: ClothFacts | null, own: string): string {
  if (shown === "gap") return "gap in the middle";
  return hasMotif(cloth) ? "as it falls" : own;
}
