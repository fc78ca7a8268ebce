import type { ClothPlan } from "../../quantities/quantityTypes.ts";
import { Length } from "../../units/length.ts";

/** A rectangle of cloth that is left over whole: x from the left selvedge, y from the length's start. */
export interface OffCut {
  readonly length: number;
  readonly x: Length;
  readonly y: Length;
  readonly width: Length;
  readonly height: Length;
}

/** In the planner's 1/160 mm, whole numbers: a plan may have thousands of pieces. */
interface Box {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** Beyond so many edges across a stretch its off-cuts are not looked for: nobody keeps such shreds. */
const MOST_EDGES = 60;

/**
 * What a plan leaves over in rectangles worth keeping, between its straight cuts: in each stretch the largest first, then the largest
 * of what is left. `least` is the shortest side that is kept. What lies beyond the last piece is not the plan's and is not listed;
 * flaws are no off-cuts.
 */
export function offCutsOf(plan: ClothPlan, usableWidth: Length, least: Length): OffCut[] {
  const grains = (length: Length) => Math.round(length.toMm() * 160);
  const back = (value: number) => Length.mm(value).dividedBy(160);
  const all = [...plan.pieces, ...plan.flaws].map(({ x, y, width, height, length }) => ({
    length,
    x0: grains(x),
    x1: grains(x.plus(width)),
    y0: grains(y),
    y1: grains(y.plus(height)),
  }));
  return plan.lengths.flatMap((end, length) => {
    const cuts = plan.crossCuts.filter((cut) => cut.length === length).map((cut) => grains(cut.y));
    const edges = [...new Set([0, ...cuts, grains(end)])].sort((a, b) => a - b);
    const taken = all.filter((each) => each.length === length).sort((a, b) => a.y0 - b.y0);
    let from = 0;
    return edges.slice(1).flatMap((y1, i) => {
      const y0 = edges[i] as number;
      while (from < taken.length && (taken[from] as Box).y1 <= y0) from++;
      const inside: Box[] = [];
      for (let t = from; t < taken.length && (taken[t] as Box).y0 < y1; t++)
        if ((taken[t] as Box).y1 > y0) inside.push(taken[t] as Box);
      if (y1 - y0 < grains(least)) return [];
      const stretch = { x0: 0, x1: grains(usableWidth), y0, y1 };
      return largest(inside, stretch, grains(least)).map(
        (box): OffCut => ({
          length,
          x: back(box.x0),
          y: back(box.y0),
          width: back(box.x1 - box.x0),
          height: back(box.y1 - box.y0),
        }),
      );
    });
  });
}

/** Disjoint free rectangles of a stretch, the largest by area first. */
function largest(taken: readonly Box[], stretch: Box, least: number): Box[] {
  const all = [...taken];
  const found: Box[] = [];
  for (;;) {
    const best = largestFree(all, stretch, least);
    if (!best) return found;
    found.push(best);
    all.push(best);
  }
}

/** The largest free rectangle: its sides lie on edges of what is taken, so the strips between such edges are enough. */
function largestFree(taken: readonly Box[], stretch: Box, least: number): Box | null {
  const edges = taken.flatMap((box) => [box.x0, box.x1]);
  const xs = [...new Set([stretch.x0, ...edges, stretch.x1])]
    .filter((x) => x >= stretch.x0 && x <= stretch.x1)
    .sort((a, b) => a - b);
  if (xs.length > MOST_EDGES) return null;
  const upwards = [...taken].sort((a, b) => a.y0 - b.y0);
  let best: Box | null = null;
  let most = 0;
  for (let left = 0; left < xs.length - 1; left++) {
    for (let right = left + 1; right < xs.length; right++) {
      const x0 = xs[left] as number;
      const x1 = xs[right] as number;
      if (x1 - x0 < least) continue;
      // Free stretches along this strip: between the pieces that reach into it.
      let y0 = stretch.y0;
      const free = (y1: number) => {
        const area = (x1 - x0) * (y1 - y0);
        if (y1 - y0 < least || area <= most) return;
        most = area;
        best = { x0, x1, y0, y1 };
      };
      for (const box of upwards) {
        if (box.x0 >= x1 || box.x1 <= x0) continue;
        free(box.y0);
        y0 = Math.max(y0, box.y1);
      }
      free(stretch.y1);
    }
  }
  return best;
}
