import type { PathData } from "./shape.ts";

/** A number as it stands in path data: thousandths, without trailing noughts, never "-0". */
export function figure(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`A drawing cannot hold ${value}`);
  const text = value.toFixed(3).replace(/\.?0+$/, "");
  return text === "-0" ? "0" : text;
}

const f = figure;

/** A rectangle from its upper left corner. */
export function rect(x: number, y: number, width: number, height: number): PathData {
  return `M${f(x)} ${f(y)}H${f(x + width)}V${f(y + height)}H${f(x)}Z`;
}

/** A rectangle with round corners; the radius never passes half a side. */
export function roundedRect(
  x: number,
  y: number,
  width: number,
  height: number,
  radius: number,
): PathData {
  const r = Math.min(radius, width / 2, height / 2);
  const corner = (toX: number, toY: number) => `A${f(r)} ${f(r)} 0 0 1 ${f(toX)} ${f(toY)}`;
  return [
    `M${f(x + r)} ${f(y)}H${f(x + width - r)}`,
    `${corner(x + width, y + r)}V${f(y + height - r)}`,
    `${corner(x + width - r, y + height)}H${f(x + r)}`,
    `${corner(x, y + height - r)}V${f(y + r)}`,
    `${corner(x + r, y)}Z`,
  ].join("");
}

export type Point = readonly [x: number, y: number];

/** Straight lines through points. */
export function polyline(points: readonly Point[], closed = false): PathData {
  const line = points.map(([x, y], at) => `${at === 0 ? "M" : "L"}${f(x)} ${f(y)}`).join("");
  return closed ? `${line}Z` : line;
}

/** One straight line. */
export function line(x1: number, y1: number, x2: number, y2: number): PathData {
  return `M${f(x1)} ${f(y1)}L${f(x2)} ${f(y2)}`;
}

/** Part of a circle about (x, y) from one angle to another, clockwise in degrees; 0 points to the right. */
export function arc(
  x: number,
  y: number,
  radius: number,
  fromDeg: number,
  toDeg: number,
): PathData {
  const at = (deg: number): Point => {
    const angle = (deg * Math.PI) / 180;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  };
  const [x1, y1] = at(fromDeg);
  const [x2, y2] = at(toDeg);
  const large = Math.abs(toDeg - fromDeg) > 180 ? 1 : 0;
  const sweep = toDeg >= fromDeg ? 1 : 0;
  return `M${f(x1)} ${f(y1)}A${f(radius)} ${f(radius)} 0 ${large} ${sweep} ${f(x2)} ${f(y2)}`;
}

/** A whole ellipse about (x, y). */
export function ellipse(x: number, y: number, rx: number, ry: number): PathData {
  const half = (toX: number) => `A${f(rx)} ${f(ry)} 0 0 1 ${f(toX)} ${f(y)}`;
  return `M${f(x - rx)} ${f(y)}${half(x + rx)}${half(x - rx)}Z`;
}

/** A whole circle about (x, y). */
export function circle(x: number, y: number, radius: number): PathData {
  return ellipse(x, y, radius, radius);
}

/** One smooth curve from a to d with handles b and c. */
export function cubic(a: Point, b: Point, c: Point, d: Point): PathData {
  const p = ([x, y]: Point) => `${f(x)} ${f(y)}`;
  return `M${p(a)}C${p(b)} ${p(c)} ${p(d)}`;
}
