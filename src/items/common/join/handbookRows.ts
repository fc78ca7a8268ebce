import { Length } from "../../../units/length.ts";

/** A rectangle as a handbook lays it: width across the cloth, length along it. */
export interface RowPiece {
  readonly width: Length;
  readonly length: Length;
}

/**
 * The handbook's figure for pieces in rows: longest first, each into the first row that has room beside; rows' widths add to no
 * more than the usable width, and a row is as long as its longest piece. Null where a piece is wider than the cloth.
 */
export function handbookRows(pieces: readonly RowPiece[], usableWidth: Length): Length | null {
  const rows: { left: Length; length: Length }[] = [];
  const sorted = [...pieces].sort((a, b) => b.length.compare(a.length) || b.width.compare(a.width));
  for (const piece of sorted) {
    if (piece.width.isMoreThan(usableWidth)) return null;
    const row = rows.find((r) => !piece.width.isMoreThan(r.left));
    if (row) row.left = row.left.minus(piece.width);
    else rows.push({ left: usableWidth.minus(piece.width), length: piece.length });
  }
  return Length.sum(rows.map((r) => r.length));
}
