import { circle, line, rect, roundedRect } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";
import { floorShadow, stroke } from "../../common/clothFace.ts";
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

/** A chair's seat is upholstered so high above half its height. */
const CHAIR_PAD = 26;

/** Where the seat of a drawn chair is, from the floor, in mm. */
export function chairSeatMm(height: number): number {
  return height * 0.5 + CHAIR_PAD;
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
  const pad = roundedRect(-6, seat - CHAIR_PAD, w + 12, 52, 20);
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

/** The same chair from behind: posts down to the floor before rails, slats and seat. */
export function drawChairBack(look: Look): Shape[] {
  const { width: w, height: h } = look;
  const seat = h * 0.5;
  const post = Math.min(Math.max(w * 0.075, 26), 44);
  const slats = [0.04, 0.3, 0.58].flatMap((share, at) => {
    const high = seat * (at === 0 ? 0.15 : 0.085);
    const y = seat * share;
    const d = `M${f(post * 0.8)} ${f(y + 8)}Q${f(w / 2)} ${f(y - (at === 0 ? 16 : 4))} ${f(w - post * 0.8)} ${f(y + 8)}V${f(y + high + 8)}Q${f(w / 2)} ${f(y + high - 2)} ${f(post * 0.8)} ${f(y + high + 8)}Z`;
    return part(d, colour(look, 0, "wood"), "edge");
  });
  const darkLeg = (x: number): Shape => ({
    shape: "path",
    d: rect(x, seat + 30, post * 0.7, h - seat - 42),
    fill: { tone: "wood-dark" },
    pen: "edge",
  });
  return [
    floorShadow(0, h - 1, w),
    darkLeg(-2),
    darkLeg(w + 2 - post * 0.7),
    ...part(roundedRect(-4, seat - 26, w + 8, 44, 18), colour(look, 1, "wood"), "edge", 0.1, 0.2),
    ...part(rect(6, seat + 18, w - 12, 50), colour(look, 0, "wood"), "edge", 0, 0.2),
    ...slats,
    ...leg(look, 4, 0, h, post),
    ...leg(look, w - post - 4, 0, h, post),
    stroke(
      line(post + 2, seat + (h - seat) * 0.55, w - post - 2, seat + (h - seat) * 0.55),
      "edge",
    ),
  ];
}

/** A dining chair from its left side, its front to the left: raked back, seat, two legs and a stretcher. */
export function drawChairSide(look: Look): Shape[] {
  const { width: d, height: h } = look;
  const seat = h * 0.5;
  const post = Math.min(Math.max(d * 0.085, 28), 44);
  const knee = d * 0.82;
  const back = `M${f(d - post * 0.7)} 0H${f(d)}L${f(knee + post)} ${f(seat)}V${f(seat + 60)}L${f(d * 0.98)} ${f(h)}H${f(d * 0.98 - post * 0.7)}L${f(knee)} ${f(seat + 60)}V${f(seat)}Z`;
  return [
    floorShadow(d * 0.02, h - 1, d * 0.96),
    ...part(
      rect(post * 0.8, seat + (h - seat) * 0.55, knee - post * 0.6, 20),
      colour(look, 0, "wood"),
      "edge",
    ),
    ...leg(look, d * 0.04, seat + 20, h, post),
    ...part(back, colour(look, 0, "wood"), "edge", 0.16, 0.2),
    ...part(
      rect(d * 0.05, seat + 18, knee - d * 0.03, 50),
      colour(look, 0, "wood"),
      "edge",
      0,
      0.2,
    ),
    ...part(
      roundedRect(-2, seat - 26, knee + 18, 50, 20),
      colour(look, 1, "wood"),
      "outline",
      0.2,
      0.2,
    ),
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
  if (!look.hasPhoto && h > 1300 && w < h) return press(look);
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

/** A tall cupboard: cornice, two panelled doors with knobs over two drawers, a plinth. */
function press(look: Look): Shape[] {
  const { width: w, height: h } = look;
  const wood = colour(look, 0, "wood");
  const [cornice, plinth] = [70, 80];
  const drawers = Math.min(560, h * 0.28);
  const top = h - plinth - drawers;
  const half = (w - 60) / 2;
  const door = (x: number): Shape[] => [
    ...part(rect(x, cornice + 26, half - 4, top - cornice - 40), wood, "edge", 0.1, 0.12),
    ...[0, 1].flatMap((at) => {
      const high = (top - cornice - 40 - 150) / 2;
      const y = cornice + 26 + 50 + at * (high + 50);
      return [
        stroke(rect(x + 50, y, half - 104, high), "dimension"),
        stroke(rect(x + 62, y + 12, half - 128, high - 24), "fold"),
      ];
    }),
  ];
  const knob = (x: number, y: number): Shape => ({
    shape: "path",
    d: circle(x, y, 13),
    fill: { tone: "metal" },
    pen: "edge",
  });
  const each = (drawers - 30) / 2;
  return [
    floorShadow(0, h - 1, w),
    ...part(rect(14, cornice, w - 28, h - cornice - plinth), wood, "outline", 0.1, 0.18),
    ...door(28),
    ...door(32 + half),
    knob(w / 2 - 24, (cornice + top) / 2 + 60),
    knob(w / 2 + 24, (cornice + top) / 2 + 60),
    ...[0, 1].flatMap((at) => [
      ...part(rect(28, top + at * each + 6, w - 56, each - 10), wood, "edge", 0.12, 0.12),
      knob(w * 0.27, top + at * each + each / 2),
      knob(w * 0.73, top + at * each + each / 2),
    ]),
    ...part(rect(4, h - plinth, w - 8, plinth), wood, "outline", 0.04, 0.2),
    ...part(`M0 0H${f(w)}L${f(w - 16)} ${f(cornice)}H16Z`, wood, "outline", 0.2, 0.12),
    stroke(line(6, 26, w - 6, 26), "fold"),
  ];
}
