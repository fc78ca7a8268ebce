import { FreeSpaces, type SavedSpaces } from "./freeSpaces.ts";
import type { Kind } from "./kinds.ts";
import { type Mode, nearestX } from "./modes.ts";
import type { Flaw, Grains } from "./piece.ts";
import { LOWEST_FOOT, MODE_SHIFT, NEW_BAND, RIGHTWARD, TIGHTEST, UPWARD } from "./wishes.ts";

/** A stretch of cloth on the planner's one long axis; several lengths lie one behind another, each at its own phase. */
export interface Strip {
  readonly from: Grains;
  readonly to: Grains;
  readonly flaws: readonly Flaw[];
}

/** The state of a layout between two pieces. */
export interface Checkpoint extends SavedSpaces {
  numbers: [number, number, number, number, number, number, number];
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
    into.numbers = [
      this.placed,
      this.unplacedArea,
      this.moment,
      this.length,
      this.openStrip,
      this.bandFrom,
      this.bandTo,
    ];
    into.bases.set(this.bases);
    into.tops.set(this.tops);
  }

  /** Goes back to a checkpoint made with the same start and band limit. */
  restore(from: Checkpoint): void {
    this.spaces.restore(from);
    const [placed, unplacedArea, moment, length, openStrip, bandFrom, bandTo] = from.numbers;
    this.placed = placed;
    this.unplacedArea = unplacedArea;
    this.moment = moment;
    this.length = length;
    this.openStrip = openStrip;
    this.bandFrom = bandFrom;
    this.bandTo = bandTo;
    this.bases.set(from.bases);
    this.tops.set(from.tops);
  }

  checkpoint(): Checkpoint {
    return {
      spaces: new Float64Array(256),
      count: 0,
      numbers: [0, 0, 0, 0, 0, 0, 0],
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
      return false;
    }
    const m = this.foundMode;
    const x = this.foundX;
    const y = this.foundY;
    const width = this.widths[m] as number;
    const height = this.heights[m] as number;
    this.spaces.take(x, y, x + width, y + height);
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
    return true;
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
    const { x0s, y0s, x1s, y1s, count } = this.spaces;
    const v = this.vertical;
    let best = Number.POSITIVE_INFINITY;
    let second = Number.POSITIVE_INFINITY;
    let third = Number.POSITIVE_INFINITY;
    let found = false;
    for (let m = first; m < end; m++) {
      const width = this.widths[m] as number;
      const height = this.heights[m] as number;
      const residue = this.residues[m] as number;
      if (height > this.bandLimit) continue;
      for (let s = fromSpace; s < count; s++) {
        const y0 = y0s[s] as number;
        const y1 = y1s[s] as number;
        if (y1 - y0 < height) continue;
        const x0 = x0s[s] as number;
        const x1 = x1s[s] as number;
        if (x1 - x0 < width) continue;
        let y = y0;
        if (residue >= 0) {
          y = residue + Math.ceil((y0 - residue) / v) * v;
          if (y + height > y1) continue;
        }
        const open = y1 >= this.bandTo;
        if ((flags & UPWARD) !== 0) {
          if (open) {
            if (residue >= 0 && y + v + height <= y1) y += v;
          } else if (residue < 0) y = y1 - height;
          else y = residue + Math.floor((y1 - height - residue) / v) * v;
        }
        let k1 = y + height;
        let k2 = y;
        if (rule === LOWEST_FOOT) {
          k1 = y;
          k2 = 0;
        } else if (rule === TIGHTEST) {
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
      return true;
    }
    this.bandTo = Number.POSITIVE_INFINITY;
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
