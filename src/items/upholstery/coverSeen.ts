import type { SeenSurface } from "../itemKind.ts";
import type { CoverMade } from "./makeCover.ts";
import { isHidden } from "./pieceTable.ts";

/** A line of welt shows about this much of itself (common practice, no source). */
const WELT_SHOWS_MM = 8;

/** Cloth seen of the cover: the finished pieces that show, or, while none are measured, `unmeasuredMm2` of one; and its welt. */
export function coverSeen(made: CoverMade, unmeasuredMm2: number): SeenSurface[] {
  const plain = { colour: null, object: null };
  const sums = new Map<string, { cloth: string; areaMm2: number }>();
  const add = (surface: string, cloth: string, areaMm2: number) => {
    const before = sums.get(surface)?.areaMm2 ?? 0;
    sums.set(surface, { cloth, areaMm2: before + areaMm2 });
  };
  for (const piece of made.pieces) {
    if (isHidden(piece.piece)) continue;
    const [width, length] = piece.finished;
    add(piece.surface, piece.cloth, width.toMm() * length.toMm() * piece.count * made.count);
  }
  if (made.pieces.length === 0) add("cover", made.job.cloth, unmeasuredMm2 * made.count);
  if (made.welt) add("welt", made.welt.cloth, made.welt.length.toMm() * WELT_SHOWS_MM);
  return [...sums].map(([surface, s]) => ({ surface, ...plain, ...s }));
}
