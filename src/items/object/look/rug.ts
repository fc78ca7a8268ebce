import { line, rect } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";
import { stroke } from "../../common/clothFace.ts";
import { colour, type Look } from "./look.ts";

/** Thickness of a rug on the floor (common practice, no source). */
export const RUG_MM = 14;
const FRINGE_MM = 55;

/** A rug seen from its edge: a low band of its main colours, fringe at both ends. */
export function drawRugEdge(look: Look): Shape[] {
  const { width: w } = look;
  const f = Math.min(FRINGE_MM, w * 0.04);
  const band = rect(f, 0, w - 2 * f, RUG_MM);
  const strands: Shape[] = [];
  for (let at = 0; at < 5; at += 1) {
    const y = 4 + at * 2;
    strands.push(
      stroke(line(f, y, f * 0.1 * at, RUG_MM - 1), "fold"),
      stroke(line(w - f, y, w - f * 0.1 * at, RUG_MM - 1), "fold"),
    );
  }
  return [
    ...strands,
    { shape: "path", d: band, fill: colour(look, 0, "ceramic"), pen: null },
    {
      shape: "path",
      d: rect(f, RUG_MM * 0.36, w - 2 * f, RUG_MM * 0.2),
      fill: colour(look, 1, "ceramic"),
      pen: null,
    },
    { shape: "shading", d: band, light: 0.15, dark: 0.3, direction: "down" },
    stroke(band, "edge"),
  ];
}

/** A rug from above: its photograph, or its colours as borders, and the fringe at the short ends. */
export function drawRugPlan(look: Look): Shape[] {
  const { width: w, depth: d } = look;
  const f = Math.min(FRINGE_MM, Math.min(w, d) * 0.05);
  const along = w >= d;
  const [x, y, iw, ih] = along ? [f, 0, w - 2 * f, d] : [0, f, w, d - 2 * f];
  const strands: Shape[] = [];
  const span = along ? d : w;
  const count = Math.max(8, Math.round(span / 26));
  for (let at = 0; at <= count; at += 1) {
    const s = Math.min(span - 3, Math.max(3, (at / count) * span));
    // Strands hang a little askew, each third one more.
    const lean = at % 3 === 0 ? 5 : -3;
    strands.push(
      along ? stroke(line(f, s, 0, s + lean), "fold") : stroke(line(s, f, s + lean, 0), "fold"),
      along
        ? stroke(line(w - f, s, w, s - lean), "fold")
        : stroke(line(s, d - f, s - lean, d), "fold"),
    );
  }
  const b = Math.min(iw, ih) * 0.08;
  const woven: Shape[] = look.hasPhoto
    ? [{ shape: "photograph", surface: "object", x, y, width: iw, height: ih }]
    : [
        { shape: "path", d: rect(x, y, iw, ih), fill: colour(look, 1, "ceramic"), pen: null },
        {
          shape: "path",
          d: rect(x + b, y + b, iw - 2 * b, ih - 2 * b),
          fill: colour(look, 0, "ceramic"),
          pen: "fold",
        },
        {
          shape: "path",
          d: rect(x + 2 * b, y + 2 * b, iw - 4 * b, ih - 4 * b),
          fill: colour(look, 2, "ceramic"),
          pen: "fold",
        },
      ];
  return [...strands, ...woven, stroke(rect(x, y, iw, ih), "edge")];
}
