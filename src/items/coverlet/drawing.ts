import { rect, roundedRect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import { joinsOf } from "../common/flat/flatPanel.ts";
import { flatView } from "../common/flat/flatView.ts";
import { drapedFront } from "../common/skirt/drapedFront.ts";
import type { DrawingContext, ItemDrawing } from "../itemDrawing.ts";
import type { CoverletMade } from "./pieces.ts";
import type { CoverletFields } from "./schema.ts";
import { coverletSheet } from "./sheet.ts";

/** How thick a cover lies on its bed: one layer, or with wadding (common practice, no source). */
function crownMm(made: CoverletMade): number {
  return made.plan?.cover.wadding ? 34 : 20;
}

function elevation(
  fields: CoverletFields,
  made: CoverletMade,
  context: DrawingContext,
): Drawing | null {
  const { plan } = made;
  if (!plan) return null;
  const face = plan.cover.face;
  const half = plan.finished[0].dividedBy(2);
  const joins = face && !face.sideways ? joinsOf(face, plan.cover.turning) : [];
  return drapedFront({
    span: plan.bed.width.toMm(),
    drop: plan.footDrop.toMm(),
    surface: "face",
    middleAbove: plan.bed.length.dividedBy(2).toMm(),
    round: false,
    crown: crownMm(made),
    joins: joins.map((at) => at.minus(half).toMm()),
    title: fields.coverlet,
    description: `Bed cover ${printSize(plan.finished, context.units)}, hanging ${printLength(plan.footDrop, context.units)} at the foot.`,
  });
}

function plan(fields: CoverletFields, made: CoverletMade): Drawing | null {
  const of = made.plan;
  if (!of) return null;
  const [w, l] = [of.bed.width.toMm(), of.bed.length.toMm()];
  const pillow = Math.min(480, l * 0.24);
  const fill = { surface: "face", x: w / 2 + 14, y: l / 2 };
  const shapes: Shape[] = [
    { shape: "path", d: roundedRect(0, 0, w + 28, l + 14, 30), fill, pen: "outline" },
    ...(of.tuck.isZero()
      ? []
      : [
          stroke(`M10 ${pillow}Q${w / 2} ${pillow + 16} ${w + 18} ${pillow}`, "edge"),
          stroke(rect(14, 0, w, l), "fold"),
        ]),
  ];
  return {
    widthMm: w + 28,
    heightMm: l + 14,
    shapes,
    dimensions: [],
    title: fields.coverlet,
    description: `${fields.coverlet} from above.`,
  };
}

function workshop(fields: CoverletFields, made: CoverletMade, context: DrawingContext): Drawing[] {
  const of = made.plan;
  if (!of) return [];
  return [
    flatView(
      {
        cover: of.cover,
        finished: of.finished,
        round: false,
        under: {
          word: "top of the bed",
          left: of.drop,
          top: of.tuck,
          width: of.bed.width,
          height: of.bed.length,
        },
        parts: [
          ...(of.tuck.isMoreThan(Length.zero) ? [{ length: of.tuck, word: "pillows" }] : []),
          { length: of.bed.length, word: "bed" },
          { length: of.footDrop, word: "foot" },
        ],
        split: of.corners === "split" ? [of.drop, of.footDrop] : null,
        title: "Laid out, head at the top",
        description: `${fields.coverlet}, ${printSize(of.finished, context.units)} finished.`,
      },
      context,
    ),
  ];
}

/** How a bed cover is drawn and described. */
export const coverletDrawing: ItemDrawing<CoverletFields, CoverletMade> = {
  kind: "coverlet",
  elevation,
  plan,
  workshop,
  sheet: coverletSheet,
};
