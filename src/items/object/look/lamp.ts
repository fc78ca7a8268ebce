import { line, rect } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";
import { stroke } from "../../common/clothFace.ts";
import { colour, type Look } from "./look.ts";

const f = (n: number) => n.toFixed(1);

/** A lamp that is lit: shade, neck and a turned base; a tall one stands on a rod. */
export function drawLamp(look: Look): Shape[] {
  const { width: w, height: h } = look;
  const standing = h > 1000;
  const mid = w / 2;
  // Without its own shade the neck goes on up into the one that it wears.
  const shadeHigh = look.bare
    ? h * (standing ? 0.12 : 0.22)
    : standing
      ? Math.min(h * 0.2, w * 0.85)
      : Math.min(h * 0.46, w * 0.95);
  const head = w * 0.29;
  const shade = `M${f(mid - head)} 0H${f(mid + head)}L${f(w)} ${f(shadeHigh)}H0Z`;
  const foot: Shape[] = standing ? rod(look, mid, shadeHigh, h) : vase(look, mid, shadeHigh, h, w);
  if (look.bare) return foot;
  return [
    ...foot,
    { shape: "path", d: shade, fill: colour(look, 0, "ceramic"), pen: null },
    { shape: "shading", d: shade, light: 0.12, dark: 0.2, direction: "across" },
    // Lit from within: pale at two thirds of its height, not dark at its foot.
    { shape: "shading", d: shade, light: 0.75, dark: 0, direction: "glow" },
    stroke(shade, "outline"),
    stroke(line(mid - head - 1, 9, mid + head + 1, 9), "fold"),
    stroke(line(2, shadeHigh - 9, w - 2, shadeHigh - 9), "fold"),
  ];
}

function vase(look: Look, mid: number, top: number, h: number, w: number): Shape[] {
  const b = Math.min(w * 0.24, (h - top) * 0.36);
  const neck = top + (h - top) * 0.2;
  const plinth = Math.min(18, (h - top) * 0.08);
  const d = `M${f(mid - b * 0.24)} ${f(neck)}C${f(mid - b * 0.24)} ${f(neck + (h - neck) * 0.16)} ${f(mid - b)} ${f(neck + (h - neck) * 0.3)} ${f(mid - b)} ${f(neck + (h - neck) * 0.55)}C${f(mid - b)} ${f(h - plinth - 12)} ${f(mid - b * 0.5)} ${f(h - plinth)} ${f(mid - b * 0.44)} ${f(h - plinth)}H${f(mid + b * 0.44)}C${f(mid + b * 0.5)} ${f(h - plinth)} ${f(mid + b)} ${f(h - plinth - 12)} ${f(mid + b)} ${f(neck + (h - neck) * 0.55)}C${f(mid + b)} ${f(neck + (h - neck) * 0.3)} ${f(mid + b * 0.24)} ${f(neck + (h - neck) * 0.16)} ${f(mid + b * 0.24)} ${f(neck)}Z`;
  const gleam = `M${f(mid - b * 0.62)} ${f(neck + (h - neck) * 0.42)}Q${f(mid - b * 0.8)} ${f(neck + (h - neck) * 0.56)} ${f(mid - b * 0.62)} ${f(neck + (h - neck) * 0.72)}Q${f(mid - b * 0.68)} ${f(neck + (h - neck) * 0.56)} ${f(mid - b * 0.62)} ${f(neck + (h - neck) * 0.42)}Z`;
  return [
    {
      shape: "path",
      d: rect(mid - b * 0.12, top - 10, b * 0.24, neck - top + 14),
      fill: { tone: "metal" },
      pen: "edge",
    },
    { shape: "path", d, fill: colour(look, 1, "ceramic"), pen: null },
    { shape: "shading", d, light: 0.2, dark: 0.3, direction: "across" },
    { shape: "path", d: gleam, fill: { tone: "white" }, pen: null },
    stroke(d, "outline"),
    {
      shape: "path",
      d: rect(mid - b * 0.62, h - plinth, b * 1.24, plinth),
      fill: { tone: "wood-dark" },
      pen: "edge",
    },
  ];
}

function rod(look: Look, mid: number, top: number, h: number): Shape[] {
  return [
    {
      shape: "path",
      d: rect(mid - 9, top - 10, 18, h - top - 10),
      fill: colour(look, 1, "metal"),
      pen: "edge",
    },
    {
      shape: "path",
      d: `M${f(mid - 140)} ${f(h)}C${f(mid - 130)} ${f(h - 24)} ${f(mid - 40)} ${f(h - 24)} ${f(mid - 12)} ${f(h - 40)}H${f(mid + 12)}C${f(mid + 40)} ${f(h - 24)} ${f(mid + 130)} ${f(h - 24)} ${f(mid + 140)} ${f(h)}Z`,
      fill: colour(look, 1, "metal"),
      pen: "outline",
    },
  ];
}
