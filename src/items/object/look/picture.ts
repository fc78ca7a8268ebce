import { line, rect } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";
import { stroke } from "../../common/clothFace.ts";
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

/** A picture of which only the colours are known: bands of them in a mount, as much of each as the card says. */
function mounted(look: Look): Shape[] {
  return framed(look, (x, y, width, height) => {
    const mount = Math.min(width, height) * 0.16;
    const [ix, iy, iw, ih] = [x + mount, y + mount, width - 2 * mount, height - 2.2 * mount];
    const [ground, ...others] = look.colours;
    const hill = (at: number) => {
      const top = iy + ih * (0.42 + (0.4 * at) / others.length);
      const [a, b] = at % 2 === 0 ? [0.09, -0.06] : [-0.05, 0.08];
      const f = (n: number) => n.toFixed(1);
      return `M${f(ix)} ${f(top)}C${f(ix + iw * 0.3)} ${f(top - ih * a)} ${f(ix + iw * 0.66)} ${f(top - ih * b)} ${f(ix + iw)} ${f(top + ih * 0.03)}V${f(iy + ih)}H${f(ix)}Z`;
    };
    return [
      { shape: "path", d: rect(x, y, width, height), fill: { tone: "white" }, pen: null },
      { shape: "path", d: rect(x, y, width, 5), fill: { tone: "shadow" }, pen: null },
      {
        shape: "path",
        d: rect(ix, iy, iw, ih),
        fill: { hex: ground ?? "#d9d5ca" },
        pen: null,
      },
      ...others.map((hex, at): Shape => ({ shape: "path", d: hill(at), fill: { hex }, pen: null })),
      stroke(rect(ix, iy, iw, ih), "fold"),
    ];
  });
}

/** A picture in its frame, its own photograph inside; without one, its colours. */
export function drawPicture(look: Look): Shape[] {
  if (!look.hasPhoto && look.colours.length > 0) return mounted(look);
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
