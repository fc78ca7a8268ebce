import { circle, line, rect, roundedRect } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";
import { floorShadow, stroke } from "../../clothFace.ts";
import { colour, type Look, part } from "./look.ts";

const f = (n: number) => n.toFixed(1);

/** A turned-down leg of a table or chair in the piece's own colour. */
function leg(look: Look, x: number, top: number, foot: number, wide: number, lean = 0): Shape[] {
  const narrow = wide * 0.62;
  const d = `M${f(x)} ${f(top)}H${f(x + wide)}L${f(x + wide - (wide - narrow) / 2 + lean)} ${f(foot)}H${f(x + (wide - narrow) / 2 + lean)}Z`;
  return [
    { shape: "path", d, fill: colour(look, 0, "wood"), pen: null },
    { shape: "shading", d, light: 0.18, dark: 0.24, direction: "across" },
    stroke(d, "edge"),
  ];
}

/** A table: top, apron, four tapered legs (the back pair between the front one, darker). */
export function drawTable(look: Look): Shape[] {
  const { width: w, height: h } = look;
  const top = Math.min(32, h * 0.06);
  const apron = Math.min(110, h * 0.15);
  const lip = Math.min(40, w * 0.03);
  const wide = Math.min(Math.max(w * 0.045, 30), 70);
  const back = (x: number): Shape => ({
    shape: "path",
    d: rect(x, top + apron, wide * 0.62, h - top - apron - 12),
    fill: { tone: "wood-dark" },
    pen: "edge",
  });
  return [
    floorShadow(w * 0.02, h - 1, w * 0.96),
    back(lip + wide * 1.25),
    back(w - lip - wide * 1.87),
    ...leg(look, lip + 6, top + apron - 4, h, wide),
    ...leg(look, w - lip - 6 - wide, top + apron - 4, h, wide),
    ...part(rect(lip, top, w - 2 * lip, apron), colour(look, 0, "wood"), "edge", 0.04, 0.2),
    { shape: "path", d: rect(lip, top, w - 2 * lip, 9), fill: { tone: "shadow" }, pen: null },
    stroke(line(lip + wide + 14, top + apron - 10, w - lip - wide - 14, top + apron - 10), "fold"),
    ...part(roundedRect(0, 0, w, top, 7), colour(look, 0, "wood"), "outline", 0.2, 0.1),
  ];
}

/** A chest of drawers: top, drawers that deepen downwards, knobs, bracket feet. */
export function drawChest(look: Look): Shape[] {
  const { width: w, height: h } = look;
  const top = Math.min(30, h * 0.05);
  const foot = Math.min(90, h * 0.11);
  const body = rect(12, top, w - 24, h - top - foot);
  const rows = Math.max(1, Math.min(5, Math.round((h - top - foot) / 200)));
  const weights = Array.from({ length: rows }, (_, at) => 1 + at * 0.14);
  const sum = weights.reduce((a, b) => a + b, 0);
  const inner = { x: 34, y: top + 20, w: w - 68, h: h - top - foot - 36 };
  const drawers: Shape[] = [];
  let y = inner.y;
  for (const [at, weight] of weights.entries()) {
    const high = (inner.h * weight) / sum;
    const split = at === 0 && rows >= 3 && w > 700 ? 2 : 1;
    for (let column = 0; column < split; column += 1) {
      const wide = inner.w / split;
      const x = inner.x + column * wide;
      const face = rect(x + (column > 0 ? 6 : 0), y, wide - (split > 1 ? 6 : 0), high - 10);
      drawers.push(...part(face, colour(look, 0, "wood"), "edge", 0.14, 0.12));
      const knobs = wide > 420 ? [0.24, 0.76] : [0.5];
      for (const share of knobs)
        drawers.push({
          shape: "path",
          d: circle(x + wide * share, y + (high - 10) / 2, 13),
          fill: { tone: "metal" },
          pen: "edge",
        });
    }
    y += high;
  }
  const bracket = `M12 ${f(h - foot)}H${f(w - 12)}V${f(h)}H${f(w - 62)}C${f(w - 66)} ${f(h - foot * 0.5)} ${f(w - 100)} ${f(h - foot * 0.42)} ${f(w - 130)} ${f(h - foot * 0.4)}H130C100 ${f(h - foot * 0.42)} 66 ${f(h - foot * 0.5)} 62 ${f(h)}H12Z`;
  return [
    floorShadow(0, h - 1, w),
    ...part(bracket, colour(look, 0, "wood"), "outline", 0, 0.22),
    ...part(body, colour(look, 0, "wood"), "outline", 0.1, 0.2),
    ...drawers,
    ...part(roundedRect(0, 0, w, top, 8), colour(look, 0, "wood"), "outline", 0.22, 0.1),
  ];
}

/** A dining chair: two posts, rails and slats, a seat, front legs. */
export function drawChair(look: Look): Shape[] {
  const { width: w, height: h } = look;
  const seat = h * 0.5;
  const post = Math.min(Math.max(w * 0.075, 26), 44);
  const rails: Shape[] = [];
  for (const [at, share] of [0.02, 0.3, 0.58].entries()) {
    const high = seat * (at === 0 ? 0.15 : 0.085);
    const y = seat * share;
    const d = `M${f(post * 0.8)} ${f(y + 8)}Q${f(w / 2)} ${f(y - (at === 0 ? 16 : 4))} ${f(w - post * 0.8)} ${f(y + 8)}V${f(y + high + 8)}Q${f(w / 2)} ${f(y + high - 2)} ${f(post * 0.8)} ${f(y + high + 8)}Z`;
    rails.push(...part(d, colour(look, 0, "wood"), "edge"));
  }
  const pad = roundedRect(-6, seat - 26, w + 12, 52, 20);
  return [
    floorShadow(0, h - 1, w),
    ...leg(look, w * 0.2, seat, h - 14, post * 0.7),
    ...leg(look, w * 0.8 - post * 0.7, seat, h - 14, post * 0.7),
    ...part(rect(4, 0, post, seat), colour(look, 0, "wood"), "edge"),
    ...part(rect(w - post - 4, 0, post, seat), colour(look, 0, "wood"), "edge"),
    ...rails,
    ...leg(look, 0, seat + 60, h, post * 1.1),
    ...leg(look, w - post * 1.1, seat + 60, h, post * 1.1),
    ...part(rect(6, seat + 18, w - 12, 54), colour(look, 0, "wood"), "edge", 0, 0.2),
    ...part(pad, colour(look, 1, "wood"), "outline", 0.2, 0.2),
  ];
}

/** A plain case: a cupboard, a shelf, what has no better shape. Two panels where it is wide enough. */
export function drawBox(look: Look): Shape[] {
  const { width: w, height: h } = look;
  const edge = Math.min(40, Math.min(w, h) * 0.09);
  const columns = w > h * 1.6 ? Math.min(4, Math.round(w / (h * 1.1))) : w > 600 ? 2 : 1;
  const wide = (w - edge * (columns + 1)) / columns;
  const panels = Array.from({ length: columns }, (_, at) => edge + at * (wide + edge)).flatMap(
    (x) => [
      ...part(rect(x, edge, wide, h - 2 * edge), colour(look, 0, "wood"), "edge", 0.04, 0.1),
      stroke(rect(x + 12, edge + 12, wide - 24, h - 2 * edge - 24), "fold"),
    ],
  );
  const whole = rect(0, 0, w, h);
  if (look.hasPhoto)
    return [
      floorShadow(0, h - 1, w),
      { shape: "path", d: whole, fill: { surface: "object", x: w / 2, y: h / 2 }, pen: "outline" },
    ];
  return [
    floorShadow(0, h - 1, w),
    ...part(whole, colour(look, 0, "wood"), "outline", 0.14, 0.16),
    ...panels,
  ];
}
