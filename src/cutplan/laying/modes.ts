import type { ClothPattern, CutPiece, Grains } from "../piece.ts";

export const X_FREE = 0;
export const X_REGISTER = 1;
export const X_AT = 2;

/**
 * One way in which a piece may lie: a size, a rule across and a rule along. Every kind of piece is a set of modes
 * (orientation by column parity), and the planner knows nothing else about it.
 */
export interface Mode {
  readonly width: Grains;
  readonly height: Grains;
  readonly turned: boolean;
  readonly xRule: typeof X_FREE | typeof X_REGISTER | typeof X_AT;
  /** For X_REGISTER: x = xResidue + k xPeriod, k >= 0. */
  readonly xResidue: Grains;
  readonly xPeriod: Grains;
  /** For X_AT: the legal places, ascending. */
  readonly xPositions: readonly Grains[];
  /** y + start = yResidue modulo the vertical repeat; null: free. */
  readonly yResidue: Grains | null;
  /** The residues as a reader would check them: modulo the repeats, and on half-drop cloth those of column 0. */
  readonly registerX: Grains | null;
  readonly registerY: Grains | null;
}

/** The remainder that is never negative. */
export function mod(value: number, period: number): number {
  return value - Math.floor(value / period) * period;
}

/** The modes of one piece that have a legal place across a cloth of this usable width. */
export function modesOf(
  piece: CutPiece,
  pattern: ClothPattern | null,
  usableWidth: Grains,
): Mode[] {
  const turns = piece.mayTurn && piece.across.rule !== "at" && piece.width !== piece.height;
  const lying = turns ? [false, true] : [false];
  return lying
    .flatMap((turned) => modesLying(piece, pattern, usableWidth, turned))
    .filter((mode) => firstX(mode, usableWidth) !== null);
}

/** The leftmost legal x of a mode, or null if it has none. */
export function firstX(mode: Mode, usableWidth: Grains): Grains | null {
  const last = usableWidth - mode.width;
  if (last < 0) return null;
  if (mode.xRule === X_FREE) return 0;
  if (mode.xRule === X_REGISTER) return mode.xResidue <= last ? mode.xResidue : null;
  return mode.xPositions[0] ?? null;
}

/** The legal x nearest to one end of [from, to], or -1. */
export function nearestX(mode: Mode, from: Grains, to: Grains, rightward: boolean): Grains {
  if (mode.xRule === X_FREE) return rightward ? to : from;
  if (mode.xRule === X_AT) {
    let found = -1;
    for (const x of mode.xPositions) {
      if (x < from || x > to) continue;
      found = x;
      if (!rightward) break;
    }
    return found;
  }
  const { xResidue, xPeriod } = mode;
  if (rightward) {
    const x = xResidue + Math.floor((to - xResidue) / xPeriod) * xPeriod;
    return x >= from && x >= xResidue ? x : -1;
  }
  const x = xResidue + Math.max(0, Math.ceil((from - xResidue) / xPeriod)) * xPeriod;
  return x <= to ? x : -1;
}

function modesLying(
  piece: CutPiece,
  pattern: ClothPattern | null,
  usableWidth: Grains,
  turned: boolean,
): Mode[] {
  const width = turned ? piece.height : piece.width;
  const height = turned ? piece.width : piece.height;
  // A piece in register keeps its middle on the motif when it is turned.
  const shift = turned ? Math.floor((piece.width - piece.height) / 2) : 0;
  const horizontal = pattern?.horizontal ?? 0;
  const vertical = pattern?.vertical ?? 0;
  const { across, along } = piece;
  const inRegisterX = across.rule === "register" && horizontal > 0;
  const yResidue =
    along.rule === "register" && vertical > 0 ? mod(along.residue - shift, vertical) : null;
  const base = {
    width,
    height,
    turned,
    xResidue: 0,
    xPeriod: 0,
    xPositions: [],
    yResidue,
    registerX: null,
    registerY: yResidue,
  };
  if (across.rule === "at") {
    const xPositions = [...new Set(across.positions)]
      .filter((x) => x >= 0 && x + width <= usableWidth)
      .sort((a, b) => a - b);
    return [{ ...base, xRule: X_AT, xPositions }];
  }
  if (!inRegisterX) return [{ ...base, xRule: X_FREE }];
  const xResidue = mod(across.residue + shift, horizontal);
  const inRegister = { ...base, xRule: X_REGISTER, registerX: xResidue } as const;
  if (pattern?.match !== "half-drop" || yResidue === null) {
    return [{ ...inRegister, xResidue, xPeriod: horizontal }];
  }
  // Odd columns of a half-drop lie half a repeat away: two modes, one a parity. Columns count from the residue as it was
  // given, which may lie outside the first repeat.
  const given = Math.floor((across.residue + shift) / horizontal);
  const ofColumn = (column: number) =>
    mod(yResidue + mod(column + given, 2) * Math.floor(vertical / 2), vertical);
  return [0, 1].map((column) => ({
    ...inRegister,
    xResidue: xResidue + column * horizontal,
    xPeriod: 2 * horizontal,
    yResidue: ofColumn(column),
    registerY: ofColumn(0),
  }));
}
