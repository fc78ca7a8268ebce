import type { ClothFacts } from "../itemKind.ts";
import type { Development } from "./development.ts";

/**
 * Asked of sloping sides in any cloth that has a way up, by its pattern or its pile: laid flat it is upright only in a panel's middle and
 * leans towards both straight edges by up to half the panel's angle. Null for a cloth that has none.
 */
export function leanQuestion(
  net: Development,
  panels: number,
  { name, repeat, mayTurn, nap }: ClothFacts,
): string | null {
  if (!repeat && mayTurn) return null;
  const what = !repeat && nap ? "pile" : "pattern";
  const lean = Math.round(net.angleDeg / panels / 2);
  const where =
    panels > 1
      ? "in the middle of each panel and leans towards the seams"
      : "opposite the seam and leans towards it";
  const over = lean > 90 ? ", so that it is head down there" : "";
  return `On sloping sides the ${what} of ${name} stands upright only ${where} on both sides, by ${lean}° at the seam${over}: is that wanted?`;
}
