import { mirrorPath } from "../../../drawing/mirrorPath.ts";
import { line } from "../../../drawing/paths.ts";
import type { Drawing, Shape } from "../../../drawing/shape.ts";
import { capital } from "../../../units/capital.ts";
import { printSize } from "../../../units/printLength.ts";
import { face, floorShadow, leg, PADDED, stroke } from "../../common/clothFace.ts";
import type { DrawingContext } from "../../itemDrawing.ts";
import type { SeatFields, SeatMade } from "../seatMade.ts";
import { surfaceOf } from "./elevation.ts";
import { openBack } from "./openChair.ts";
import { armOutline, backOutline } from "./outlines.ts";
import { type ChairShape, chairShape } from "./shapeOfChair.ts";

/** The chair from behind: its outside back in that piece's cloth. */
export function armchairBack(fields: SeatFields, made: SeatMade, context: DrawingContext): Drawing {
  const c = chairShape(made, fields.type);
  const outside = surfaceOf(made, "outside-back", "inside-back");
  return {
    widthMm: c.width,
    heightMm: c.height,
    shapes: c.open ? openBack(c, outside) : closedBack(c, made, outside),
    dimensions: [],
    title: made.job.title,
    description: `${capital(made.job.thing)} from behind, ${printSize(made.size, context.units)} (width, depth, height), covered in ${context.cloth(fields.cloth)?.name ?? fields.cloth}.`,
  };
}

function closedBack(c: ChairShape, made: SeatMade, outside: string): Shape[] {
  const wide = Math.min(56, c.arm * 0.46);
  const arm = surfaceOf(made, "outside-arm", "inside-arm");
  const middle = (c.armTop + c.legTop) / 2;
  const foot = c.skirt ? c.height - 6 : c.legTop;
  const back = backOutline({ ...c, legTop: foot });
  const inset = c.backInset + 16;
  return [
    floorShadow(c.width * 0.02, c.height - 1, c.width * 0.96),
    ...(c.skirt
      ? []
      : [
          ...leg(c.roll - wide / 2 + 4, c.legTop - 2, c.height, wide, wide * 0.62),
          ...leg(c.width - c.roll - wide / 2 - 4, c.legTop - 2, c.height, wide, wide * 0.62),
        ]),
    ...[armOutline(c), mirrorPath(armOutline(c), c.width)].flatMap((d, at) =>
      face(d, { surface: arm, x: at === 0 ? c.roll : c.width - c.roll, y: middle }, PADDED),
    ),
    ...face(
      back,
      { surface: outside, x: c.width / 2, y: foot / 2 },
      {
        light: 0.16,
        dark: 0.2,
        across: { light: 0.05, dark: 0.1 },
      },
    ),
    stroke(line(inset, 46, inset, foot - 14), "fold"),
    stroke(line(c.width - inset, 46, c.width - inset, foot - 14), "fold"),
  ];
}
