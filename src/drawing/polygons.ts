import { pathCommands } from "./pathCommands.ts";
import type { Point } from "./paths.ts";
import type { PathData } from "./shape.ts";

/** Straight pieces for one curve: enough to say where a point lies, far too few to draw. */
const STEPS = 8;

/** The closed outlines of a path of absolute commands as straight lines, one for each part of it. Throws on relative commands. */
export function polygonsOf(d: PathData): Point[][] {
  const out: Point[][] = [];
  let ring: Point[] = [];
  let at: Point = [0, 0];
  const go = (to: Point) => {
    ring.push(to);
    at = to;
  };
  const close = () => {
    if (ring.length > 2) out.push(ring);
    ring = [];
  };
  const point = (values: readonly number[], i: number): Point => [
    values[i] as number,
    values[i + 1] as number,
  ];
  const curve = (points: readonly Point[]) => {
    for (let s = 1; s <= STEPS; s++) go(bezier(points, s / STEPS));
  };
  for (const { command, values: n } of pathCommands(d)) {
    if (command === "M") {
      close();
      go(point(n, 0));
    } else if (command === "L") go(point(n, 0));
    else if (command === "H") go([n[0] as number, at[1]]);
    else if (command === "V") go([at[0], n[0] as number]);
    else if (command === "C") curve([at, point(n, 0), point(n, 2), point(n, 4)]);
    else if (command === "Q") curve([at, point(n, 0), point(n, 2)]);
    else if (command === "A") {
      const [rx, ry, , large, sweep] = n as [number, number, number, number, number];
      for (const p of arcPoints(at, rx, ry, large, sweep, point(n, 5))) go(p);
    } else {
      const first = ring[0];
      close();
      if (first) at = first;
    }
  }
  close();
  return out;
}

/** De Casteljau's rule for a curve of any degree. */
function bezier(points: readonly Point[], t: number): Point {
  if (points.length === 1) return points[0] as Point;
  const next = points.slice(1).map((p, i): Point => {
    const [x, y] = points[i] as Point;
    return [x + (p[0] - x) * t, y + (p[1] - y) * t];
  });
  return bezier(next, t);
}

/** An arc of an upright ellipse from its ends (W3C, SVG 1.1, appendix F.6.5, without rotation). */
function arcPoints(from: Point, rx0: number, ry0: number, large: number, sweep: number, to: Point) {
  const [hx, hy] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
  if (rx0 <= 0 || ry0 <= 0) return [to];
  const grow = Math.sqrt(Math.max(1, (hx / rx0) ** 2 + (hy / ry0) ** 2));
  const [rx, ry] = [rx0 * grow, ry0 * grow];
  const denominator = (rx * hy) ** 2 + (ry * hx) ** 2;
  if (denominator === 0) return [to];
  const root = Math.sqrt(Math.max(0, (rx * ry) ** 2 / denominator - 1));
  const sign = large === sweep ? -1 : 1;
  const cx = sign * root * ((rx * hy) / ry) + (from[0] + to[0]) / 2;
  const cy = -sign * root * ((ry * hx) / rx) + (from[1] + to[1]) / 2;
  const angle = ([x, y]: Point) => Math.atan2((y - cy) / ry, (x - cx) / rx);
  const start = angle(from);
  let turn = angle(to) - start;
  if (sweep && turn < 0) turn += 2 * Math.PI;
  if (!sweep && turn > 0) turn -= 2 * Math.PI;
  return Array.from({ length: STEPS }, (_, i): Point => {
    const a = start + (turn * (i + 1)) / STEPS;
    return [cx + rx * Math.cos(a), cy + ry * Math.sin(a)];
  });
}

/** True where a point lies inside outlines that together make one figure, holes left out (non-zero winding). */
export function isInside(rings: readonly (readonly Point[])[], [px, py]: Point): boolean {
  let winding = 0;
  for (const ring of rings)
    for (let i = 0; i < ring.length; i++) {
      const [x1, y1] = ring[i] as Point;
      const [x2, y2] = ring[(i + 1) % ring.length] as Point;
      if (y1 > py === y2 > py) continue;
      const x = x1 + ((py - y1) / (y2 - y1)) * (x2 - x1);
      if (x > px) winding += y2 > y1 ? 1 : -1;
    }
  return winding !== 0;
}
