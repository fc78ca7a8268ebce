import { line, rect, roundedRect } from "../../../drawing/paths.ts";
import type { Drawing, Shape } from "../../../drawing/shape.ts";
import { stroke } from "../../common/clothFace.ts";
import { capital, type SeatFields, type SeatMade } from "../seatMade.ts";
import { seatParts } from "./outlines.ts";
import { chairShape } from "./shapeOfChair.ts";

/** The chair from above, its back at the upper edge. */
export function armchairPlan(fields: SeatFields, made: SeatMade): Drawing {
  const c = chairShape(made, fields.type);
  const back = Math.min(c.depth * 0.24, 190);
  const cover = { surface: "cover", x: c.width / 2, y: c.depth / 2 };
  const shapes: Shape[] = [
    {
      shape: "path",
      d: roundedRect(c.roll, back * 0.6, c.width - 2 * c.roll, c.depth - back * 0.6, 40),
      fill: cover,
      pen: "edge",
    },
    {
      shape: "path",
      d: roundedRect(0, back * 0.35, 2 * c.roll, c.depth - back * 0.35 - 12, 40),
      fill: cover,
      pen: "edge",
    },
    {
      shape: "path",
      d: roundedRect(c.width - 2 * c.roll, back * 0.35, 2 * c.roll, c.depth - back * 0.35 - 12, 40),
      fill: cover,
      pen: "edge",
    },
    {
      shape: "path",
      d: roundedRect(c.backInset * 0.4, 0, c.width - c.backInset * 0.8, back, 50),
      fill: cover,
      pen: "edge",
    },
    ...seatParts(c)
      .slice(1)
      .map(([x]) => stroke(line(x, back, x, c.depth - 6), "edge")),
    { shape: "path", d: rect(0, 0, c.width, c.depth), fill: null, pen: null },
  ];
  return {
    widthMm: c.width,
    heightMm: c.depth,
    shapes,
    dimensions: [],
    title: made.job.title,
    description: `${capital(made.job.thing)} from above.`,
  };
}
