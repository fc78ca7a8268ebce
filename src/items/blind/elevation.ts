import { line, rect, roundedRect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { printSize } from "../../units/printLength.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import { raisedTo } from "./area.ts";
import type { BlindMade } from "./pieces.ts";
import type { BlindPlan } from "./plan.ts";
import type { BlindFields } from "./schema.ts";

/** Each gathered fold shows this much of itself under the one before (common practice, no source). */
const LIP = 26;

/** A blind raised about half-way, its folds gathered at the foot. The box's foot is the hem of the blind let down. */
export function blindElevation(
  fields: BlindFields,
  made: BlindMade,
  context: DrawingContext,
): Drawing | null {
  const { plan } = made;
  if (plan === null) return null;
  const width = plan.size.width.toMm();
  const drop = plan.size.drop.toMm();
  const size = printSize([plan.size.width, plan.size.drop], context.units);
  return {
    widthMm: width,
    heightMm: drop,
    shapes: raised(plan, width, drop),
    dimensions: [],
    title: fields.blind,
    description: `A ${plan.hobble ? "hobbled" : "Roman"} blind of ${plan.cloth.name}, ${size}, drawn half raised.`,
  };
}

function raised(plan: BlindPlan, width: number, drop: number): Shape[] {
  const foot = raisedTo(drop, plan.sections.stackDepth.toMm());
  const { rods } = plan.sections;
  const section = plan.sections.section.toMm();
  // As many folds gather as the raised height has taken up; at least one shows.
  const gathered =
    foot >= drop ? 0 : Math.max(1, Math.min(rods, Math.round((drop - foot) / (2 * section))));
  const top = { x: width / 2, y: motifTop(plan) };
  const flatFoot = Math.max(section * 0.4, foot - gathered * LIP - section * 0.45);
  const shapes: Shape[] = [];
  if (plan.hobble) {
    shapes.push(...hobbledFolds(plan, foot));
    for (const seam of seams(plan))
      shapes.push({ shape: "path", d: line(seam, 0, seam, foot), fill: null, pen: "fold" });
    return shapes;
  }
  const face = rect(0, 0, width, flatFoot);
  shapes.push(
    { shape: "path", d: face, fill: { surface: "face", ...top }, pen: null },
    { shape: "shading", d: face, light: 0.16, dark: 0.1, direction: "down" },
  );
  // From the back to the front: each fold hangs a lip lower and hides the head of the one behind it.
  const flap = foot - flatFoot - gathered * LIP;
  for (let fold = gathered; fold >= 0; fold -= 1) {
    const y = flatFoot + (gathered - fold) * 0;
    const high = flap + (gathered - (gathered - fold)) * LIP;
    const d = rect(0, y, width, high);
    const turned = { x: width / 2, y: motifTop(plan) - fold * 2 * section };
    shapes.push(
      { shape: "path", d, fill: { surface: "face", ...turned }, pen: "edge" },
      { shape: "shading", d, light: 0.12, dark: 0.24, direction: "down" },
    );
  }
  shapes.push(
    { shape: "path", d: line(0, flatFoot, width, flatFoot), fill: null, pen: "fold" },
    { shape: "path", d: rect(0, 0, width, foot), fill: null, pen: "outline" },
  );
  for (const seam of seams(plan))
    shapes.push({ shape: "path", d: line(seam, 0, seam, flatFoot), fill: null, pen: "fold" });
  return shapes;
}

/** A whole motif under the headrail, where the repeat leaves the choice. */
function motifTop(plan: BlindPlan): number {
  const up = plan.cloth.repeat?.up.toMm();
  return up ? Math.min(up / 2, plan.size.drop.toMm() / 2) : 0;
}

/** Where its joins stand, from the left finished edge, in millimetres. */
export function seams(plan: BlindPlan): number[] {
  const { strip, wholes } = plan.strips;
  if (strip === null) return [];
  const first = strip.toMm() - plan.join.toMm() - plan.sideTurn.toMm();
  const clear = plan.strips.middle.toMm() - 2 * plan.join.toMm();
  const width = plan.size.width.toMm();
  return Array.from({ length: wholes + 1 }, (_, at) => first + at * clear).filter(
    (x) => x > 0 && x < width,
  );
}

/**
 * Soft folds from the head to `foot`, one a section: each bellies over the next and hides half of its own cloth, so the pattern
 * steps on by the face of a section.
 */
export function hobbledFolds(plan: BlindPlan, foot: number): Shape[] {
  const { hobble } = plan;
  if (hobble === null) return [];
  const width = plan.size.width.toMm();
  const section = plan.sections.section.toMm();
  const head = plan.headrail.toMm();
  const folds = Math.max(1, Math.round((foot - head) / section));
  const high = (foot - head) / folds;
  const hidden = hobble.faceSection.toMm() - section;
  const soft = Math.min(high * 0.22, width * 0.04);
  const shapes: Shape[] = [];
  // From the foot up: each fold hangs over the head of the one below it, its lower corners soft.
  for (let fold = folds - 1; fold >= 0; fold -= 1) {
    const top = fold === 0 ? 0 : head + fold * high - soft;
    const low = head + (fold + 1) * high;
    // The first hangs from the headrail: square at its head, and no line between the two.
    const d =
      fold === 0 ? squareHeaded(width, low, soft) : roundedRect(0, top, width, low - top, soft);
    const y = motifTop(plan) - fold * hidden;
    shapes.push(
      { shape: "path", d, fill: { surface: "face", x: width / 2, y }, pen: "edge" },
      { shape: "shading", d, light: 0.28, dark: 0.34, direction: "down" },
    );
  }
  // Where the headrail ends the cloth begins to belly: a hairline, and the light of the first fold under it.
  if (head > 0) {
    const rail = rect(0, 0, width, head);
    shapes.push(
      { shape: "shading", d: rail, light: 0.05, dark: 0.14, direction: "down" },
      { shape: "path", d: line(width * 0.012, head, width * 0.988, head), fill: null, pen: "fold" },
    );
  }
  return shapes;
}

/** A fold with square upper and round lower corners. */
function squareHeaded(width: number, low: number, soft: number): string {
  const f = (n: number) => n.toFixed(2);
  const corner = (x: number, y: number) => `A${f(soft)} ${f(soft)} 0 0 1 ${f(x)} ${f(y)}`;
  return `M0 0H${f(width)}V${f(low - soft)}${corner(width - soft, low)}H${f(soft)}${corner(0, low - soft)}Z`;
}
