import { joinedPieces } from "./faceCuts.ts";
import type { CurtainsPlan } from "./plan.ts";

/** Where seams and motifs stand on one closed curtain, in millimetres from the left end of its front and from its hem. */
export interface FlatView {
  readonly seams: readonly number[];
  readonly motifs: readonly { readonly x: number; readonly aboveHem: number }[];
  /** Heights at which motifs of the unshifted columns stand level across the pair. */
  readonly levels: readonly number[];
}

/**
 * Maps the flat joined panel onto the curtain's front: pleats take up cloth evenly, so a place on the flat panel stands at the same
 * share of the finished one; the return and the overlap are not seen from the front.
 */
export function flatView(plan: CurtainsPlan, side: "left" | "right"): FlatView {
  const flat = plan.panel.flat.toMm();
  const finished = plan.panel.finished.toMm();
  const front = plan.hung.pole.toMm() / plan.coverage.curtains;
  const returnEach = plan.coverage.returnEach.toMm();
  const overlapEach = plan.coverage.curtains === 2 ? plan.coverage.overlap.toMm() / 2 : 0;
  // Of a left curtain the return comes first from the left; of a right one the overlap.
  const hidden = side === "left" || plan.coverage.curtains === 1 ? returnEach : overlapEach;
  const toFront = (x: number) => (x * finished) / flat - hidden;
  const seen = (x: number) => x > front * 0.01 && x < front * 0.99;
  if (plan.railroaded) return { seams: [], motifs: [], levels: [] };

  const usable = plan.usableWidth.toMm();
  const join = plan.join.toMm();
  const sideHem = plan.coverage.sideHem.toMm();
  const pieces = joinedPieces(plan.widthsEach, side);
  const seams: number[] = [];
  const motifs: { x: number; aboveHem: number }[] = [];
  const { repeat } = plan.cloth;
  const matched = repeat && repeat.match !== "free" ? repeat : null;
  const up = matched?.up.toMm() ?? 0;
  const drop = plan.hung.drop.toMm();
  const lowest = plan.lowestMotif?.toMm() ?? null;
  const across = matched?.across?.toMm() ?? null;
  const first = matched?.fromSelvedge?.toMm() ?? (across ? across / 2 : usable / 2);

  // Left edge of each piece's cloth on the flat panel, counted from the panel's left finished edge.
  // What is trimmed falls at the return side: a left curtain's left edge.
  let left = -sideHem - (side === "left" ? plan.trimmed.toMm() : 0);
  for (const [at, piece] of pieces.entries()) {
    const wide = piece.whole ? usable : usable / 2;
    // A left curtain's half is the right half of its width.
    const cutFrom = !piece.whole && side === "left" ? usable / 2 : 0;
    if (at > 0) seams.push(toFront(left + join));
    if (lowest !== null && up > 0) {
      const columns = across ? Math.max(1, Math.floor((usable - first) / across) + 1) : 1;
      for (let k = 0; k < Math.min(columns, 2); k += 1) {
        const onCloth = first + k * (across ?? 0) - cutFrom;
        if (onCloth < 0 || onCloth > wide) continue;
        const x = toFront(left + onCloth);
        if (!seen(x)) continue;
        const dropped =
          (matched?.match === "half-drop" && k % 2 === 1 ? up / 2 : 0) +
          (plan.shifts && piece.fromLeading % 2 === 1 ? up / 2 : 0);
        for (let y = (lowest + dropped) % up; y < drop; y += up) motifs.push({ x, aboveHem: y });
      }
    }
    left += wide - 2 * join;
  }
  const levels: number[] = [];
  if (lowest !== null && up > 0) for (let y = lowest; y < drop; y += up) levels.push(y);
  return { seams: seams.filter(seen), motifs, levels };
}
