import type { Labels } from "../pixels/labels.ts";
import type { Basis } from "./lattice.ts";

/** Every so many pixels each way a place is looked at: enough of a picture's colours, and quick. */
const EVERY = 2;
/** Pixels by which what comes again may lie beside its place, as a tilt moves it and an edge blurs. */
const BESIDE = 3;
/**
 * Vectors longer than this part of the picture: tilt moves what lies so far off by more than a motif's edge, by this part of the way at
 * most. Only places so deep inside their colour are asked there, and none where the vector is longer than the last part.
 */
const FAR = 0.25;
const MOVED = 0.03;
const FURTHEST = 0.6;
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
  const longer = Math.max(width, height);
  return shifts.every(([x, y]) => {
    const [dx, dy] = [Math.round(x), Math.round(y)];
    const way = Math.hypot(x, y) / longer;
    if (way > FURTHEST) return true;
    const far = shifts.some(([i, j]) => Math.hypot(i, j) >= FAR * longer);
    const beside = far ? Math.max(BESIDE, Math.round(MOVED * way * longer)) : BESIDE;
    const inside = far ? beside : 1;
    const asked = new Uint32Array(counts.length);
    const found = new Uint32Array(counts.length);
    const [left, right] = [
      Math.max(inside, beside - dx),
      Math.min(width - inside, width - beside - dx),
    ];
    const [top, bottom] = [
      Math.max(inside, beside - dy),
      Math.min(height - inside, height - beside - dy),
    ];
    for (let v = top; v < bottom; v += EVERY) {
      for (let u = left; u < right; u += EVERY) {
        const p = v * width + u;
        const own = label[p] as number;
        if (!isWithin(label, p, width, inside)) continue;
        asked[own] = (asked[own] as number) + 1;
        if (isAbout(label, p + dy * width + dx, width, beside, own))
          found[own] = (found[own] as number) + 1;
      }
    }
    return asked.every((n, own) => n < FEWEST || (found[own] as number) >= AGAIN * n);
  });
}

/** True where the places so many pixels to each side have the place's label too: a rim and a grain have none. */
function isWithin(label: Uint8Array, p: number, width: number, inside: number): boolean {
  const own = label[p];
  return (
    label[p - inside] === own &&
    label[p + inside] === own &&
    label[p - inside * width] === own &&
    label[p + inside * width] === own
  );
}

/** True where a label is found at a place or some pixels beside it. */
function isAbout(
  label: Uint8Array,
  p: number,
  width: number,
  beside: number,
  own: number,
): boolean {
  return (
    label[p] === own ||
    label[p - beside] === own ||
    label[p + beside] === own ||
    label[p - beside * width] === own ||
    label[p + beside * width] === own
  );
}
