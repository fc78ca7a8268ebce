import type { Flaw, Grains } from "../piece.ts";
import { MODE_SHIFT, NEW_BAND } from "../search/wishes.ts";
import { BestPlace } from "./bestPlace.ts";
import { FreeSpaces, type SavedSpaces } from "./freeSpaces.ts";
import type { Kind } from "./kinds.ts";
import { LayoutMark } from "./layoutMark.ts";
import type { Mode } from "./modes.ts";

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
 * Lays pieces one after another, each at the best legal place in the free spaces so far. Where no free space takes a piece, a new
 * band is opened above; with `bandLimit` finite no band is longer than that, and no piece crosses from band to band.
 */
export class Layout {
  readonly modes: Mode[] = [];
  /** Modes of kind k: from firstMode[k] to firstMode[k + 1] - 1. */
  private readonly firstMode: Int32Array;
  private readonly spaces: FreeSpaces;
  private readonly place: BestPlace;
  readonly mark = new LayoutMark();
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
  /** Bands, and strips, are opened in an order that later pieces can feel. */
  private orderCounts = false;
  private start = -1;
  private openStrip = -1;
  private bandFrom = 0;
  private bandTo = 0;
  private bandLimit = Number.POSITIVE_INFINITY;

  constructor(
    kinds: readonly Kind[],
    private readonly usableWidth: Grains,
    vertical: Grains,
    private readonly strips: readonly Strip[],
  ) {
    let pieces = 0;
    this.firstMode = new Int32Array(kinds.length + 1);
    kinds.forEach((kind, k) => {
      this.modes.push(...kind.modes);
      this.firstMode[k + 1] = this.modes.length;
      pieces += kind.count;
    });
    this.placedMode = new Int32Array(pieces);
    this.placedX = new Float64Array(pieces);
    this.placedY = new Float64Array(pieces);
    this.bases = new Float64Array(strips.length);
    this.tops = new Float64Array(strips.length);
    this.spaces = new FreeSpaces(
      Math.min(...this.modes.map((mode) => mode.width)),
      Math.min(...this.modes.map((mode) => mode.height)),
    );
    this.place = new BestPlace(this.modes, this.spaces, vertical);
    this.set(0, Number.POSITIVE_INFINITY);
    this.clear();
  }

  /** Takes everything off, for the start and band limit set. */
  clear(): void {
    this.placed = 0;
    this.unplacedArea = 0;
    this.moment = 0;
    this.length = 0;
    this.mark.first = 0;
    this.mark.second = 0;
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
    this.place.startAt(start);
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
    numbers[7] = this.mark.first;
    numbers[8] = this.mark.second;
    this.copyEnds(this.bases, this.tops, into.bases, into.tops);
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
    this.mark.first = numbers[7] as number;
    this.mark.second = numbers[8] as number;
    this.copyEnds(from.bases, from.tops, this.bases, this.tops);
  }

  /** A loop: for so few strips the built-in copying takes longer. */
  private copyEnds(
    bases: Float64Array,
    tops: Float64Array,
    toBases: Float64Array,
    toTops: Float64Array,
  ): void {
    for (let s = 0; s < this.strips.length; s++) {
      toBases[s] = bases[s] as number;
      toTops[s] = tops[s] as number;
    }
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
    const { widths, heights, mode: m, x, y } = this.place;
    if (!wasPlaced) {
      this.unplacedArea += (widths[first] as number) * (heights[first] as number);
      this.placedMode[this.placed++] = -1;
      this.mark.note(-1 - kind, 0, 0, this.orderCounts);
      return false;
    }
    const width = widths[m] as number;
    const height = heights[m] as number;
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
    this.mark.note(m, x, y, this.orderCounts);
    return true;
  }

  private stripAt(y: Grains): number {
    let s = this.strips.length - 1;
    while (s > 0 && (this.strips[s] as Strip).from > y) s--;
    return s;
  }

  /** Looks for the best legal place in the free spaces from number `fromSpace` on. */
  private seek(first: number, end: number, flags: number, rule: number, fromSpace: number) {
    return this.place.seek(first, end, flags, rule, fromSpace, this.bandTo, this.bandLimit);
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
        this.bandFrom = this.place.y;
        this.bandTo = Math.min(strip.to, this.place.y + this.bandLimit);
        spaces.cutAcross(old, this.bandFrom, this.bandTo);
      }
      if (this.orderCounts) this.mark.note(-1000, s, this.bandFrom, true);
      return true;
    }
    this.bandTo = Number.POSITIVE_INFINITY;
    if (this.orderCounts) this.mark.note(-1000, -1, 0, true);
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
