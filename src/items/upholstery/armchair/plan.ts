import { mirrorPath } from "../../../drawing/mirrorPath.ts";
import { line, rect, roundedRect } from "../../../drawing/paths.ts";
import type { Drawing, Shape } from "../../../drawing/shape.ts";
import { capital } from "../../../units/capital.ts";
import { stroke } from "../../common/clothFace.ts";
import type { SeatFields, SeatMade } from "../seatMade.ts";
import { seatParts } from "./outlines.ts";
import { type ChairShape, chairShape } from "./shapeOfChair.ts";

/** A chair whose frame shows: its seat, thin arms of wood, and the back rail with or without its pad. */
function openPlan(c: ChairShape): Shape[] {
  const f = (n: number) => n.toFixed(1);
  const [w, d] = [c.width, c.depth];
  const rail = Math.min(70, d * 0.13);
  const post = Math.min(48, w * 0.08);
  const inset = c.arms ? post * 1.1 : w * 0.06;
  const cover = { surface: "cover", x: w / 2, y: d / 2 };
  const seat = `M${f(inset * 1.3)} ${f(rail * 0.6)}H${f(w - inset * 1.3)}L${f(w - inset * 0.5)} ${f(d - 26)}Q${f(w - inset * 0.5)} ${f(d)} ${f(w - inset * 0.5 - 26)} ${f(d)}H${f(inset * 0.5 + 26)}Q${f(inset * 0.5)} ${f(d)} ${f(inset * 0.5)} ${f(d - 26)}Z`;
  const arm = `M${f(post * 0.6)} ${f(rail * 0.7)}C${f(post * 0.2)} ${f(d * 0.35)} 0 ${f(d * 0.5)} 0 ${f(d * 0.68)}Q0 ${f(d * 0.76)} ${f(post * 0.5)} ${f(d * 0.76)}Q${f(post)} ${f(d * 0.76)} ${f(post)} ${f(d * 0.68)}C${f(post)} ${f(d * 0.5)} ${f(post * 1.1)} ${f(d * 0.35)} ${f(post * 1.4)} ${f(rail * 0.7)}Z`;
  const wood = (path: string): Shape => ({
    shape: "path",
    d: path,
    fill: { tone: "wood" },
    pen: "edge",
  });
  return [
    { shape: "path", d: seat, fill: cover, pen: "edge" },
    ...(c.padBack
      ? [
          {
            shape: "path",
            d: roundedRect(post, rail * 0.4, w - 2 * post, rail, rail / 2),
            fill: { ...cover, y: 0 },
            pen: "edge",
          } as const,
        ]
      : []),
    ...(c.arms ? [wood(arm), wood(mirrorPath(arm, w))] : []),
    wood(roundedRect(post * 0.4, 0, w - post * 0.8, rail * (c.padBack ? 0.6 : 1), rail * 0.3)),
  ];
}

/** The chair from above, its back at the upper edge. */
export function armchairPlan(fields: SeatFields, made: SeatMade): Drawing {
  const c = chairShape(made, fields.type);
  const back = Math.min(c.depth * 0.24, 190);
  const cover = { surface: "cover", x: c.width / 2, y: c.depth / 2 };
  const closed: Shape[] = [
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
    shapes: c.open ? openPlan(c) : closed,
    dimensions: [],
    title: made.job.title,
    description: `${capital(made.job.thing)} from above.`,
  };
}
