import { type Point, rect } from "../../drawing/paths.ts";
import { isInside, polygonsOf } from "../../drawing/polygons.ts";
import type { Fill, Shape } from "../../drawing/shape.ts";

/** A filled part of a drawing, in the drawing's millimetres, in the order of painting. */
export interface Filled {
  readonly surface: string | null;
  /** What it is filled with; null of folds and photographs. */
  readonly fill: Fill | null;
  readonly rings: readonly (readonly Point[])[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
}

type Move = (p: Point) => Point;

function filled(d: string, surface: string | null, fill: Fill | null, move: Move): Filled {
  const rings = polygonsOf(d).map((ring) => ring.map(move));
  const [xs, ys] = [rings.flat().map((p) => p[0]), rings.flat().map((p) => p[1])];
  return {
    surface,
    fill,
    rings,
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    foot: Math.max(...ys),
  };
}

/** Every filled part of shapes in the order of painting, moved as their groups are; shadows are none. */
export function filledParts(shapes: readonly Shape[], move: Move = (p) => p): Filled[] {
  return shapes.flatMap((shape): Filled[] => {
    switch (shape.shape) {
      case "path": {
        const { fill } = shape;
        if (fill === null || ("tone" in fill && fill.tone === "shadow")) return [];
        return [filled(shape.d, "surface" in fill ? fill.surface : null, fill, move)];
      }
      case "folds":
      case "photograph":
        return [
          filled(rect(shape.x, shape.y, shape.width, shape.height), shape.surface, null, move),
        ];
      case "group": {
        const angle = ((shape.turnDeg ?? 0) * Math.PI) / 180;
        const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
        return filledParts(shape.children, ([x, y]) => {
          const mx = shape.mirror ? -x : x;
          return move([mx * cos - y * sin + (shape.x ?? 0), mx * sin + y * cos + (shape.y ?? 0)]);
        });
      }
      default:
        return [];
    }
  });
}

/** True where a point lies in a filled part. */
export const holds = (f: Filled, [x, y]: Point): boolean =>
  x >= f.left && x <= f.right && y >= f.top && y <= f.foot && isInside(f.rings, [x, y]);
