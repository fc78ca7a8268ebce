import type { ClothPattern, CutPiece, Grains } from "../piece.ts";
import { kindsOf } from "./kinds.ts";
import { firstX, type Mode, mod, modesOf, X_AT, X_FREE } from "./modes.ts";
import { startsFor } from "./starts.ts";

export interface LaidPiece {
  readonly piece: CutPiece;
  readonly mode: Mode;
  readonly x: Grains;
  readonly y: Grains;
}

export interface ItemByItem {
  readonly length: Grains;
  readonly start: Grains;
  readonly laid: readonly LaidPiece[];
  /** The feet of the rows and the end: nothing crosses them. */
  readonly rows: readonly Grains[];
}

/**
 * The same pieces laid in the order given, in register, row upon row: pieces go side by side as long as they lie in the row
 * without making it longer than its first piece's group does. This is what the handbooks' arithmetic becomes when each row
 * really begins at its own next pattern point. Of the starts given, or else of those that a kind in register suggests, the
 * shortest is taken. Every piece must have a legal place across (see `problemsOf`).
 */
export function itemByItem(
  usableWidth: Grains,
  pattern: ClothPattern | null,
  pieces: readonly CutPiece[],
  starts: readonly Grains[] | null = null,
): ItemByItem {
  const vertical = pattern?.vertical ?? 0;
  const tried = starts ?? startsFor(kindsOf(pieces, pattern, usableWidth), vertical, 8);
  // Unturned unless only turned fits.
  const modes = pieces.map((piece) => {
    const all = modesOf(piece, pattern, usableWidth);
    const upright = all.filter((mode) => !mode.turned);
    return upright.length > 0 ? upright : all;
  });
  let best: ItemByItem | null = null;
  for (const start of tried.length > 0 ? tried : [0]) {
    const laid = layRows(usableWidth, vertical, pieces, modes, start);
    if (!best || laid.length < best.length) best = laid;
  }
  return best as ItemByItem;
}

function layRows(
  usableWidth: Grains,
  vertical: Grains,
  pieces: readonly CutPiece[],
  modes: readonly (readonly Mode[])[],
  start: Grains,
): ItemByItem {
  const laid: LaidPiece[] = [];
  const rows: Grains[] = [];
  let rowFoot = 0;
  let rowTop = 0;
  let right = 0;
  let group: string | null = null;
  const lay = (piece: CutPiece, mode: Mode, x: Grains, y: Grains) => {
    laid.push({ piece, mode, x, y });
    right = x + mode.width;
    rowTop = Math.max(rowTop, y + mode.height);
  };
  pieces.forEach((piece, i) => {
    const own = modes[i] as readonly Mode[];
    const fits = (mode: Mode) => {
      const x = nextX(mode, right, usableWidth);
      const y = nextY(mode, rowFoot, vertical, start);
      return x !== null && (group === piece.group || y + mode.height <= rowTop) ? { x, y } : null;
    };
    const beside = own
      .map((mode) => ({ mode, at: fits(mode) }))
      .filter((each) => each.at !== null)
      .sort((a, b) => topOf(a) - topOf(b))[0];
    if (laid.length > 0 && beside?.at) {
      lay(piece, beside.mode, beside.at.x, beside.at.y);
      return;
    }
    rowFoot = rowTop;
    group = piece.group;
    rows.push(rowFoot);
    const mode = [...own].sort(
      (a, b) =>
        nextY(a, rowFoot, vertical, start) +
        a.height -
        nextY(b, rowFoot, vertical, start) -
        b.height,
    )[0] as Mode;
    lay(piece, mode, firstX(mode, usableWidth) ?? 0, nextY(mode, rowFoot, vertical, start));
  });
  rows.push(rowTop);
  return { length: rowTop, start, laid, rows };
}

function topOf(each: { mode: Mode; at: { x: Grains; y: Grains } | null }): Grains {
  return (each.at?.y ?? 0) + each.mode.height;
}

function nextX(mode: Mode, from: Grains, usableWidth: Grains): Grains | null {
  const last = usableWidth - mode.width;
  if (mode.xRule === X_FREE) return from <= last ? from : null;
  if (mode.xRule === X_AT) return mode.xPositions.find((x) => x >= from && x <= last) ?? null;
  const k = Math.max(0, Math.ceil((from - mode.xResidue) / mode.xPeriod));
  const x = mode.xResidue + k * mode.xPeriod;
  return x <= last ? x : null;
}

function nextY(mode: Mode, from: Grains, vertical: Grains, start: Grains): Grains {
  return mode.yResidue === null ? from : from + mod(mode.yResidue - start - from, vertical);
}
