import type { Shape } from "./shape.ts";

/**
 * The same shapes with every surface renamed by `rename`, so that several items stand in one drawing of a wall and each is still
 * bound to its own cloths (`curtains-bay/face`).
 */
export function renameSurfaces(
  shapes: readonly Shape[],
  rename: (surface: string) => string,
): Shape[] {
  return shapes.map((shape): Shape => {
    switch (shape.shape) {
      case "path":
        return shape.fill && "surface" in shape.fill
          ? { ...shape, fill: { ...shape.fill, surface: rename(shape.fill.surface) } }
          : shape;
      case "folds":
      case "photograph":
        return { ...shape, surface: rename(shape.surface) };
      case "group":
        return { ...shape, children: renameSurfaces(shape.children, rename) };
      default:
        return shape;
    }
  });
}
