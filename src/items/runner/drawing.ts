import { rect } from "../../drawing/paths.ts";
import type { Drawing } from "../../drawing/shape.ts";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { face } from "../common/clothFace.ts";
import { flatView } from "../common/flat/flatView.ts";
import type { DrawingContext, ItemDrawing } from "../itemDrawing.ts";
import type { RunnerMade } from "./pieces.ts";
import type { RunnerFields } from "./schema.ts";
import { runnerSheet } from "./sheet.ts";

/** From the front only its thickness on the top is seen, and its two ends edgewise where they hang at the sides. */
function elevation(
  fields: RunnerFields,
  made: RunnerMade,
  context: DrawingContext,
): Drawing | null {
  const of = made.plan;
  if (!of) return null;
  const [span, drop] = [of.span.toMm(), of.finished[0].minus(of.span).dividedBy(2).toMm()];
  const thick = of.cover.wadding ? 26 : 14;
  const edge = 22;
  const f = (n: number) => n.toFixed(1);
  const w = span + 2 * edge;
  const h = thick + drop;
  const d = `M0 ${f(h)}C2 ${f(h * 0.5)} 6 14 ${f(edge)} 2H${f(w - edge)}C${f(w - 6)} 14 ${f(w - 2)} ${f(h * 0.5)} ${f(w)} ${f(h)}H${f(w - edge)}V${f(thick + 6)}Q${f(w - edge)} ${f(thick)} ${f(w - edge - 8)} ${f(thick)}H${f(edge + 8)}Q${f(edge)} ${f(thick)} ${f(edge)} ${f(thick + 6)}V${f(h)}Z`;
  return {
    widthMm: w,
    heightMm: h,
    shapes: face(d, { surface: "face", x: w / 2, y: 0 }, { light: 0.1, dark: 0.2 }),
    dimensions: [],
    title: fields.runner,
    description: `Runner ${printSize(of.finished, context.units)}, hanging ${printLength(fields.drop, context.units)} at each end.`,
  };
}

function plan(fields: RunnerFields, made: RunnerMade): Drawing | null {
  const of = made.plan;
  if (!of) return null;
  const [w, d, l] = [of.span.toMm() + 28, of.finished[1].toMm(), of.reach.toMm()];
  // On a bed it lies towards the foot, on a table along the middle.
  const y = of.on === "bed" ? Math.max(0, l * 0.92 - d) : Math.max(0, (l - d) / 2);
  return {
    widthMm: w,
    heightMm: Math.max(l, d),
    shapes: face(
      rect(0, y, w, d),
      { surface: "face", x: w / 2, y: y + d / 2 },
      { light: 0.06, dark: 0.1 },
    ),
    dimensions: [],
    title: fields.runner,
    description: `${fields.runner} from above.`,
  };
}

function workshop(fields: RunnerFields, made: RunnerMade, context: DrawingContext): Drawing[] {
  const of = made.plan;
  if (!of) return [];
  return [
    flatView(
      {
        cover: of.cover,
        finished: of.finished,
        round: false,
        under: {
          word: `${of.on}, ${printLength(of.span, context.units)}`,
          left: fields.drop,
          top: Length.zero,
          width: of.span,
          height: of.finished[1],
        },
        parts: [],
        split: null,
        title: "Laid out",
        description: `${fields.runner}, ${printSize(of.finished, context.units)} finished.`,
      },
      context,
    ),
  ];
}

/** How a runner is drawn and described. */
export const runnerDrawing: ItemDrawing<RunnerFields, RunnerMade> = {
  kind: "runner",
  elevation,
  plan,
  workshop,
  sheet: runnerSheet,
};
