import { rect, roundedRect } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";
import { floorShadow, leg, stroke } from "../../common/clothFace.ts";
import { colour, type Look, part } from "./look.ts";

/** A stool on legs; a long low one is a built seat with a panelled front; a high one a settle with back and arms. */
export function drawSeat(look: Look): Shape[] {
  const { width: w, height: h } = look;
  if (h > 620) return settle(look);
  if (w > h * 2.6) return builtSeat(look);
  const pad = Math.min(230, h * 0.46);
  const wide = Math.min(46, w * 0.08);
  const cushion = roundedRect(0, 0, w, pad, Math.min(40, pad * 0.26));
  return [
    floorShadow(w * 0.02, h - 1, w * 0.96),
    ...leg(w * 0.06, pad - 3, h, wide, wide * 0.6),
    ...leg(w * 0.94 - wide, pad - 3, h, wide, wide * 0.6),
    ...part(cushion, colour(look, 0, "ceramic"), "outline", 0.24, 0.24),
    stroke(
      `M14 ${(pad * 0.24).toFixed(1)}Q${(w / 2).toFixed(1)} ${(pad * 0.17).toFixed(1)} ${(w - 14).toFixed(1)} ${(pad * 0.24).toFixed(1)}`,
      "fold",
    ),
  ];
}

function builtSeat(look: Look): Shape[] {
  const { width: w, height: h } = look;
  const pad = Math.min(90, h * 0.2);
  const board = 24;
  const columns = Math.max(2, Math.round(w / 560));
  const edge = 46;
  const wide = (w - edge * (columns + 1)) / columns;
  const top = pad + board;
  const panels = Array.from({ length: columns }, (_, at) => edge + at * (wide + edge)).flatMap(
    (x) => [
      ...part(
        rect(x, top + edge * 0.8, wide, h - top - edge * 2.2),
        colour(look, 1, "white"),
        "edge",
        0.02,
        0.08,
      ),
      stroke(rect(x + 10, top + edge * 0.8 + 10, wide - 20, h - top - edge * 2.2 - 20), "fold"),
    ],
  );
  return [
    ...part(rect(0, top, w, h - top), colour(look, 1, "white"), "outline", 0.05, 0.1),
    ...panels,
    ...part(rect(-6, pad, w + 12, board), colour(look, 1, "white"), "edge"),
    ...part(
      roundedRect(4, 0, w - 8, pad + 2, 26),
      colour(look, 0, "ceramic"),
      "outline",
      0.24,
      0.22,
    ),
  ];
}

function settle(look: Look): Shape[] {
  const { width: w, height: h } = look;
  const arm = Math.min(130, w * 0.1);
  const seatTop = h * 0.5;
  const rail = h * 0.7;
  const foot = h * 0.9;
  const main = colour(look, 0, "ceramic");
  const seats = w > 1300 ? 2 : 1;
  const wide = (w - 2 * arm) / seats;
  const pads = (y: number, high: number, r: number) =>
    Array.from({ length: seats }, (_, at) =>
      part(roundedRect(arm + at * wide, y, wide, high, r), main, "outline", 0.22, 0.2),
    ).flat();
  return [
    floorShadow(w * 0.01, h - 1, w * 0.98),
    ...leg(arm * 0.4, foot - 3, h, 44, 28),
    ...leg(w - arm * 0.4 - 44, foot - 3, h, 44, 28),
    ...part(roundedRect(arm * 0.4, 0, w - arm * 0.8, foot, 70), main, "outline", 0.2, 0.2),
    ...pads(h * 0.06, seatTop - h * 0.06 + 20, 60),
    ...part(rect(arm, rail - 10, w - 2 * arm, foot - rail + 10), main, "outline", 0, 0.16),
    ...pads(seatTop, rail - seatTop, 45),
    ...part(roundedRect(0, h * 0.3, arm, foot - h * 0.3, arm * 0.5), main, "outline", 0.2, 0.22),
    ...part(
      roundedRect(w - arm, h * 0.3, arm, foot - h * 0.3, arm * 0.5),
      main,
      "outline",
      0.2,
      0.22,
    ),
  ];
}
