import type { Grains } from "./piece.ts";

/** A copy of the free spaces: four numbers each. */
export interface SavedSpaces {
  spaces: Float64Array;
  count: number;
}

/**
 * The free cloth as its largest empty rectangles, which may overlap. A skyline would not do: pieces in register leave holes
 * behind, and smaller pieces go into them. Rectangles too small for any piece are not kept.
 */
export class FreeSpaces {
  x0s = new Float64Array(64);
  y0s = new Float64Array(64);
  x1s = new Float64Array(64);
  y1s = new Float64Array(64);
  count = 0;

  constructor(
    private readonly leastWidth: Grains,
    private readonly leastHeight: Grains,
  ) {}

  /** Adds a rectangle unchecked. */
  add(x0: Grains, y0: Grains, x1: Grains, y1: Grains): void {
    const n = this.count;
    if (n === this.x0s.length) this.grow();
    this.x0s[n] = x0;
    this.y0s[n] = y0;
    this.x1s[n] = x1;
    this.y1s[n] = y1;
    this.count = n + 1;
  }

  /** Takes a rectangle out of all free spaces. */
  take(ax0: Grains, ay0: Grains, ax1: Grains, ay1: Grains): void {
    this.takeFrom(0, ax0, ay0, ax1, ay1);
  }

  /** Takes a rectangle out of the free spaces from number `from` on. */
  takeFrom(from: number, ax0: Grains, ay0: Grains, ax1: Grains, ay1: Grains): void {
    const old = this.count;
    for (let s = from; s < old; s++) {
      const x0 = this.x0s[s] as number;
      const x1 = this.x1s[s] as number;
      const y0 = this.y0s[s] as number;
      const y1 = this.y1s[s] as number;
      if (ax0 >= x1 || ax1 <= x0 || ay0 >= y1 || ay1 <= y0) continue;
      // Marked empty; its parts come behind the old ones.
      this.x1s[s] = x0;
      if (ax0 - x0 >= this.leastWidth) this.add(x0, y0, ax0, y1);
      if (x1 - ax1 >= this.leastWidth) this.add(ax1, y0, x1, y1);
      if (ay0 - y0 >= this.leastHeight) this.add(x0, y0, x1, ay0);
      if (y1 - ay1 >= this.leastHeight) this.add(x0, ay1, x1, y1);
    }
    this.dropCovered(from, old);
  }

  /**
   * Cuts the spaces from number `from` on at `low`, and ends them at `high`: what lies below stays as holes, no deeper than the
   * way from low to high, so that they too are no longer without a straight cut.
   */
  cutAcross(from: number, low: Grains, high: Grains): void {
    const old = this.count;
    const deepest = low - (high - low);
    for (let s = from; s < old; s++) {
      const x0 = this.x0s[s] as number;
      const y0 = this.y0s[s] as number;
      const y1 = Math.min(this.y1s[s] as number, low);
      if (y0 < low) {
        const foot = Math.max(y0, deepest);
        if (y1 - foot >= this.leastHeight) this.add(x0, foot, this.x1s[s] as number, y1);
        this.y0s[s] = low;
      }
      if ((this.y1s[s] as number) > high) this.y1s[s] = high;
      if ((this.y1s[s] as number) - (this.y0s[s] as number) < this.leastHeight) {
        this.x1s[s] = x0;
      }
    }
    this.dropCovered(from, old);
  }

  /** Ends at `top` every space of the band from `low` to `high`. */
  clip(low: Grains, high: Grains, top: Grains): void {
    let kept = 0;
    for (let s = 0; s < this.count; s++) {
      const y0 = this.y0s[s] as number;
      if (y0 >= low && y0 < high && (this.y1s[s] as number) > top) this.y1s[s] = top;
      if ((this.y1s[s] as number) - y0 < this.leastHeight) continue;
      if (kept !== s) this.move(s, kept);
      kept++;
    }
    this.count = kept;
  }

  /** Removes emptied spaces, and new ones (from `old` on) that lie within another. */
  private dropCovered(from: number, old: number): void {
    const { x0s, y0s, x1s, y1s } = this;
    let kept = from;
    for (let s = from; s < old; s++) {
      if ((x1s[s] as number) > (x0s[s] as number)) {
        if (kept !== s) this.move(s, kept);
        kept++;
      }
    }
    const end = this.count;
    const firstNew = kept;
    for (let s = old; s < end; s++) {
      const x0 = x0s[s] as number;
      const y0 = y0s[s] as number;
      const x1 = x1s[s] as number;
      const y1 = y1s[s] as number;
      let covered = false;
      for (let t = 0; t < firstNew && !covered; t++) {
        covered =
          (x0s[t] as number) <= x0 &&
          (y0s[t] as number) <= y0 &&
          (x1s[t] as number) >= x1 &&
          (y1s[t] as number) >= y1;
      }
      // Among the new ones the earlier of two equal stays.
      for (let t = firstNew; t < kept && !covered; t++) {
        covered =
          (x0s[t] as number) <= x0 &&
          (y0s[t] as number) <= y0 &&
          (x1s[t] as number) >= x1 &&
          (y1s[t] as number) >= y1;
      }
      for (let t = s + 1; t < end && !covered; t++) {
        covered =
          (x0s[t] as number) <= x0 &&
          (y0s[t] as number) <= y0 &&
          (x1s[t] as number) >= x1 &&
          (y1s[t] as number) >= y1 &&
          ((x0s[t] as number) < x0 ||
            (y0s[t] as number) < y0 ||
            (x1s[t] as number) > x1 ||
            (y1s[t] as number) > y1);
      }
      if (covered) continue;
      if (kept !== s) this.move(s, kept);
      kept++;
    }
    this.count = kept;
  }

  save(into: SavedSpaces): void {
    const n = this.count;
    if (into.spaces.length < 4 * n) into.spaces = new Float64Array(8 * n);
    into.count = n;
    const { spaces } = into;
    for (let s = 0, at = 0; s < n; s++) {
      spaces[at++] = this.x0s[s] as number;
      spaces[at++] = this.y0s[s] as number;
      spaces[at++] = this.x1s[s] as number;
      spaces[at++] = this.y1s[s] as number;
    }
  }

  restore({ spaces, count }: SavedSpaces): void {
    while (this.x0s.length < count) this.grow();
    this.count = count;
    for (let s = 0, at = 0; s < count; s++) {
      this.x0s[s] = spaces[at++] as number;
      this.y0s[s] = spaces[at++] as number;
      this.x1s[s] = spaces[at++] as number;
      this.y1s[s] = spaces[at++] as number;
    }
  }

  private move(from: number, to: number): void {
    this.x0s[to] = this.x0s[from] as number;
    this.y0s[to] = this.y0s[from] as number;
    this.x1s[to] = this.x1s[from] as number;
    this.y1s[to] = this.y1s[from] as number;
  }

  private grow(): void {
    const twice = (old: Float64Array) => {
      const wide = new Float64Array(old.length * 2);
      wide.set(old);
      return wide;
    };
    this.x0s = twice(this.x0s);
    this.y0s = twice(this.y0s);
    this.x1s = twice(this.x1s);
    this.y1s = twice(this.y1s);
  }
}
