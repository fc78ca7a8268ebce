import type { Length } from "../units/length.ts";
import type { FloorBox, WallBox } from "./placements.ts";

/** A rectangle in millimetres as binary numbers: for what hides, meets or touches what, never for cutting. */
export interface Rect {
  readonly left: number;
  readonly low: number;
  readonly right: number;
  readonly high: number;
}

export function rectOf(left: Length, low: Length, width: Length, height: Length): Rect {
  const x = left.toMm();
  const y = low.toMm();
  return { left: x, low: y, right: x + width.toMm(), high: y + height.toMm() };
}

export function wallRect(box: WallBox): Rect {
  return rectOf(box.left, box.foot, box.width, box.height);
}

export function floorRect(box: FloorBox): Rect {
  return rectOf(box.west, box.north, box.toEast, box.toSouth);
}

/** The gap between two rectangles along the axis where they stand further apart; negative by how far they overlap. */
export function gapOf(a: Rect, b: Rect): number {
  const across = Math.max(a.left - b.right, b.left - a.right);
  const along = Math.max(a.low - b.high, b.low - a.high);
  return Math.max(across, along);
}

export function areaOf(rect: Rect): number {
  return Math.max(0, rect.right - rect.left) * Math.max(0, rect.high - rect.low);
}

/**
 * Cuts `whole` into the cells that the rectangles' edges make and asks for each, by the index of those that cover it (in their own
 * order), who owns it. Gives the sum of the cells' areas by owner.
 */
export function areasByOwner<K>(
  whole: Rect,
  rects: readonly Rect[],
  owner: (covering: readonly number[]) => K,
): Map<K, number> {
  const edges = (low: number, high: number, all: number[]) =>
    [...new Set([low, high, ...all.filter((edge) => edge > low && edge < high)])].sort(
      (a, b) => a - b,
    );
  const xs = edges(
    whole.left,
    whole.right,
    rects.flatMap((r) => [r.left, r.right]),
  );
  const ys = edges(
    whole.low,
    whole.high,
    rects.flatMap((r) => [r.low, r.high]),
  );
  const areas = new Map<K, number>();
  for (let i = 0; i + 1 < xs.length; i++) {
    const x0 = xs[i] as number;
    const x1 = xs[i + 1] as number;
    for (let j = 0; j + 1 < ys.length; j++) {
      const y0 = ys[j] as number;
      const y1 = ys[j + 1] as number;
      const covering: number[] = [];
      rects.forEach((r, n) => {
        if (r.left <= x0 && r.right >= x1 && r.low <= y0 && r.high >= y1) covering.push(n);
      });
      const key = owner(covering);
      areas.set(key, (areas.get(key) ?? 0) + (x1 - x0) * (y1 - y0));
    }
  }
  return areas;
}
