import type { Field, HangPiece, HungPiece } from "./hangPiece.ts";

/** A mix whose weight lies further than this share of the field's width from its middle leans (print design 6, step 7). */
export const MOST_LEAN = 0.12;
/** White cloth weighs something too: so much of what black would. */
const WHITE = 0.35;

/**
 * Where a mix's weight lies: each piece weighs its area times its darkness, on its middle. As a share of the field's width to the right
 * of the field's middle; negative to the left. The rule is the project's own; that large and dark weigh is common practice, no source.
 */
export function leanOf(
  pieces: readonly HangPiece[],
  hung: readonly HungPiece[],
  field: Field,
): number {
  let weight = 0;
  let moment = 0;
  for (const h of hung) {
    const lightness = pieces.find((p) => p.id === h.id)?.lightness ?? 50;
    const own = h.width * h.height * (WHITE + (1 - WHITE) * (1 - lightness / 100));
    weight += own;
    moment += own * (h.x + h.width / 2 - field.width / 2);
  }
  return weight > 0 ? moment / weight / field.width : 0;
}
