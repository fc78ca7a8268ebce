import type { Point } from "../../drawing/paths.ts";
import { filledParts, holds } from "./filledParts.ts";
import type { StandingItem } from "./standingItem.ts";

/** Where on a thing the dot of its leader may stand: for a place across it how high, or null where nothing of it is seen there. */
export interface Spots {
  readonly left: number;
  readonly right: number;
  spotAt(x: number): number | null;
  /** Which of its parts is seen there, so that a dot does not stand where two meet. */
  partAt(x: number, y: number): number;
  /** At some heights the places for a dot that are farthest to the left and to the right, the heights in the middle first. */
  ends(): readonly End[];
}

/** Where a dot may stand at a height of a thing, farthest to either side. */
export interface End {
  readonly y: number;
  readonly left: number;
  readonly right: number;
}

/** Rows of points tried down a thing, and heights at which its ends are told. */
const ROWS = 28;
const END_ROWS = 9;

/**
 * Where each item's cloth is seen and no later shape lies over it, by item id; of what has no cloth, any part of it. `surfaces` says
 * which of an item's surfaces its name is the name of. `clear` is the air that a dot needs about it, in the drawing's millimetres.
 */
export function clothSpots(
  items: readonly StandingItem[],
  surfaces: (item: StandingItem) => (surface: string) => boolean,
  clear: number,
): Map<string, Spots> {
  const painted = items.flatMap((item) =>
    filledParts(item.shapes)
      .filter((f) => f.rings.length > 0)
      .map((f) => ({ ...f, item })),
  );
  const out = new Map<string, Spots>();
  for (const { item } of items) {
    const { id } = item.record;
    if (out.has(id)) continue;
    const all = painted.flatMap((f, at) => (f.item.item.record.id === id ? [{ f, at }] : []));
    const named = all.filter(({ f }) => {
      const surface = f.surface?.split("/")[1];
      return surface !== undefined && surfaces(f.item)(surface);
    });
    const own = named.length > 0 ? named : all;
    if (own.length === 0) continue;
    const top = Math.min(...own.map(({ f }) => f.top));
    const foot = Math.max(...own.map(({ f }) => f.foot));
    /** Which of its parts is seen at a point; -1 where none is. */
    const seenAt = (p: Point): number => {
      const last = own.findLast(({ f }) => holds(f, p));
      if (!last || painted.slice(last.at + 1).some((f) => holds(f, p))) return -1;
      return last.at;
    };
    /** True where a dot stands on one part with air about it. */
    const takes = (x: number, y: number): boolean => {
      const middle = seenAt([x, y]);
      const around: Point[] = [
        [x - clear, y],
        [x + clear, y],
        [x, y - clear],
        [x, y + clear],
      ];
      return middle >= 0 && around.every((p) => seenAt(p) === middle);
    };
    const [left, right] = [
      Math.min(...own.map(({ f }) => f.left)),
      Math.max(...own.map(({ f }) => f.right)),
    ];
    out.set(id, {
      partAt: (x, y) => seenAt([x, y]),
      ends: () => endsOf({ left, right, top, foot }, clear, takes),
      left,
      right,
      spotAt: (x) => {
        // From the foot up: the lower the dot, the shorter its line. A third up reads best on a tall thing.
        const order = Array.from({ length: ROWS }, (_, i) => (i + 0.5) / ROWS).sort(
          (a, b) => Math.abs(a - 0.7) - Math.abs(b - 0.7),
        );
        for (const part of order) {
          const y = top + (foot - top) * part;
          if (takes(x, y)) return y;
        }
        return null;
      },
    });
  }
  return out;
}

/** The outermost places for a dot at some heights of a thing, `step` apart. */
function endsOf(
  box: { left: number; right: number; top: number; foot: number },
  step: number,
  takes: (x: number, y: number) => boolean,
): End[] {
  const steps = Math.floor((box.right - box.left) / step);
  const heights = Array.from({ length: END_ROWS }, (_, i) => (i + 0.5) / END_ROWS);
  heights.sort((a, b) => Math.abs(a - 0.5) - Math.abs(b - 0.5));
  return heights.flatMap((part): End[] => {
    const y = box.top + (box.foot - box.top) * part;
    const all = Array.from({ length: steps + 1 }, (_, n) => box.left + n * step);
    const left = all.find((x) => takes(x, y));
    const right = all.findLast((x) => takes(x, y));
    return left === undefined || right === undefined ? [] : [{ y, left, right }];
  });
}
