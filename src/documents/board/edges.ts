import { svgNumber } from "../words/svgNumber.ts";
/** How the edge of a piece is cut: pinked for cuttings, frayed for lengths, straight for paper and pictures. */
export type Edge = "pinked" | "frayed" | "straight";

const TOOTH_WIDTH = 2.2;
const TOOTH_DEPTH = 1;

const r = (n: number): string => svgNumber(n, 2);

function side(x0: number, y0: number, x1: number, y1: number): string {
  const length = Math.hypot(x1 - x0, y1 - y0);
  const teeth = Math.max(2, Math.round(length / TOOTH_WIDTH));
  const dx = (x1 - x0) / teeth;
  const dy = (y1 - y0) / teeth;
  // The valley lies to the right of the walk, which runs clockwise: inside the piece.
  const inX = -(dy / Math.hypot(dx, dy)) * TOOTH_DEPTH;
  const inY = (dx / Math.hypot(dx, dy)) * TOOTH_DEPTH;
  let d = "";
  for (let i = 0; i < teeth; i++)
    d += `L${r(x0 + dx * (i + 0.5) + inX)} ${r(y0 + dy * (i + 0.5) + inY)}L${r(x0 + dx * (i + 1))} ${r(y0 + dy * (i + 1))}`;
  return d;
}

/** A small repeatable jitter, from minus one to one: no randomness, so that the same page is the same bytes. */
function jitter(n: number): number {
  const s = Math.sin(n * 12.9898) * 43758.5453;
  return (s - Math.floor(s)) * 2 - 1;
}

function frayed(x: number, y: number, width: number, height: number): string {
  const steps = Math.max(4, Math.round(width / 0.9));
  let d = `M${r(x)} ${r(y)}`;
  for (let i = 1; i <= steps; i++) d += `L${r(x + (width * i) / steps)} ${r(y + jitter(i) * 0.12)}`;
  d += `L${r(x + width)} ${r(y + height)}`;
  for (let i = steps - 1; i >= 0; i--)
    d += `L${r(x + (width * i) / steps)} ${r(y + height + jitter(i + 500) * 0.12)}`;
  return `${d}Z`;
}

/** The outline of a piece of cloth, millimetres on paper, as SVG path data; whole teeth on every side. */
export function edgePath(edge: Edge, x: number, y: number, width: number, height: number): string {
  if (edge === "straight") return `M${r(x)} ${r(y)}H${r(x + width)}V${r(y + height)}H${r(x)}Z`;
  if (edge === "frayed") return frayed(x, y, width, height);
  return `M${r(x)} ${r(y)}${side(x, y, x + width, y)}${side(x + width, y, x + width, y + height)}${side(x + width, y + height, x, y + height)}${side(x, y + height, x, y)}Z`;
}
