import type { Flaw, Grains } from "../piece.ts";
import {
  LOWEST_FOOT,
  LOWEST_TOP,
  MODE_SHIFT,
  NEW_BAND,
  RIGHTWARD,
  UPWARD,
} from "../search/wishes.ts";
import { FreeSpaces, type SavedSpaces } from "./freeSpaces.ts";
import type { Kind } from "./kinds.ts";
import { type Mode, nearestX } from "./modes.ts";

/** A stretch of cloth on the planner's one long axis; several lengths lie one behind another, each at its own phase. */
export interface Strip {
  readonly from: Grains;
  readonly to: Grains;
  readonly flaws: readonly Flaw[];
}

/** The state of a layout between two pieces. */
export interface Checkpoint extends SavedSpaces {
  readonly numbers: Float64Array;
  readonly bases: Float64Array;
  readonly tops: Float64Array;
}

/**
 * Lays pieces one after another, each at the best legal place in the free spaces so far. A legal place is closed form: the
 * next y, and the next x, in the mode's congruence class. Where no free space takes a piece, a new band is opened above; with
 * `bandLimit` finite no band is longer than that, and no piece crosses from band to band.
 */
export class Layout {
  readonly modes: Mode[] = [];
  /** Modes of kind k: from firstMode[k] to firstMode[k + 1] - 1. */
  private readonly firstMode: Int32Array;
  private readonly widths: Float64Array;
  private readonly heights: Float64Array;
  private readonly residues: Float64Array;
  private readonly spaces: FreeSpaces;
  private readonly bases: Float64Array;
  private readonly tops: Float64Array;

  readonly placedMode: Int32Array;
  readonly placedX: Float64Array;
  readonly placedY: Float64Array;
  placed = 0;
  unplacedArea = 0;
  /** Sum of top x area: gives the search a slope where the length alone is level. */
  moment = 0;
  length = 0;
  /**
   * Two marks of the state. Layouts that agree in both, in the number of pieces and in their length are the same: the same pieces in
   * the same places, in whatever order where order leaves no trace.
   */
  mark = 0;
  secondMark = 0;

  /** Bands, and strips, are opened in an order that later pieces can feel. */
  private orderCounts = false;
  private start = -1;
  private openStrip = -1;
  private bandFrom = 0;
  private bandTo = 0;
  private bandLimit = Number.POSITIVE_INFINITY;
  private foundMode = -1;
  private foundX = 0;
  private foundY = 0;

  constructor(
    kinds: readonly Kind[],
    private readonly usableWidth: Grains,
    private readonly vertical: Grains,
    private readonly strips: readonly Strip[],
  ) {
    let pieces = 0;
    this.firstMode = new Int32Array(kinds.length + 1);
    kinds.forEach((kind, k) => {
      this.modes.push(...kind.modes);
      this.firstMode[k + 1] = this.modes.length;
      pieces += kind.count;
    });
    this.widths = Float64Array.from(this.modes, (mode) => mode.width);
    this.heights = Float64Array.from(this.modes, (mode) => mode.height);
    this.residues = new Float64Array(this.modes.length);
    this.placedMode = new Int32Array(pieces);
    this.placedX = new Float64Array(pieces);
    this.placedY = new Float64Array(pieces);
    this.bases = new Float64Array(strips.length);
    this.tops = new Float64Array(strips.length);
    this.spaces = new FreeSpaces(Math.min(...this.widths), Math.min(...this.heights));
    this.set(0, Number.POSITIVE_INFINITY);
    this.clear();
  }

  /** Takes everything off, for the start and band limit set. */
  clear(): void {
    this.placed = 0;
    this.unplacedArea = 0;
    this.moment = 0;
    this.length = 0;
    this.mark = 0;
    this.secondMark = 0;
    this.spaces.count = 0;
    this.openStrip = -1;
    this.bandTo = Number.POSITIVE_INFINITY;
    for (let s = 0; s < this.strips.length; s++) {
      this.bases[s] = (this.strips[s] as Strip).from;
      this.tops[s] = (this.strips[s] as Strip).from;
    }
  }

  /** From now on cutting starts at pattern point `start`, and no band is longer than `bandLimit`. */
  set(start: Grains, bandLimit: Grains): void {
    this.bandLimit = bandLimit;
    this.orderCounts = bandLimit !== Number.POSITIVE_INFINITY || this.strips.length > 1;
    if (start === this.start) return;
    this.start = start;
    const v = this.vertical;
    for (let m = 0; m < this.modes.length; m++) {
      const y = (this.modes[m] as Mode).yResidue;
      this.residues[m] = y === null ? -1 : y - start - Math.floor((y - start) / v) * v;
    }
  }

  /** Keeps everything that the next pieces depend on. */
  save(into: Checkpoint): void {
    this.spaces.save(into);
    const { numbers } = into;
    numbers[0] = this.placed;
    numbers[1] = this.unplacedArea;
    numbers[2] = this.moment;
    numbers[3] = this.length;
    numbers[4] = this.openStrip;
    numbers[5] = this.bandFrom;
    numbers[6] = this.bandTo;
    numbers[7] = this.mark;
    numbers[8] = this.secondMark;
    into.bases.set(this.bases);
    into.tops.set(this.tops);
  }

  /** Goes back to a checkpoint made with the same start and band limit. */
  restore(from: Checkpoint): void {
    this.spaces.restore(from);
    const { numbers } = from;
    this.placed = numbers[0] as number;
    this.unplacedArea = numbers[1] as number;
    this.moment = numbers[2] as number;
    this.length = numbers[3] as number;
    this.openStrip = numbers[4] as number;
    this.bandFrom = numbers[5] as number;
    this.bandTo = numbers[6] as number;
    this.mark = numbers[7] as number;
    this.secondMark = numbers[8] as number;
    this.bases.set(from.bases);
    this.tops.set(from.tops);
  }

  checkpoint(): Checkpoint {
    return {
      spaces: new Float64Array(256),
      count: 0,
      numbers: new Float64Array(9),
      bases: this.bases.slice(),
      tops: this.tops.slice(),
    };
  }

  /** Lays one piece of a kind; false if there is no place for it on any strip. */
  add(kind: number, flags: number, rule: number): boolean {
    const chosen = flags >> MODE_SHIFT;
    let first = this.firstMode[kind] as number;
    let end = this.firstMode[kind + 1] as number;
    if (chosen > 0 && first + chosen <= end) {
      first += chosen - 1;
      end = first + 1;
    }
    const opens = (flags & NEW_BAND) !== 0 && this.bandLimit !== Number.POSITIVE_INFINITY;
    const wasPlaced =
      (!opens && this.seek(first, end, flags, rule, 0)) || this.open(first, end, flags, rule);
    if (!wasPlaced) {
      this.unplacedArea += (this.widths[first] as number) * (this.heights[first] as number);
      this.placedMode[this.placed++] = -1;
      this.note(-1 - kind, 0, 0);
      return false;
    }
    const m = this.foundMode;
    const x = this.foundX;
    const y = this.foundY;
    const width = this.widths[m] as number;
    const height = this.heights[m] as number;
    this.spaces.takeFrom(0, x, y, x + width, y + height);
    const top = y + height;
    const s = this.stripAt(y);
    const before = this.tops[s] as number;
    if (top > before) {
      this.length += top - before;
      this.tops[s] = top;
    }
    const i = this.placed++;
    this.placedMode[i] = m;
    this.placedX[i] = x;
    this.placedY[i] = y;
    this.moment += top * width * height;
    this.note(m, x, y);
    return true;
  }

  /** Takes something into the marks: three numbers, well mixed, and summed so that their order counts or does not. */
  private note(what: number, x: number, y: number): void {
    let mixed = Math.imul(what, 0x9e3779b1) ^ Math.imul(x, 0x85ebca6b) ^ Math.imul(y, 0xc2b2ae35);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x2c1b3c6d);
    mixed ^= mixed >>> 12;
    let other = Math.imul(y, 0x9e3779b1) + Math.imul(x, 0x297a2d39) + Math.imul(what, 0x165667b1);
    other = Math.imul(other ^ (other >>> 16), 0x7feb352d);
    other ^= other >>> 15;
    if (this.orderCounts) {
      this.mark = Math.imul(this.mark, 31);
      this.secondMark = Math.imul(this.secondMark, 17);
    }
    this.mark = (this.mark + mixed) | 0;
    this.secondMark = (this.secondMark + other) | 0;
  }

  private stripAt(y: Grains): number {
    let s = this.strips.length - 1;
    while (s > 0 && (this.strips[s] as Strip).from > y) s--;
    return s;
  }

  /** The best legal place in the free spaces from number `fromSpace` on. */
  private seek(
    first: number,
    end: number,
    flags: number,
    rule: number,
    fromSpace: number,
  ): boolean {
    const { edges, count } = this.spaces;
    const v = this.vertical;
    const isUpward = (flags & UPWARD) !== 0;
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
      if (height > this.bandLimit) continue;
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
        const open = y1 >= this.bandTo;
        if (isUpward) {
          if (open) {
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
          const side = x1 - x0 - width;
          k1 = open ? 1e15 : Math.min(side, y1 - y0 - height);
        }
        if (k1 > best || (k1 === best && k2 > second)) continue;
        const x = nearestX(this.modes[m] as Mode, x0, x1 - width, (flags & RIGHTWARD) !== 0);
        if (x < 0) continue;
        if (k1 === best && k2 === second && x >= third) continue;
        best = k1;
        second = k2;
        third = x;
        found = true;
        this.foundMode = m;
        this.foundX = x;
        this.foundY = y;
      }
    }
    return found;
  }

  /** Closes the open band and opens one for the piece on the first strip that takes it. */
  private open(first: number, end: number, flags: number, rule: number): boolean {
    this.close();
    const spaces = this.spaces;
    for (let s = 0; s < this.strips.length; s++) {
      const strip = this.strips[s] as Strip;
      const base = this.bases[s] as number;
      if (base >= strip.to) continue;
      const old = spaces.count;
      spaces.add(0, base, this.usableWidth, strip.to);
      for (const flaw of strip.flaws) {
        spaces.takeFrom(old, flaw.x, flaw.y, flaw.x + flaw.width, flaw.y + flaw.height);
      }
      this.bandTo = strip.to;
      if (!this.seek(first, end, flags, rule, old)) {
        spaces.count = old;
        continue;
      }
      this.openStrip = s;
      this.bandFrom = base;
      if (this.bandLimit === Number.POSITIVE_INFINITY) {
        this.bases[s] = strip.to;
      } else {
        this.bandFrom = this.foundY;
        this.bandTo = Math.min(strip.to, this.foundY + this.bandLimit);
        spaces.cutAcross(old, this.bandFrom, this.bandTo);
      }
      if (this.orderCounts) this.note(-1000, s, this.bandFrom);
      return true;
    }
    this.bandTo = Number.POSITIVE_INFINITY;
    if (this.orderCounts) this.note(-1000, -1, 0);
    return false;
  }

  /** Ends the open band at its highest top: no later piece may cross that line. */
  private close(): void {
    const s = this.openStrip;
    if (s < 0) return;
    this.openStrip = -1;
    if (this.bandLimit === Number.POSITIVE_INFINITY) return;
    const top = this.tops[s] as number;
    this.spaces.clip(this.bandFrom, this.bandTo, top);
    this.bases[s] = top;
  }
}
