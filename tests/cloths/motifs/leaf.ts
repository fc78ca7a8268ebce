import type { Seeded } from "../ground/seeded.ts";
import { type Point, penStroke, polyline, shape, smooth } from "./path.ts";

export type LeafInks = { pale: string; deep: string; vein: string; line: string };
export type LeafForm = {
  length: number;
  width: number;
  /** How far the tip swings aside, as a share of the length; negative swings the other way. */
  bend: number;
  /** Teeth on each side; 0 for a smooth edge. */
  teeth: number;
};

/** A leaf from its stalk at the origin along +x: pale upper half, deep lower half, side veins and engraver's hatching. */
export function leaf(form: LeafForm, inks: LeafInks, random: Seeded): string {
  const { length, width, bend, teeth } = form;
  const spine = (t: number): Point => [length * t, bend * length * t ** 1.8];
  const normal = (t: number): Point => {
    const slope = 1.8 * bend * t ** 0.8;
    const long = Math.hypot(1, slope);
    return [-slope / long, 1 / long];
  };
  const half = (t: number) => (width / 2) * Math.sin(Math.PI * t ** 0.78) ** 0.85;
  const edge = (side: 1 | -1): Point[] => {
    const steps = teeth > 0 ? teeth * 4 : 16;
    return Array.from({ length: steps + 1 }, (_, i): Point => {
      const t = i / steps;
      const tooth = teeth > 0 ? 0.86 + 0.2 * (((i + 3) % 4) / 3) : 1;
      const w = half(t) * (i === 0 || i === steps ? 0 : tooth) * random.between(0.97, 1.03) * side;
      const [x, y] = spine(t);
      const [nx, ny] = normal(t);
      return [x + nx * w, y + ny * w];
    });
  };
  const upper = edge(-1);
  const lower = edge(1);
  const middle = Array.from({ length: 13 }, (_, i) => spine(i / 12));
  const draw = (points: readonly Point[], back: readonly Point[], fill: string) =>
    shape(polyline([...points, ...[...back].reverse()], true), { fill });
  const veins: string[] = [];
  const count = Math.max(5, Math.round(length / 11));
  for (let i = 1; i < count; i++) {
    const t = 0.08 + (0.8 * i) / count;
    for (const side of [-1, 1] as const) {
      const [x, y] = spine(t);
      const reach = half(Math.min(0.97, t + 0.1)) * 0.82;
      const [nx, ny] = normal(t);
      const tip: Point = [
        x + length * 0.1 + nx * reach * side * 0.9,
        y + ny * reach * side + bend * length * 0.1,
      ];
      const mid: Point = [
        x + length * 0.055 + nx * reach * side * 0.4,
        y + ny * reach * side * 0.42 + bend * length * 0.04,
      ];
      veins.push(
        penStroke([[x, y], mid, tip], length * 0.011 + 0.25, side < 0 ? inks.deep : inks.vein),
      );
      const hatch: Point = [
        x + length * 0.05 + nx * reach * side * 0.5,
        y + ny * reach * side * 0.55,
      ];
      veins.push(
        penStroke(
          [[x + length * 0.03, y + bend * length * 0.02], hatch],
          length * 0.006 + 0.2,
          inks.line,
        ),
      );
    }
  }
  return [
    draw(upper, middle, inks.pale),
    draw(lower, middle, inks.deep),
    ...veins,
    shape(polyline([...upper, ...[...lower].reverse()], true), {
      stroke: inks.line,
      width: 0.55 + length * 0.003,
    }),
    shape(smooth(middle), { stroke: inks.line, width: 0.5 + length * 0.007 }),
  ].join("");
}
