import { type Point, smooth } from "../motifs/path.ts";

/** One thing on a glazed front: its glaze and its relief, as SVG in millimetres. */
export type Part = { colour: string; relief: string };

export const rect = (x: number, y: number, w: number, h: number, fill: string, more = "") =>
  `<rect x="${x.toFixed(1)}" y="${y.toFixed(1)}" width="${w.toFixed(1)}" height="${h.toFixed(1)}" fill="${fill}" ${more}/>`;

export const path = (d: string, fill: string, stroke = "none", width = 0) =>
  `<path d="${d}" fill="${fill}" stroke="${stroke}" stroke-width="${width}" stroke-linejoin="round" stroke-linecap="round"/>`;

/** A height from 0 (deepest) to 1 as the grey that the relief is drawn in. */
export function grey(level: number): string {
  const two = Math.round(255 * level)
    .toString(16)
    .padStart(2, "0");
  return `#${two}${two}${two}`;
}

/** A smooth line through points written "x,y x,y …"; `close` joins its ends. */
export const curve = (points: string, close = false): string =>
  smooth(
    points.split(" ").map((pair): Point => {
      const [x, y] = pair.split(",").map(Number);
      return [x as number, y as number];
    }),
    close,
  );
