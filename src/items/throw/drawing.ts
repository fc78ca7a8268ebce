import { line, rect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { printSize } from "../../units/printLength.ts";
import { face, stroke } from "../common/clothFace.ts";
import { flatView } from "../common/flat/flatView.ts";
import type { DrawingContext, ItemDrawing } from "../itemDrawing.ts";
import type { ThrowMade } from "./pieces.ts";
import type { ThrowFields } from "./schema.ts";
import { throwSheet } from "./sheet.ts";

/** How a throw lies on what it lies on: a third of its width beside the other two, folded (common practice, no source). */
const FOLDED = 1 / 3;
const HANGS_MM = 380;

/** A throw laid over the front edge, folded in three, its end hanging down with its fringe. */
function elevation(fields: ThrowFields, made: ThrowMade, context: DrawingContext): Drawing {
  const { finished, fringe } = made.plan;
  const w = finished[0].toMm() * FOLDED;
  const h = Math.min(HANGS_MM, finished[1].toMm() * 0.3);
  const end = Math.min(h * 0.4, fringe.toMm());
  const f = (n: number) => n.toFixed(1);
  const foot = h - end;
  const d = `M6 0H${f(w - 6)}Q${f(w)} 0 ${f(w)} 8C${f(w + 5)} ${f(foot * 0.5)} ${f(w + 3)} ${f(foot * 0.8)} ${f(w + 8)} ${f(foot)}Q${f(w * 0.75)} ${f(foot - 9)} ${f(w * 0.5)} ${f(foot - 3)}T-8 ${f(foot)}C-3 ${f(foot * 0.8)} -5 ${f(foot * 0.5)} 0 8Q0 0 6 0Z`;
  const shapes: Shape[] = [
    ...face(d, { surface: "face", x: w / 2, y: foot / 2 }, { light: 0.16, dark: 0.2 }),
    // Two soft folds, each light at its left and dark at its right, and the edges of the three thicknesses at the right.
    ...[0.05, 0.36, 0.67].map(
      (from): Shape => ({
        shape: "shading",
        d: `M${f(w * from)} 12Q${f(w * (from + 0.02))} ${f(foot * 0.5)} ${f(w * (from - 0.02))} ${f(foot - 8)}H${f(w * (from + 0.3))}Q${f(w * (from + 0.28))} ${f(foot * 0.5)} ${f(w * (from + 0.3))} 12Z`,
        light: 0.08,
        dark: 0.16,
        direction: "across",
      }),
    ),
    ...[0.34, 0.66].map((at, n) =>
      stroke(
        `M${f(w * at)} ${f(24 + 30 * n)}Q${f(w * (at + 0.02 - 0.04 * n))} ${f(foot * 0.5)} ${f(w * (at - 0.03 + 0.06 * n))} ${f(foot - 20 - 24 * n)}`,
        "fold",
      ),
    ),
    ...[7, 14].map((inner) =>
      stroke(
        `M${f(w - inner)} 10C${f(w + 5 - inner)} ${f(foot * 0.5)} ${f(w + 3 - inner)} ${f(foot * 0.8)} ${f(w + 7 - inner)} ${f(foot - 4)}`,
        "fold",
      ),
    ),
    // The hem, where there is no fringe.
    ...(end > 0
      ? []
      : [
          stroke(
            `M-4 ${f(foot - 20)}Q${f(w * 0.25)} ${f(foot - 17)} ${f(w * 0.5)} ${f(foot - 23)}T${f(w + 4)} ${f(foot - 20)}`,
            "fold",
          ),
        ]),
  ];
  for (let x = -4; end > 0 && x < w + 4; x += 11)
    shapes.push(stroke(line(x, foot - 3, x + (x % 3) - 1, h), "fold"));
  return {
    widthMm: w,
    heightMm: h,
    shapes,
    dimensions: [],
    title: fields.throw,
    description: `Throw ${printSize(finished, context.units)}, folded.`,
  };
}

function plan(fields: ThrowFields, made: ThrowMade): Drawing | null {
  const { bed, finished } = made.plan;
  if (!bed) return null;
  const w = finished[0].toMm() * FOLDED;
  const l = Math.min(finished[1].toMm(), bed.width.toMm() * 0.9);
  return {
    widthMm: w,
    heightMm: l,
    shapes: face(
      rect(0, 0, w, l),
      { surface: "face", x: w / 2, y: l / 2 },
      { light: 0.06, dark: 0.1 },
    ),
    dimensions: [],
    title: fields.throw,
    description: `${fields.throw} from above.`,
  };
}

function workshop(fields: ThrowFields, made: ThrowMade, context: DrawingContext): Drawing[] {
  const { cover, finished, fringe } = made.plan;
  return [
    flatView(
      {
        cover,
        finished,
        round: false,
        under: null,
        parts: fringe.isZero()
          ? []
          : [
              { length: fringe, word: "fringe" },
              { length: finished[1].minus(fringe.times(2)), word: "throw" },
              { length: fringe, word: "fringe" },
            ],
        split: null,
        title: "Laid out",
        description: `${fields.throw}, ${printSize(finished, context.units)} finished.`,
      },
      context,
    ),
  ];
}

/** How a throw is drawn and described. */
export const throwDrawing: ItemDrawing<ThrowFields, ThrowMade> = {
  kind: "throw",
  elevation,
  plan,
  workshop,
  sheet: throwSheet,
};
