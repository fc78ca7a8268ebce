import type { Grains } from "../piece.ts";

/** A copy of the free spaces: four numbers each. */
export interface SavedSpaces {
  spaces: Float64Array;
  count: number;
}

/** Where a new space lies beside the rectangle that was taken: left, right, below, above it. */
const SIDES = 4;

/**
 * The free cloth as its largest empty rectangles, which may overlap. A skyline would not do: pieces in register leave holes
 * behind, and smaller pieces go into them. Rectangles too small for any piece are not kept.
 */
export class FreeSpaces {
  /** Left, foot, right and top of each space, one behind another. */
  edges = new Float64Array(256);
  count = 0;
  /** By side: the new spaces of a taking, and the old ones that touch the rectangle taken, which alone can cover them. */
  private readonly made = Array.from({ length: SIDES }, () => new Float64Array(256));
  private readonly madeCount = new Int32Array(SIDES);
  private readonly touching = Array.from({ length: SIDES }, () => new Int32Array(64));
  private readonly touchingCount = new Int32Array(SIDES);

  constructor(
    private readonly leastWidth: Grains,
    private readonly leastHeight: Grains,
  ) {}

  /** Adds a rectangle unchecked. */
  add(x0: Grains, y0: Grains, x1: Grains, y1: Grains): void {
    const at = 4 * this.count;
    if (at === this.edges.length) this.edges = grown(this.edges);
    const { edges } = this;
    edges[at] = x0;
    edges[at + 1] = y0;
    edges[at + 2] = x1;
    edges[at + 3] = y1;
    this.count++;
  }

  /** Takes a rectangle out of the free spaces from number `from` on. */
  takeFrom(from: number, ax0: Grains, ay0: Grains, ax1: Grains, ay1: Grains): void {
    const { edges, leastWidth, leastHeight } = this;
    this.forget();
    let end = 4 * this.count;
    let at = 4 * from;
    while (at < end) {
      const y0 = edges[at + 1] as number;
      const y1 = edges[at + 3] as number;
      if (y1 < ay0 || y0 > ay1) {
        at += 4;
        continue;
      }
      const x0 = edges[at] as number;
      const x1 = edges[at + 2] as number;
      if (ax0 < x1 && ax1 > x0 && ay0 < y1 && ay1 > y0) {
        // Split: its parts come behind the old ones.
        if (ax0 - x0 >= leastWidth) this.make(0, x0, y0, ax0, y1);
        if (x1 - ax1 >= leastWidth) this.make(1, ax1, y0, x1, y1);
        if (ay0 - y0 >= leastHeight) this.make(2, x0, y0, x1, ay0);
        if (y1 - ay1 >= leastHeight) this.make(3, x0, ay1, x1, y1);
        end -= 4;
        edges[at] = edges[end] as number;
        edges[at + 1] = edges[end + 1] as number;
        edges[at + 2] = edges[end + 2] as number;
        edges[at + 3] = edges[end + 3] as number;
        continue;
      }
      if (x1 === ax0) this.touch(0, at);
      else if (x0 === ax1) this.touch(1, at);
      if (y1 === ay0) this.touch(2, at);
      else if (y0 === ay1) this.touch(3, at);
      at += 4;
    }
    this.count = end / 4;
    for (let side = 0; side < SIDES; side++) {
      if ((this.madeCount[side] as number) > 0) this.addUncovered(side);
    }
  }

  /** Nothing is made or touched yet. (A loop: filling so short a list takes longer.) */
  private forget(): void {
    for (let side = 0; side < SIDES; side++) {
      this.madeCount[side] = 0;
      this.touchingCount[side] = 0;
    }
  }

  private make(side: number, x0: Grains, y0: Grains, x1: Grains, y1: Grains): void {
    let made = this.made[side] as Float64Array<ArrayBuffer>;
    const at = 4 * (this.madeCount[side] as number);
    if (at === made.length) {
      made = grown(made);
      this.made[side] = made;
    }
    made[at] = x0;
    made[at + 1] = y0;
    made[at + 2] = x1;
    made[at + 3] = y1;
    this.madeCount[side] = (this.madeCount[side] as number) + 1;
  }

  private touch(side: number, at: number): void {
    let list = this.touching[side] as Int32Array;
    const n = this.touchingCount[side] as number;
    if (n === list.length) {
      const wide = new Int32Array(2 * n);
      wide.set(list);
      this.touching[side] = wide;
      list = wide;
    }
    list[n] = at;
    this.touchingCount[side] = n + 1;
  }

  /**
   * Adds the new spaces of one side that lie within no other. What covers a new space reaches as far as the rectangle taken and no
   * farther, so it touches that, or is a new space of the same side.
   */
  private addUncovered(side: number): void {
    const made = this.made[side] as Float64Array;
    const touching = this.touching[side] as Int32Array;
    const touches = this.touchingCount[side] as number;
    const end = 4 * (this.madeCount[side] as number);
    next: for (let s = 0; s < end; s += 4) {
      const x0 = made[s] as number;
      const y0 = made[s + 1] as number;
      const x1 = made[s + 2] as number;
      const y1 = made[s + 3] as number;
      for (let i = 0; i < touches; i++) {
        if (covers(this.edges, touching[i] as number, x0, y0, x1, y1)) continue next;
      }
      for (let t = 0; t < end; t += 4) {
        // Of equal ones the first stays.
        if (t !== s && covers(made, t, x0, y0, x1, y1) && (t < s || isLarger(made, t, s))) {
          continue next;
        }
      }
      this.add(x0, y0, x1, y1);
    }
  }

  /**
   * Cuts the spaces from number `from` on at `low`, and ends them at `high`: what lies below stays as holes, no deeper than the
   * way from low to high, so that they too are no longer without a straight cut.
   */
  cutAcross(from: number, low: Grains, high: Grains): void {
    const deepest = low - (high - low);
    const { edges } = this;
    this.forget();
    const end = 4 * this.count;
    let kept = 4 * from;
    for (let at = kept; at < end; at += 4) {
      const x0 = edges[at] as number;
      const y0 = edges[at + 1] as number;
      const x1 = edges[at + 2] as number;
      const y1 = edges[at + 3] as number;
      const foot = Math.max(y0, deepest);
      const top = Math.min(y1, low);
      if (top - foot >= this.leastHeight) this.make(2, x0, foot, x1, top);
      const lowest = Math.max(y0, low);
      const highest = Math.min(y1, high);
      if (highest - lowest < this.leastHeight) continue;
      edges[kept] = x0;
      edges[kept + 1] = lowest;
      edges[kept + 2] = x1;
      edges[kept + 3] = highest;
      kept += 4;
    }
    this.count = kept / 4;
    this.addUncovered(2);
  }

  /** Ends at `top` every space of the band from `low` to `high`. */
  clip(low: Grains, high: Grains, top: Grains): void {
    const { edges } = this;
    const end = 4 * this.count;
    let kept = 0;
    for (let at = 0; at < end; at += 4) {
      const y0 = edges[at + 1] as number;
      let y1 = edges[at + 3] as number;
      if (y0 >= low && y0 < high && y1 > top) y1 = top;
      if (y1 - y0 < this.leastHeight) continue;
      edges[kept] = edges[at] as number;
      edges[kept + 1] = y0;
      edges[kept + 2] = edges[at + 2] as number;
      edges[kept + 3] = y1;
      kept += 4;
    }
    this.count = kept / 4;
  }

  save(into: SavedSpaces): void {
    const n = 4 * this.count;
    if (into.spaces.length < n) into.spaces = new Float64Array(2 * n);
    const { edges } = this;
    const { spaces } = into;
    for (let at = 0; at < n; at++) spaces[at] = edges[at] as number;
    into.count = this.count;
  }

  restore({ spaces, count }: SavedSpaces): void {
    while (this.edges.length < 4 * count) this.edges = grown(this.edges);
    const { edges } = this;
    for (let at = 0; at < 4 * count; at++) edges[at] = spaces[at] as number;
    this.count = count;
  }
}

/** Whether the rectangle at `at` holds the one given. */
function covers(
  edges: Float64Array,
  at: number,
  x0: Grains,
  y0: Grains,
  x1: Grains,
  y1: Grains,
): boolean {
  return (
    (edges[at] as number) <= x0 &&
    (edges[at + 1] as number) <= y0 &&
    (edges[at + 2] as number) >= x1 &&
    (edges[at + 3] as number) >= y1
  );
}

/** Whether the first of two rectangles, which holds the second, is not the same. */
function isLarger(edges: Float64Array, first: number, second: number): boolean {
  return (
    edges[first] !== edges[second] ||
    edges[first + 1] !== edges[second + 1] ||
    edges[first + 2] !== edges[second + 2] ||
    edges[first + 3] !== edges[second + 3]
  );
}

function grown(old: Float64Array): Float64Array<ArrayBuffer> {
  const wide = new Float64Array(old.length * 2);
  wide.set(old);
  return wide;
}
