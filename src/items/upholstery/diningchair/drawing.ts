import { rect, roundedRect } from "../../../drawing/paths.ts";
import type { Drawing } from "../../../drawing/shape.ts";
import { printSize } from "../../../units/printLength.ts";
import type { DrawingContext, ItemDrawing } from "../../itemDrawing.ts";
import { armchairBack } from "../armchair/back.ts";
import { frontShapes } from "../armchair/elevation.ts";
import { chairShape } from "../armchair/shapeOfChair.ts";
import { armchairSide } from "../armchair/side.ts";
import { armchairWorkshop } from "../armchair/workshop.ts";
import type { DiningChairMade } from "./pieces.ts";
import type { DiningChairFields } from "./schema.ts";
import { diningChairSheet } from "./sheet.ts";

/** A dining chair always shows its frame, measured or not. */
function elevation(_: DiningChairFields, made: DiningChairMade, context: DrawingContext): Drawing {
  const c = chairShape(made, undefined);
  return {
    widthMm: c.width,
    heightMm: c.height,
    shapes: frontShapes(c, made),
    dimensions: [],
    title: made.job.title,
    description: `Dining chair from the front, ${printSize(made.size, context.units)} (width, depth, height), covered in ${context.cloth(made.job.cloth)?.name ?? made.job.cloth}.`,
  };
}

/** From above, its back at the upper edge: a seat a little narrower behind, before the back rail. */
function plan(_: DiningChairFields, made: DiningChairMade): Drawing {
  const c = chairShape(made, undefined);
  const back = Math.min(70, c.depth * 0.14);
  const inset = c.width * 0.07;
  const f = (n: number) => n.toFixed(1);
  const seat = `M${f(inset)} ${f(back * 0.6)}H${f(c.width - inset)}L${f(c.width)} ${f(c.depth - 20)}Q${f(c.width)} ${f(c.depth)} ${f(c.width - 20)} ${f(c.depth)}H20Q0 ${f(c.depth)} 0 ${f(c.depth - 20)}Z`;
  return {
    widthMm: c.width,
    heightMm: c.depth,
    shapes: [
      {
        shape: "path",
        d: seat,
        fill: { surface: "cover", x: c.width / 2, y: c.depth / 2 },
        pen: "edge",
      },
      {
        shape: "path",
        d: roundedRect(inset * 0.6, 0, c.width - inset * 1.2, back, back / 2),
        fill: made.padBack ? { surface: "cover", x: c.width / 2, y: 0 } : { tone: "wood" },
        pen: "edge",
      },
      { shape: "path", d: rect(0, 0, c.width, c.depth), fill: null, pen: null },
    ],
    dimensions: [],
    title: made.job.title,
    description: "Dining chair from above.",
  };
}

export const diningChairDrawing: ItemDrawing<DiningChairFields, DiningChairMade> = {
  kind: "dining-chair",
  elevation,
  side: armchairSide,
  back: armchairBack,
  plan,
  workshop: armchairWorkshop,
  sheet: diningChairSheet,
};
