import type { Grains } from "../piece.ts";
import { LOWEST_FOOT, LOWEST_TOP, RIGHTWARD, UPWARD } from "../search/wishes.ts";
import type { FreeSpaces } from "./freeSpaces.ts";
import { type Mode, mod, nearestX, X_AT, X_FREE } from "./modes.ts";

/** In `rules`, beside those of a mode: the one legal place across is known. */
const X_ONE = -1;

/**
 * Finds the best legal place of a piece in the free spaces. A legal place is closed form: the next y, and the next x, in the mode's
 * congruence class. Modes are numbered, and their numbers kept in flat lists: this is asked more often than anything else.
 */
export class BestPlace {
  readonly widths: Float64Array;
  readonly heights: Float64Array;
  /** What was found last. */
  mode = -1;
  x = 0;
  y = 0;
  private readonly residues: Float64Array;
  private readonly rules: Int32Array;
  private readonly onlyX: Float64Array;

  constructor(
    private readonly modes: readonly Mode[],
    private readonly spaces: FreeSpaces,
    private readonly vertical: Grains,
  ) {
    this.widths = Float64Array.from(modes, (mode) => mode.width);
    this.heights = Float64Array.from(modes, (mode) => mode.height);
    this.residues = new Float64Array(modes.length);
    const hasOneX = (mode: Mode) => mode.xRule === X_AT && mode.xPositions.length === 1;
    this.rules = Int32Array.from(modes, (mode) => (hasOneX(mode) ? X_ONE : mode.xRule));
    this.onlyX = Float64Array.from(modes, (mode) => mode.xPositions[0] ?? 0);
  }

  /** From now on y = 0 is pattern point `start`. */
  startAt(start: Grains): void {
    for (let m = 0; m < this.modes.length; m++) {
      const y = (this.modes[m] as Mode).yResidue;
      this.residues[m] = y === null ? -1 : mod(y - start, this.vertical);
    }
  }

  /**
   * The best legal place of the modes from `first` to `end` - 1, none taller than `bandLimit`, in the free spaces from number
   * `fromSpace` on. A space that reaches `openEnd` has no end yet. False if there is none.
   */
  seek(
    first: number,
    end: number,
    flags: number,
    rule: number,
    fromSpace: number,
    openEnd: Grains,
    bandLimit: Grains,
  ): boolean {
    const { edges, count } = this.spaces;
    const v = this.vertical;
    const isUpward = (flags & UPWARD) !== 0;
    const isRightward = (flags & RIGHTWARD) !== 0;
    const byTop = rule === LOWEST_TOP;
    const byFoot = rule === LOWEST_FOOT;
    let best = Number.POSITIVE_INFINITY;
    let second = Number.POSITIVE_INFINITY;
    let third = Number.POSITIVE_INFINITY;
    let found = false;
    for (let m = first; m < end; m++) {
      const width = this.widths[m] as number;
      const height = this.heights[m] as number;
      const residue = this.residues[m] as number;
      const xRule = this.rules[m] as number;
      if (height > bandLimit) continue;
      for (let at = 4 * fromSpace; at < 4 * count; at += 4) {
        const y0 = edges[at + 1] as number;
        const y1 = edges[at + 3] as number;
        if (y1 - y0 < height) continue;
        // Nothing here lies lower than this.
        if ((byTop && y0 + height > best) || (byFoot && y0 > best)) continue;
        const x0 = edges[at] as number;
        const x1 = edges[at + 2] as number;
        if (x1 - x0 < width) continue;
        let y = y0;
        if (residue >= 0) {
          y = residue + Math.ceil((y0 - residue) / v) * v;
          if (y + height > y1) continue;
        }
        const isOpen = y1 >= openEnd;
        if (isUpward) {
          if (isOpen) {
            if (residue >= 0 && y + v + height <= y1) y += v;
          } else if (residue < 0) y = y1 - height;
          else y = residue + Math.floor((y1 - height - residue) / v) * v;
        }
        let k1 = y + height;
        let k2 = y;
        if (byFoot) {
          k1 = y;
          k2 = 0;
        } else if (!byTop) {
          k2 = k1;
          k1 = isOpen ? 1e15 : Math.min(x1 - x0 - width, y1 - y0 - height);
        }
        if (k1 > best || (k1 === best && k2 > second)) continue;
        let x = x0;
        if (xRule === X_FREE) {
          if (isRightward) x = x1 - width;
        } else if (xRule === X_ONE) {
          x = this.onlyX[m] as number;
          if (x < x0 || x > x1 - width) continue;
        } else {
          x = nearestX(this.modes[m] as Mode, x0, x1 - width, isRightward);
          if (x < 0) continue;
        }
        if (k1 === best && k2 === second && x >= third) continue;
        best = k1;
        second = k2;
        third = x;
        found = true;
        this.mode = m;
        this.x = x;
        this.y = y;
      }
    }
    return found;
  }
}
