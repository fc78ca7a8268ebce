import type { Groups } from "./weightedKMeans.ts";

/** Tolerance, in Oklab, of a mixture: its colour by the two colour axes, its lightness alone. */
const MIXED = 0.02;

/** True where a group's colour may be a mixture of two others: what a lens, or a file that keeps colours coarsely, leaves between them. */
export function isBetween({ centres, weight }: Groups, g: number): boolean {
  const [l = 0, a = 0, b = 0] = centres.subarray(g * 3, g * 3 + 3);
  for (let i = 0; i < weight.length; i++) {
    for (let j = i + 1; j < weight.length; j++) {
      if (i === g || j === g) continue;
      const [li = 0, ai = 0, bi = 0] = centres.subarray(i * 3, i * 3 + 3);
      const [lj = 0, aj = 0, bj = 0] = centres.subarray(j * 3, j * 3 + 3);
      if (l < Math.min(li, lj) - MIXED || l > Math.max(li, lj) + MIXED) continue;
      const [da, db] = [aj - ai, bj - bi];
      const length2 = da * da + db * db;
      const t = length2 > 0 ? ((a - ai) * da + (b - bi) * db) / length2 : 0;
      const at = Math.min(1, Math.max(0, t));
      if (Math.hypot(a - ai - at * da, b - bi - at * db) < MIXED) return true;
    }
  }
  return false;
}

/** Tolerance, in Oklab, of a mixture by all of its colour. */
const MIXTURE = 0.04;

/**
 * How far a group's lightness is from that of the two others whose mixture it may be by all of its colour, the nearer of them; null
 * where it lies near no straight line between two.
 */
export function mixtureOf({ centres, weight }: Groups, g: number): number | null {
  const [l = 0, a = 0, b = 0] = centres.subarray(g * 3, g * 3 + 3);
  let nearest: number | null = null;
  for (let i = 0; i < weight.length; i++) {
    for (let j = i + 1; j < weight.length; j++) {
      if (i === g || j === g) continue;
      const [li = 0, ai = 0, bi = 0] = centres.subarray(i * 3, i * 3 + 3);
      const [lj = 0, aj = 0, bj = 0] = centres.subarray(j * 3, j * 3 + 3);
      const [dl, da, db] = [lj - li, aj - ai, bj - bi];
      const t = ((l - li) * dl + (a - ai) * da + (b - bi) * db) / (dl * dl + da * da + db * db);
      if (t < 0 || t > 1) continue;
      if (Math.hypot(l - li - t * dl, a - ai - t * da, b - bi - t * db) >= MIXTURE) continue;
      const apart = Math.min(Math.abs(l - li), Math.abs(l - lj));
      nearest = Math.min(nearest ?? apart, apart);
    }
  }
  return nearest;
}

/** True where a group's colour may be a mixture of three others: the rims of a line against two grounds, taken for one. */
export function isBetweenThree({ centres, weight }: Groups, g: number): boolean {
  const others = [...weight.keys()].filter((i) => i !== g).map((i) => at(centres, i));
  const own = at(centres, g);
  return others.some((i, n) =>
    others
      .slice(n + 1)
      .some((j, m) => others.slice(n + 2 + m).some((k) => toTriangle(own, i, j, k) < MIXTURE)),
  );
}

type Triple = readonly [number, number, number];

function at(centres: Float64Array, g: number): Triple {
  const [l = 0, a = 0, b = 0] = centres.subarray(g * 3, g * 3 + 3);
  return [l, a, b];
}

/** Distance from a point to the plane of a triangle that it lies over; infinite where it lies beside it. */
function toTriangle(p: Triple, i: Triple, j: Triple, k: Triple): number {
  const [u, v, q] = [minus(j, i), minus(k, i), minus(p, i)];
  const [uu, uv, vv, qu, qv] = [dot(u, u), dot(u, v), dot(v, v), dot(q, u), dot(q, v)];
  const area2 = uu * vv - uv * uv;
  const s = (qu * vv - qv * uv) / area2;
  const t = (qv * uu - qu * uv) / area2;
  if (!(s >= 0 && t >= 0 && s + t <= 1)) return Number.POSITIVE_INFINITY;
  return Math.hypot(...q.map((w, c) => w - s * (u[c] as number) - t * (v[c] as number)));
}

function minus(a: Triple, b: Triple): Triple {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function dot(a: Triple, b: Triple): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
