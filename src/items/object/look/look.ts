import type { Fill, Shape } from "../../../drawing/shape.ts";

/** What a drawing of an object may use: its size in millimetres and its colours, largest share first. */
export interface Look {
  readonly width: number;
  readonly depth: number;
  readonly height: number;
  readonly colours: readonly string[];
  readonly hasPhoto: boolean;
  /** Of a bed: how high its made-up top stands; null where the card does not say. */
  readonly topMm: number | null;
  /** A lamp without its shade, which is an item of its own. */
  readonly bare?: boolean;
  /** A stove from where its door is not seen. */
  readonly turned?: boolean;
}

export type Draw = (look: Look) => Shape[];

/** The nth colour of the card, else a quiet material. */
export function colour(
  look: Look,
  at: number,
  otherwise: "wood" | "wood-dark" | "ceramic" | "white" | "metal",
): Fill {
  const hex = look.colours[at];
  return hex ? { hex } : { tone: otherwise };
}

/** Part of a thing in one material, lit from above, outlined. */
export function part(
  d: string,
  fill: Fill,
  pen: "outline" | "edge" = "outline",
  light = 0.14,
  dark = 0.16,
): Shape[] {
  return [
    { shape: "path", d, fill, pen: null },
    { shape: "shading", d, light, dark, direction: "down" },
    { shape: "path", d, fill: null, pen },
  ];
}

/** A flat shadow behind what hangs on a wall, towards the lower right. */
export function wallShadow(d: string): Shape {
  return {
    shape: "group",
    x: 9,
    y: 13,
    children: [{ shape: "path", d, fill: { tone: "shadow" }, pen: null }],
  };
}
