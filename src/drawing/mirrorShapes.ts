import { mirrorPath } from "./mirrorPath.ts";
import type { Fill, Shape } from "./shape.ts";

/** The cloth of a mirrored face: its motif stands at the mirrored place, itself not mirrored; a turn goes the other way. */
function mirrorFill(fill: Fill | null, width: number): Fill | null {
  if (fill === null || !("surface" in fill)) return fill;
  const turned = fill.turnDeg ? { turnDeg: -fill.turnDeg } : {};
  return { ...fill, x: width - fill.x, ...turned };
}

/**
 * A thing seen from its other side: its outlines in a mirror that stands upright at half of `width`, its cloth laid on them anew, so
 * that no pattern, and no way that a pattern runs, is turned round. Light still falls from the upper left. Millimetres.
 */
export function mirrorShapes(shapes: readonly Shape[], width: number): Shape[] {
  const mirrored = (shape: Shape): Shape => {
    switch (shape.shape) {
      case "path":
        return { ...shape, d: mirrorPath(shape.d, width), fill: mirrorFill(shape.fill, width) };
      case "shading":
        return { ...shape, d: mirrorPath(shape.d, width) };
      case "folds":
        return {
          ...shape,
          x: width - shape.x - shape.width,
          originX: width - shape.originX,
        };
      case "photograph":
        return { ...shape, x: width - shape.x - shape.width };
      case "note": {
        // Its text runs on to the right, and what lay there now lies to the left.
        const { within: _, ...note } = shape;
        return { ...note, x: width - shape.x };
      }
      case "words":
      case "sign":
        return { ...shape, x: width - shape.x };
      case "group": {
        const { mirror, turnDeg, ...group } = shape;
        return {
          ...group,
          x: width - (shape.x ?? 0),
          ...(turnDeg ? { turnDeg: -turnDeg } : {}),
          // A mirror seen in a mirror shows the thing itself.
          children: mirror ? shape.children : mirrorShapes(shape.children, 0),
        };
      }
    }
  };
  return shapes.map(mirrored);
}
