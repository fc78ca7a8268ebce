import type { CoverPiece } from "./coverPiece.ts";

/** The box on a sheet that the pieces should fill, in millimetres of paper. */
const PAPER = { width: 116, height: 46 };
/** Room under and beside each piece, in millimetres of paper. */
const GAP = 5;

/** A piece where it is drawn, from its upper left corner, in millimetres. */
export interface LaidPiece {
  readonly piece: CoverPiece;
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** Pieces in rows, tallest first, `wide` millimetres at the most. */
function rowsOf(pieces: readonly CoverPiece[], wide: number, gap: number) {
  const sorted = [...pieces].sort(
    (a, b) => b.cut[1].compare(a.cut[1]) || b.cut[0].compare(a.cut[0]),
  );
  const laid: LaidPiece[] = [];
  const rows: { left: number; y: number }[] = [];
  let foot = 0;
  let width = 0;
  for (const piece of sorted) {
    const [w, h] = [piece.cut[0].toMm(), piece.cut[1].toMm()];
    let row = rows.find((r) => r.left + w <= wide + 0.001);
    if (!row) {
      row = { left: 0, y: foot };
      rows.push(row);
      foot += h + gap;
    }
    laid.push({ piece, x: row.left, y: row.y, w, h });
    row.left += w + gap;
    width = Math.max(width, row.left - gap);
  }
  return { laid, width, height: foot - gap };
}

/** The layout that gives the largest scale on paper: pieces in rows, with its own width, height and scale. */
export function layOutPieces(pieces: readonly CoverPiece[]) {
  const widest = Math.max(...pieces.map((p) => p.cut[0].toMm()));
  let best: { laid: LaidPiece[]; width: number; height: number; scale: number } | null = null;
  for (const share of [1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 5, 6]) {
    const wide = widest * share;
    // The gap is one of paper: found from the scale that this width would give.
    const gap = (GAP * wide) / PAPER.width;
    const tried = rowsOf(pieces, wide, gap);
    const scale = Math.max(tried.width / PAPER.width, tried.height / PAPER.height);
    if (best === null || scale < best.scale) best = { ...tried, scale };
  }
  return best as NonNullable<typeof best>;
}
