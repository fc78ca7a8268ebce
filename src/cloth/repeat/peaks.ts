import { at, between, type Correlation } from "./autocorrelation.ts";

/** A place where a picture is more alike to itself than at all shifts about it. */
export interface Peak {
  readonly x: number;
  readonly y: number;
  readonly height: number;
}

/** Peaks that are looked at, the highest first. */
const MOST_PEAKS = 48;

/** The highest local maxima of one half plane, with places to parts of a pixel. */
export function highPeaks(correlation: Correlation): Peak[] {
  const { reachX, reachY } = correlation;
  const peaks: Peak[] = [];
  for (let y = 0; y <= reachY - 2; y++) {
    for (let x = -reachX + 2; x <= reachX - 2; x++) {
      if (y === 0 && x <= 0) continue;
      if (x * x + y * y < 9) continue;
      const height = at(correlation, x, y);
      if (height > 0.08 && isTop(correlation, x, y, height)) peaks.push({ x, y, height });
    }
  }
  const highest = peaks.sort((a, b) => b.height - a.height).slice(0, MOST_PEAKS);
  return highest.map(({ x, y }) => sharpen(correlation, x, y));
}

function isTop(correlation: Correlation, x: number, y: number, height: number): boolean {
  for (let dy = -2; dy <= 2; dy++) {
    for (let dx = -2; dx <= 2; dx++) {
      if (dx === 0 && dy === 0) continue;
      const other = at(correlation, x + dx, y + dy);
      // Of equal neighbours the first in reading order is the top.
      if (other > height || (other === height && (dy < 0 || (dy === 0 && dx < 0)))) return false;
    }
  }
  return true;
}

/** The top of the parabola through three values in each direction. */
function sharpen(correlation: Correlation, x: number, y: number): Peak {
  const height = at(correlation, x, y);
  return {
    x: x + topBetween(at(correlation, x - 1, y), height, at(correlation, x + 1, y)),
    y: y + topBetween(at(correlation, x, y - 1), height, at(correlation, x, y + 1)),
    height,
  };
}

/** Where between its neighbours the parabola through three values is highest, from -0.5 to 0.5. */
function topBetween(before: number, height: number, after: number): number {
  const bend = before - 2 * height + after;
  return bend < 0 ? Math.max(-0.5, Math.min(0.5, (before - after) / (2 * bend))) : 0;
}

/** The best value within some pixels of a place, which a basis from rounded peaks may miss by so much. */
export function highestNear(correlation: Correlation, x: number, y: number, reach = 1): number {
  let best = between(correlation, x, y);
  const [rx, ry] = [Math.round(x), Math.round(y)];
  for (let dy = -reach; dy <= reach; dy++) {
    for (let dx = -reach; dx <= reach; dx++)
      best = Math.max(best, at(correlation, rx + dx, ry + dy));
  }
  return best;
}

/** The top of the hill that a place lies on, within three pixels of it, or null. */
export function climb(correlation: Correlation, x: number, y: number): Peak | null {
  let bx = Math.round(x);
  let by = Math.round(y);
  for (let step = 0; step < 4; step++) {
    let nx = bx;
    let ny = by;
    let highest = at(correlation, bx, by);
    for (let dy = -1; dy <= 1; dy++) {
      for (let dx = -1; dx <= 1; dx++) {
        const height = at(correlation, bx + dx, by + dy);
        if (height <= highest) continue;
        highest = height;
        nx = bx + dx;
        ny = by + dy;
      }
    }
    if (nx === bx && ny === by) {
      return Math.hypot(bx - x, by - y) <= 3.5 ? sharpen(correlation, bx, by) : null;
    }
    bx = nx;
    by = ny;
  }
  return null;
}
