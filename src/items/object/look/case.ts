import { line, rect, roundedRect } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";
import { floorShadow, stroke } from "../../common/clothFace.ts";
import { colour, type Look, part } from "./look.ts";

/** Higher than this a case has a cornice, and its end two panels. */
const HIGH_MM = 1300;

/**
 * The end or the back of a chest or a cupboard: neither drawers nor doors are seen from there. An end is framed and panelled, a back is
 * of upright boards (common practice, no source).
 */
export function drawCase(look: Look, from: "end" | "back"): Shape[] {
  const { width: w, height: h } = look;
  const wood = colour(look, 0, "wood");
  const high = h > HIGH_MM;
  const top = high ? h * 0.035 : Math.min(30, h * 0.05);
  const foot = Math.min(90, h * (high ? 0.05 : 0.11));
  const [x, y, bw, bh] = [12, top, w - 24, h - top - foot];
  const frame = Math.min(70, bw * 0.14);
  const boards = Math.max(2, Math.round(bw / 150));
  const panels = high ? [0.46, 0.54] : [1];
  let at = y + frame;
  const inside = bh - frame * (panels.length + 1);
  const faces =
    from === "back"
      ? Array.from({ length: boards - 1 }, (_, n) => {
          const joint = x + (bw * (n + 1)) / boards;
          return stroke(line(joint, y, joint, y + bh), "fold");
        })
      : panels.flatMap((share) => {
          const [px, py, pw, ph] = [x + frame, at, bw - 2 * frame, inside * share];
          at += ph + frame;
          return [
            ...part(rect(px, py, pw, ph), wood, "edge", 0.05, 0.1),
            stroke(rect(px + 12, py + 12, pw - 24, ph - 24), "fold"),
          ];
        });
  return [
    floorShadow(0, h - 1, w),
    ...part(rect(x, h - foot, bw, foot), wood, "outline", 0, 0.22),
    ...part(rect(x, y, bw, bh), wood, "outline", 0.1, 0.18),
    ...faces,
    ...part(roundedRect(0, 0, w, top, Math.min(8, top / 2)), wood, "outline", 0.2, 0.1),
  ];
}
