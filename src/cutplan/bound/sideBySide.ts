import { type Mode, X_AT, X_FREE } from "../laying/modes.ts";
import type { Grains } from "../piece.ts";

/** Beyond this many places across, they are moved left onto a coarser grid, which only makes the bound lower. */
const MOST_PLACES = 2500;

/** Modes with the same width and rule across: side by side they are the same. */
export interface AcrossType {
  readonly width: Grains;
  /** The legal left edges, or null where any is legal. */
  readonly lefts: readonly Grains[] | null;
}

/** The type of a mode on a cloth of this usable width. */
export function acrossTypeOf(mode: Mode, usableWidth: Grains): AcrossType {
  if (mode.xRule === X_FREE) return { width: mode.width, lefts: null };
  if (mode.xRule === X_AT) return { width: mode.width, lefts: mode.xPositions };
  const lefts: Grains[] = [];
  // A stripe finer than a hundredth of the width is as good as free, and free is the weaker rule.
  if (mode.xPeriod * 100 < usableWidth) return { width: mode.width, lefts: null };
  for (let x = mode.xResidue; x + mode.width <= usableWidth; x += mode.xPeriod) lefts.push(x);
  return { width: mode.width, lefts };
}

/**
 * All sets of pieces side by side across the cloth, as walks from place to place: which set is worth most, at a price for each
 * type. Only places that sums of widths can reach are looked at; a piece may occur any number of times.
 */
export class SideBySide {
  /** Step i leads from place from[i] to place to[i] and lays type type[i]; sorted by from. */
  private readonly from: Int32Array;
  private readonly to: Int32Array;
  private readonly type: Int32Array;
  private readonly places: number;
  private readonly value: Float64Array;
  private readonly cameBy: Int32Array;

  constructor(
    readonly types: readonly AcrossType[],
    usableWidth: Grains,
  ) {
    let grid = 1;
    let places = reachable(types, usableWidth, grid);
    while (places === null) {
      grid = grid === 1 ? Math.ceil(usableWidth / MOST_PLACES) : grid * 2;
      places = reachable(types, usableWidth, grid);
    }
    const index = new Map(places.map((place, i) => [place, i]));
    const steps: [number, number, number][] = [];
    types.forEach(({ width, lefts }, t) => {
      const starts = lefts ?? places;
      for (const left of starts) {
        if (left + width > usableWidth) continue;
        const to = index.get(floorTo(left + width, grid));
        if (to === undefined) continue;
        steps.push([lefts ? lastUpTo(places, left) : (index.get(left) as number), to, t]);
      }
    });
    steps.sort((a, b) => a[0] - b[0] || a[1] - b[1] || a[2] - b[2]);
    this.from = Int32Array.from(steps, (step) => step[0]);
    this.to = Int32Array.from(steps, (step) => step[1]);
    this.type = Int32Array.from(steps, (step) => step[2]);
    this.places = places.length;
    this.value = new Float64Array(this.places);
    this.cameBy = new Int32Array(this.places);
  }

  /** The value of the dearest set at these prices (one a type, not negative). `setOf` then gives the set. */
  dearest(prices: Float64Array): number {
    const { value, cameBy, from, to, type, places } = this;
    value.fill(0);
    cameBy.fill(-1);
    let step = 0;
    for (let place = 0; place < places; place++) {
      if (place > 0 && (value[place - 1] as number) >= (value[place] as number)) {
        value[place] = value[place - 1] as number;
        cameBy[place] = -1;
      }
      const here = value[place] as number;
      while (step < from.length && from[step] === place) {
        const worth = here + (prices[type[step] as number] as number);
        const there = to[step] as number;
        if (worth > (value[there] as number)) {
          value[there] = worth;
          cameBy[there] = step;
        }
        step++;
      }
    }
    return value[places - 1] as number;
  }

  /** How many of each type the set found by the last `dearest` holds. */
  setOf(): Int32Array {
    const counts = new Int32Array(this.types.length);
    let place = this.places - 1;
    while (place > 0) {
      const step = this.cameBy[place] as number;
      if (step < 0) place--;
      else {
        const t = this.type[step] as number;
        counts[t] = (counts[t] as number) + 1;
        place = this.from[step] as number;
      }
    }
    return counts;
  }
}

/** The places where a piece may end, ascending from 0, moved down onto the grid; null if they are too many. */
function reachable(
  types: readonly AcrossType[],
  usableWidth: Grains,
  grid: number,
): number[] | null {
  const seen = new Set<number>([0]);
  const queue = [0];
  const reach = (end: number) => {
    const place = floorTo(end, grid);
    if (end > usableWidth || seen.has(place)) return;
    seen.add(place);
    queue.push(place);
  };
  for (const { width, lefts } of types) for (const left of lefts ?? []) reach(left + width);
  const free = types.filter((type) => type.lefts === null);
  while (queue.length > 0) {
    const place = queue.pop() as number;
    for (const { width } of free) reach(place + width);
    if (seen.size > MOST_PLACES) return null;
  }
  return [...seen].sort((a, b) => a - b);
}

function floorTo(value: number, grid: number): number {
  return Math.floor(value / grid) * grid;
}

function lastUpTo(places: readonly number[], value: number): number {
  let low = 0;
  let high = places.length - 1;
  while (low < high) {
    const mid = (low + high + 1) >> 1;
    if ((places[mid] as number) <= value) low = mid;
    else high = mid - 1;
  }
  return low;
}
