import { rect, roundedRect } from "../../../drawing/paths.ts";
import type { Shape } from "../../../drawing/shape.ts";
import { floorShadow, stroke } from "../../common/clothFace.ts";
import { colour, type Look, part } from "./look.ts";

/** The made-up top, as a share of the height where the card gives no mattress (common practice, no source). */
const TOP_SHARE = 0.55;

/** A bed from its foot: headboard behind, pillows, mattress and rail before it. `topMm` is the made-up top's height, if known. */
export function drawBed(look: Look): Shape[] {
  const { width: w, height: h } = look;
  const top = Math.min(h, look.topMm ?? h * TOP_SHARE);
  const rail = Math.min(180, top * 0.3);
  const mattress = Math.min(260, top * 0.42);
  const y = h - top;
  const pillow = Math.min(150, Math.max(0, y * 0.7));
  const each = (w - 60) / 2;
  const legs = h - (y + mattress + rail);
  return [
    floorShadow(w * 0.01, h - 1, w * 0.98),
    ...part(roundedRect(0, 0, w, h - legs, 24), colour(look, 0, "wood"), "outline", 0.12, 0.14),
    stroke(rect(26, 26, w - 52, Math.max(10, y - 26)), "fold"),
    ...[20, 40 + each].flatMap((x) =>
      pillow > 20
        ? part(
            roundedRect(x, y - pillow, each, pillow + 20, 50),
            { tone: "white" },
            "edge",
            0.1,
            0.1,
          )
        : [],
    ),
    ...part(roundedRect(8, y, w - 16, mattress, 34), { tone: "white" }, "outline", 0.1, 0.14),
    ...part(rect(0, y + mattress, w, rail), colour(look, 0, "wood"), "outline", 0.14, 0.18),
    ...[10, w - 80].flatMap((x) =>
      part(rect(x, y + mattress + rail, 70, legs), colour(look, 0, "wood"), "edge", 0, 0.2),
    ),
  ];
}

/** From above, its head at the upper edge: frame, mattress and two pillows. */
export function drawBedPlan(look: Look): Shape[] {
  const { width: w, depth: d } = look;
  const head = Math.min(70, d * 0.04);
  const each = (w - 90) / 2;
  const pillow = Math.min(460, d * 0.24);
  return [
    { shape: "path", d: rect(0, 0, w, d), fill: colour(look, 0, "wood"), pen: "edge" },
    {
      shape: "path",
      d: roundedRect(18, head, w - 36, d - head - 18, 40),
      fill: { tone: "white" },
      pen: "edge",
    },
    ...[30, 60 + each].map(
      (x): Shape => ({
        shape: "path",
        d: roundedRect(x, head + 25, each, pillow, 60),
        fill: { tone: "white" },
        pen: "edge",
      }),
    ),
  ];
}
