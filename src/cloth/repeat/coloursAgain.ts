import type { Labels } from "../pixels/labels.ts";
import type { Basis } from "./lattice.ts";

/** Every so many pixels each way a place is looked at: enough of a picture's colours, and quick. */
const EVERY = 2;
/** Pixels by which what comes again may lie beside its place, as a tilt moves it and an edge blurs. */
const BESIDE = 3;
/** Vectors longer than this part of the picture are not asked: tilt moves what lies so far off by more than a motif's edge. */
const FURTHEST = 0.25;
/** Places of a colour from which it is more than a fleck. */
const FEWEST = 120;
/** Part of a colour's places which find it again one repeat on, at least: a fifth of them lie on a wavering edge. */
const AGAIN = 0.4;

/**
 * True where every colour of a picture comes again one repeat on. Where one dot in sixteen is red the cells are alike but for a
 * few parts in a hundred, and the shape comes again; the red does not. `basis` in pixels of a relief, of which one stands for
 * `scale` of the picture.
 */
export function coloursComeAgain(
  { label, counts }: Labels,
  { width, height }: { readonly width: number; readonly height: number },
  basis: Basis,
  scale: number,
): boolean {
  const shifts = basis.map(([x, y]) => [scale * x, scale * y] as const);
  const isNear = shifts.every(([x, y]) => Math.hypot(x, y) < FURTHEST * Math.max(width, height));
  if (!isNear) return true;
  return shifts.every(([x, y]) => {
    const [dx, dy] = [Math.round(x), Math.round(y)];
    const asked = new Uint32Array(counts.length);
    const found = new Uint32Array(counts.length);
    const [left, right] = [Math.max(1, BESIDE - dx), Math.min(width - 1, width - BESIDE - dx)];
    const [top, bottom] = [Math.max(1, BESIDE - dy), Math.min(height - 1, height - BESIDE - dy)];
    for (let v = top; v < bottom; v += EVERY) {
      for (let u = left; u < right; u += EVERY) {
        const p = v * width + u;
        const own = label[p] as number;
        if (!isWithin(label, p, width, own)) continue;
        asked[own] = (asked[own] as number) + 1;
        if (isAbout(label, p + dy * width + dx, width, own))
          found[own] = (found[own] as number) + 1;
      }
    }
    return asked.every((n, own) => n < FEWEST || (found[own] as number) >= AGAIN * n);
  });
}

/** True where the neighbours of a place have its label too: a rim and a grain have none. */
function isWithin(label: Uint8Array, p: number, width: number, own: number): boolean {
  return (
    label[p - 1] === own &&
    label[p + 1] === own &&
    label[p - width] === own &&
    label[p + width] === own
  );
}

/** True where a label is found at a place or a few pixels beside it. */
function isAbout(label: Uint8Array, p: number, width: number, own: number): boolean {
  return (
    label[p] === own ||
    label[p - BESIDE] === own ||
    label[p + BESIDE] === own ||
    label[p - BESIDE * width] === own ||
    label[p + BESIDE * width] === own
  );
}
