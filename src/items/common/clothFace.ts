import { roundedRect } from "../../drawing/paths.ts";
import type { Fill, PathData, Pen, Shape } from "../../drawing/shape.ts";

/** Light from the upper left on a padded face: white at its head, near black at its foot (print design 8). */
export interface Shade {
  readonly light: number;
  readonly dark: number;
  /** Also from side to side: light on its left, dark on its right. */
  readonly across?: { readonly light: number; readonly dark: number };
}

export const PADDED: Shade = { light: 0.22, dark: 0.22 };
export const FLAT: Shade = { light: 0.1, dark: 0.12 };

/** A face of an item: its fill, the light on it, and its outline on top. */
export function face(d: PathData, fill: Fill, shade: Shade, pen: Pen = "outline"): Shape[] {
  return [
    { shape: "path", d, fill, pen: null },
    { shape: "shading", d, light: shade.light, dark: shade.dark, direction: "down" },
    ...(shade.across
      ? [{ shape: "shading", d, ...shade.across, direction: "across" } as const]
      : []),
    { shape: "path", d, fill: null, pen },
  ];
}

/** A line of an item in one pen, without a fill. */
export function stroke(d: PathData, pen: Pen): Shape {
  return { shape: "path", d, fill: null, pen };
}

/** A band of even width just inside a rounded rectangle: welt, a frame. Its inner edge runs the other way, so that it stays open. */
export function roundedBand(
  x: number,
  y: number,
  width: number,
  height: number,
  radius: number,
  band: number,
): PathData {
  const [ix, iy, iw, ih] = [x + band, y + band, width - 2 * band, height - 2 * band];
  const r = Math.max(0, Math.min(radius - band, iw / 2, ih / 2));
  const f = (n: number) => n.toFixed(2);
  const corner = (toX: number, toY: number) => `A${f(r)} ${f(r)} 0 0 0 ${f(toX)} ${f(toY)}`;
  const inner = [
    `M${f(ix + r)} ${f(iy)}`,
    corner(ix, iy + r),
    `V${f(iy + ih - r)}`,
    corner(ix + r, iy + ih),
    `H${f(ix + iw - r)}`,
    corner(ix + iw, iy + ih - r),
    `V${f(iy + r)}`,
    corner(ix + iw - r, iy),
    "Z",
  ].join("");
  return roundedRect(x, y, width, height, radius) + inner;
}

/** The shadow that a thing throws on the floor: a flat ellipse. */
export function floorShadow(x: number, y: number, width: number): Shape {
  const rx = width / 2;
  const f = (n: number) => n.toFixed(1);
  const d = `M${f(x)} ${f(y)}A${f(rx)} 9 0 0 1 ${f(x + width)} ${f(y)}A${f(rx)} 9 0 0 1 ${f(x)} ${f(y)}Z`;
  return { shape: "path", d, fill: { tone: "shadow" }, pen: null };
}

/** A tapered leg standing on `foot`. */
export function leg(x: number, top: number, foot: number, wide: number, narrow: number): Shape[] {
  const f = (n: number) => n.toFixed(1);
  const inset = (wide - narrow) / 2;
  const d = `M${f(x)} ${f(top)}H${f(x + wide)}L${f(x + wide - inset)} ${f(foot)}H${f(x + inset)}Z`;
  return [
    { shape: "path", d, fill: { tone: "wood-dark" }, pen: "edge" },
    { shape: "shading", d, light: 0, dark: 0.25, direction: "across" },
  ];
}
