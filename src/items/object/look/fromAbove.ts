import { circle, ellipse, line, rect, roundedRect } from "../../../drawing/paths.ts";
import type { Fill, Shape } from "../../../drawing/shape.ts";
import { stroke } from "../../common/clothFace.ts";
import type { ObjectFacts } from "../../itemKind.ts";
import { drawBedPlan } from "./bed.ts";
import { colour, type Look } from "./look.ts";
import { drawRugPlan } from "./rug.ts";

const filled = (d: string, fill: Fill): Shape => ({ shape: "path", d, fill, pen: "edge" });

/** Higher than this a seat has a back and arms, and a chest a cornice. */
const WITH_BACK_MM = 620;
const WITH_CORNICE_MM = 1300;

function table(look: Look, isRound: boolean): Shape[] {
  const { width: w, depth: d } = look;
  const edge = 24;
  const fill = colour(look, 0, "wood");
  return isRound
    ? [
        filled(ellipse(w / 2, d / 2, w / 2, d / 2), fill),
        stroke(ellipse(w / 2, d / 2, w / 2 - edge, d / 2 - edge), "fold"),
      ]
    : [
        filled(rect(0, 0, w, d), fill),
        stroke(rect(edge, edge, w - 2 * edge, d - 2 * edge), "fold"),
      ];
}

/** A top that stands over its carcass at front and ends; a high one shows its cornice, with where its doors meet. */
function chest(look: Look): Shape[] {
  const { width: w, depth: d, height: h } = look;
  const over = Math.min(26, d * 0.08);
  const top = filled(rect(0, 0, w, d), colour(look, 0, "wood"));
  if (h < WITH_CORNICE_MM) return [top, stroke(`M${over} 0V${d - over}H${w - over}V0`, "fold")];
  return [
    top,
    stroke(`M${over} 0V${d - over}H${w - over}V0`, "fold"),
    stroke(`M${2.4 * over} 0V${d - 2.4 * over}H${w - 2.4 * over}V0`, "fold"),
    stroke(line(w / 2, d - over, w / 2, d), "fold"),
  ];
}

/** A settle with back, arms and seat; a low seat without them. */
function seat(look: Look): Shape[] {
  const { width: w, depth: d, height: h } = look;
  const main = colour(look, 0, "ceramic");
  if (h < WITH_BACK_MM)
    return [
      filled(roundedRect(0, 0, w, d, Math.min(40, d * 0.12)), main),
      stroke(roundedRect(16, 16, w - 32, d - 32, Math.min(30, d * 0.1)), "fold"),
    ];
  const arm = Math.min(130, w * 0.1);
  const back = Math.min(d * 0.24, 190);
  const seats = w > 1300 ? 2 : 1;
  const each = (w - 2 * arm) / seats;
  return [
    ...Array.from({ length: seats }, (_, at) =>
      filled(roundedRect(arm + at * each, back * 0.6, each, d - back * 0.6, 40), main),
    ),
    ...[0, w - arm].map((x) =>
      filled(roundedRect(x, back * 0.35, arm, d - back * 0.35 - 12, 40), main),
    ),
    filled(roundedRect(arm * 0.2, 0, w - arm * 0.4, back, 50), main),
  ];
}

/** A seat a little narrower behind, before its back rail. */
function chair(look: Look): Shape[] {
  const { width: w, depth: d } = look;
  const rail = Math.min(60, d * 0.14);
  const inset = w * 0.06;
  const f = (n: number) => n.toFixed(1);
  const d0 = `M${f(inset)} ${f(rail * 0.6)}H${f(w - inset)}L${f(w)} ${f(d - 24)}Q${f(w)} ${f(d)} ${f(w - 24)} ${f(d)}H24Q0 ${f(d)} 0 ${f(d - 24)}Z`;
  return [
    filled(d0, colour(look, 1, "wood")),
    filled(roundedRect(inset * 0.5, 0, w - inset, rail, rail / 2), colour(look, 0, "wood")),
  ];
}

function lamp(look: Look): Shape[] {
  const { width: w, depth: d } = look;
  const r = Math.min(w, d) / 2;
  return [
    filled(circle(w / 2, d / 2, r), colour(look, 0, "ceramic")),
    stroke(circle(w / 2, d / 2, r * 0.58), "fold"),
    stroke(circle(w / 2, d / 2, r * 0.16), "edge"),
  ];
}

function stove(look: Look): Shape[] {
  const { width: w, depth: d } = look;
  const edge = w * 0.045;
  return [
    filled(rect(0, 0, w, d), colour(look, 0, "wood")),
    stroke(`M${edge} 0V${d - edge}H${w - edge}V0`, "fold"),
    stroke(line(w * 0.3, d - edge * 0.5, w * 0.7, d - edge * 0.5), "edge"),
  ];
}

/** An object from above, its back at the upper edge. Only its outer sizes are measured; the rest follows usual proportions (common practice, no source). */
export function drawFromAbove(facts: ObjectFacts, look: Look): Shape[] {
  switch (facts.shape) {
    case "rug":
      return drawRugPlan(look);
    case "bed":
      return drawBedPlan(look);
    case "table":
      return table(look, facts.round === true);
    case "chest":
    case "box":
      return chest(look);
    case "seat":
      return seat(look);
    case "chair":
      return chair(look);
    case "lamp":
      return lamp(look);
    case "stove":
      return stove(look);
    default:
      return [filled(rect(0, 0, look.width, look.depth), colour(look, 0, "wood"))];
  }
}
