import { arc, line, rect } from "../../../drawing/paths.ts";
import type { Drawing, Shape } from "../../../drawing/shape.ts";
import { capital } from "../../../units/capital.ts";
import { printSize } from "../../../units/printLength.ts";
import { FLAT, face, floorShadow, leg, stroke } from "../../common/clothFace.ts";
import type { DrawingContext } from "../../itemDrawing.ts";
import type { SeatFields, SeatMade } from "../seatMade.ts";
import { surfaceOf } from "./elevation.ts";
import { openSide } from "./openChair.ts";
import { sideArm, sideBack, sideWing } from "./outlines.ts";
import { type ChairShape, chairShape } from "./shapeOfChair.ts";

/** The chair from its left side, its front to the left: the outside of the arm before the raked back, in the cloths of those pieces. */
export function armchairSide(fields: SeatFields, made: SeatMade, context: DrawingContext): Drawing {
  const c = chairShape(made, fields.type);
  return {
    widthMm: c.depth,
    heightMm: c.height,
    shapes: [
      floorShadow(c.depth * 0.03, c.height - 1, c.depth * 0.94),
      ...(c.open
        ? openSide(c, {
            back: surfaceOf(made, "inside-back", "outside-back"),
            seat: surfaceOf(made, "boxing", "seat-front", "front-border", "cushion-top", "seat"),
          })
        : closedSide(c, made)),
    ],
    dimensions: [],
    title: made.job.title,
    description: `${capital(made.job.thing)} from its left side, ${printSize(made.size, context.units)} (width, depth, height), covered in ${context.cloth(fields.cloth)?.name ?? fields.cloth}.`,
  };
}

function closedSide(c: ChairShape, made: SeatMade): Shape[] {
  const wide = Math.min(56, c.arm * 0.46);
  const on = (surface: string, x: number, y: number) => ({ surface, x, y });
  const back = surfaceOf(made, "outside-back", "inside-back");
  const arm = surfaceOf(made, "outside-arm", "inside-arm");
  const roll = Math.min(c.roll, 60);
  const middle = (c.armTop + c.legTop) / 2;
  const seat = surfaceOf(made, "boxing", "cushion-top", "seat");
  return [
    ...(c.skirt
      ? []
      : [
          ...leg(26, c.legTop - 2, c.height, wide, wide * 0.62),
          ...leg(c.depth - wide - 46, c.legTop - 2, c.height, wide, wide * 0.62),
        ]),
    ...face(sideBack(c), on(back, c.depth * 0.86, c.seatTop * 0.5), {
      light: 0.2,
      dark: 0.2,
      across: { light: 0.08, dark: 0.16 },
    }),
    // The seat's front edge swells a little before the arm.
    ...face(
      `M30 ${c.seatTop + 8}C4 ${c.seatTop + 8} -4 ${c.seatFoot - 10} 26 ${c.seatFoot}L60 ${c.seatFoot}V${c.seatTop + 8}Z`,
      on(seat, 20, (c.seatTop + c.seatFoot) / 2),
      FLAT,
      "edge",
    ),
    ...face(sideArm(c), on(arm, c.depth * 0.42, middle), {
      light: 0.2,
      dark: 0.24,
      across: { light: 0.1, dark: 0.1 },
    }),
    stroke(
      line(
        roll * 2.2,
        c.armTop + roll * 1.7,
        c.depth - Math.min(c.depth * 0.16, 130) - 6,
        c.armTop + roll * 1.5,
      ),
      "fold",
    ),
    stroke(arc(roll * 1.05, c.armTop + roll, roll * 0.55, -250, 20), "dimension"),
    ...(c.wing
      ? face(
          sideWing(c),
          on(surfaceOf(made, "wing-outside", "wing-inside"), c.depth * 0.74, c.armTop * 0.5),
          { light: 0.18, dark: 0.2 },
        )
      : []),
    ...(c.skirt
      ? face(
          rect(20, c.legTop, c.depth - 60, c.height - c.legTop - 6),
          on(surfaceOf(made, "skirt"), c.depth / 2, (c.legTop + c.height) / 2),
          { light: 0.14, dark: 0.2 },
        )
      : []),
  ];
}
