import { line, rect } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";
import { stroke } from "../../clothFace.ts";
import { type Look, wallShadow } from "./look.ts";

/** A frame of four mitred sides about what it holds. */
function framed(
  look: Look,
  inside: (x: number, y: number, w: number, h: number) => Shape[],
): Shape[] {
  const { width: w, height: h } = look;
  const f = Math.min(Math.max(Math.min(w, h) * 0.075, 12), 60);
  const slip = f * 0.22;
  const whole = rect(0, 0, w, h);
  const inner = (d: number) => rect(d, d, w - 2 * d, h - 2 * d);
  return [
    wallShadow(whole),
    { shape: "path", d: whole, fill: { tone: "wood" }, pen: null },
    { shape: "shading", d: whole, light: 0.16, dark: 0.2, direction: "down" },
    stroke(whole, "outline"),
    stroke(inner(f * 0.3), "fold"),
    ...[
      [0, 0, 1, 1],
      [w, 0, -1, 1],
      [w, h, -1, -1],
      [0, h, 1, -1],
    ].map(([x, y, sx, sy]) =>
      stroke(
        line(
          x as number,
          y as number,
          (x as number) + (sx as number) * f,
          (y as number) + (sy as number) * f,
        ),
        "fold",
      ),
    ),
    { shape: "path", d: inner(f - slip), fill: { tone: "wood-dark" }, pen: "edge" },
    ...inside(f, f, w - 2 * f, h - 2 * f),
    stroke(inner(f), "edge"),
  ];
}

/** A picture in its frame, its own photograph inside. */
export function drawPicture(look: Look): Shape[] {
  return framed(look, (x, y, width, height) => [
    { shape: "photograph", surface: "object", x, y, width, height },
    // The frame's inner edge throws a narrow shadow at head and left.
    { shape: "path", d: rect(x, y, width, 7), fill: { tone: "shadow" }, pen: null },
    { shape: "path", d: rect(x, y + 7, 6, height - 7), fill: { tone: "shadow" }, pen: null },
  ]);
}

/** A mirror: pale flat glass with a few strokes. */
export function drawMirror(look: Look): Shape[] {
  return framed(look, (x, y, w, h) => [
    { shape: "path", d: rect(x, y, w, h), fill: { tone: "glass" }, pen: null },
    stroke(line(x + w * 0.3, y + h * 0.42, x + w * 0.5, y + h * 0.2), "fold"),
    stroke(line(x + w * 0.4, y + h * 0.44, x + w * 0.54, y + h * 0.28), "fold"),
    stroke(line(x + w * 0.56, y + h * 0.72, x + w * 0.68, y + h * 0.58), "fold"),
  ]);
}
