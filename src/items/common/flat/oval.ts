import { polyline } from "../../../drawing/paths.ts";
import type { PathData } from "../../../drawing/shape.ts";
import { Length } from "../../../units/length.ts";

/** Steps of the sum round an ellipse: of a smooth closed curve the trapezium rule is right to more places than a tape has. */
const STEPS = 720;

interface Ellipse {
  /** Half of its width and of its depth, millimetres. */
  readonly a: number;
  readonly b: number;
}

function halves([width, depth]: readonly [Length, Length]): Ellipse {
  return { a: width.toMm() / 2, b: depth.toMm() / 2 };
}

function roundEllipse({ a, b }: Ellipse): number {
  let sum = 0;
  for (let at = 0; at < STEPS; at += 1) {
    const t = (2 * Math.PI * at) / STEPS;
    sum += Math.hypot(a * Math.sin(t), b * Math.cos(t));
  }
  return (sum * 2 * Math.PI) / STEPS;
}

/**
 * Round an oval top of this width and depth, `out` beyond its edge all round: the ellipse's own way round and 2 pi times `out` (Steiner's
 * formula for a parallel curve). Rounded up to a hundredth of a millimetre.
 */
export function ovalGirth(size: readonly [Length, Length], out: Length): Length {
  const mm = roundEllipse(halves(size)) + 2 * Math.PI * out.toMm();
  return Length.mm((Math.ceil(mm * 100 - 1e-6) / 100).toFixed(2));
}

/** Area within that curve in square millimetres (Steiner's formula): the ellipse, its way round times `out`, and a circle of `out`. */
export function ovalArea(size: readonly [Length, Length], out: Length): number {
  const { a, b } = halves(size);
  const d = out.toMm();
  return Math.PI * a * b + roundEllipse({ a, b }) * d + Math.PI * d * d;
}

/**
 * That curve as a path about (x, y): every point `out` millimetres from the ellipse's edge, measured square to it, as a hem that hangs
 * level is. It is no ellipse: one of the same width and depth runs inside it and would hang short between.
 */
export function ovalOutline(
  x: number,
  y: number,
  { a, b }: Ellipse,
  out: number,
  points = 144,
): PathData {
  return polyline(
    Array.from({ length: points }, (_, at) => {
      const t = (2 * Math.PI * at) / points;
      const [nx, ny] = [b * Math.cos(t), a * Math.sin(t)];
      const n = Math.hypot(nx, ny) || 1;
      return [x + a * Math.cos(t) + (out * nx) / n, y + b * Math.sin(t) + (out * ny) / n] as const;
    }),
    true,
  );
}
