/** A point in millimetres, x right, y down. */
export type Point = readonly [number, number];

const n = (value: number) => value.toFixed(2);

/** A polyline as SVG path data; `close` joins the ends. */
export function polyline(points: readonly Point[], close = false): string {
  return `M${points.map(([x, y]) => `${n(x)} ${n(y)}`).join("L")}${close ? "Z" : ""}`;
}

/** A smooth line through points (uniform Catmull-Rom turned into cubics). */
export function smooth(points: readonly Point[], close = false): string {
  const count = points.length;
  const at = (i: number): Point =>
    points[close ? (i + count) % count : Math.max(0, Math.min(count - 1, i))] as Point;
  const parts = [`M${n(at(0)[0])} ${n(at(0)[1])}`];
  for (let i = 0; i < (close ? count : count - 1); i++) {
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    parts.push(
      `C${n(b[0] + (c[0] - a[0]) / 6)} ${n(b[1] + (c[1] - a[1]) / 6)} ${n(c[0] - (d[0] - b[0]) / 6)} ${n(c[1] - (d[1] - b[1]) / 6)} ${n(c[0])} ${n(c[1])}`,
    );
  }
  return parts.join("") + (close ? "Z" : "");
}

/** Moves, turns (degrees, clockwise on the page) and scales what was drawn about the origin. */
export function placed(content: string, x: number, y: number, degrees = 0, scale = 1): string {
  return `<g transform="translate(${n(x)} ${n(y)}) rotate(${n(degrees)}) scale(${scale.toFixed(3)})">${content}</g>`;
}

export type Fill = { fill?: string; stroke?: string; width?: number; opacity?: number };

export function shape(d: string, { fill = "none", stroke, width = 0.5, opacity }: Fill): string {
  const line = stroke
    ? ` stroke="${stroke}" stroke-width="${n(width)}" stroke-linecap="round" stroke-linejoin="round"`
    : "";
  return `<path d="${d}" fill="${fill}"${line}${opacity === undefined ? "" : ` opacity="${opacity}"`}/>`;
}

/** A line that swells and thins like a pen stroke: a filled sliver from the first point to the last. */
export function penStroke(points: readonly Point[], thickness: number, fill: string): string {
  const left: Point[] = [];
  const right: Point[] = [];
  points.forEach((p, i) => {
    const before = points[Math.max(0, i - 1)] as Point;
    const after = points[Math.min(points.length - 1, i + 1)] as Point;
    const dx = after[0] - before[0];
    const dy = after[1] - before[1];
    const long = Math.hypot(dx, dy) || 1;
    const t = i / (points.length - 1);
    const half = (thickness / 2) * (1 - t) ** 0.7 + 0.02;
    left.push([p[0] - (dy / long) * half, p[1] + (dx / long) * half]);
    right.unshift([p[0] + (dy / long) * half, p[1] - (dx / long) * half]);
  });
  return shape(polyline([...left, ...right], true), { fill });
}

/** Points along a cubic, first and last included. */
export function cubic(a: Point, b: Point, c: Point, d: Point, steps = 14): Point[] {
  return Array.from({ length: steps + 1 }, (_, i): Point => {
    const t = i / steps;
    const s = 1 - t;
    const mixed = (k: 0 | 1) =>
      s * s * s * a[k] + 3 * s * s * t * b[k] + 3 * s * t * t * c[k] + t * t * t * d[k];
    return [mixed(0), mixed(1)];
  });
}
