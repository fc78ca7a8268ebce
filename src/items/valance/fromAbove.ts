import { line, type Point, polyline } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import type { Length } from "../../units/length.ts";
import { stroke } from "../common/clothFace.ts";
import type { ValancePlan } from "./plan.ts";

/** The heading as seen from above, between the returns, with its pleats or folds. */
export function fromAbove(plan: ValancePlan, p: (length: Length) => string): Drawing {
  const { board, heading } = plan;
  const width = board.length.toMm();
  const deep = board.returnEach.toMm();
  const out = 34;
  const beyond = 60;
  const path: Point[] = deep > 0 ? [[0, 0]] : [];
  path.push(...headingLine(plan, width, deep, out));
  if (deep > 0) path.push([width, 0]);
  const shapes: Shape[] = [
    stroke(line(-beyond, 0, width + beyond, 0), "cut"),
    { shape: "path", d: polyline(path), fill: null, pen: "edge" },
    {
      shape: "words",
      x: 0,
      y: deep + out + 50,
      dyPaper: 2,
      text: board.hangsOn ? "the bed's head at the top" : "wall at the top",
      anchor: "start",
    },
  ];
  if (deep > 8)
    shapes.unshift({
      shape: "path",
      d: polyline(
        [
          [6, 0],
          [6, deep - 6],
          [width - 6, deep - 6],
          [width - 6, 0],
        ],
        true,
      ),
      fill: { tone: "white" },
      pen: "hidden",
    });
  return {
    widthMm: width + 2 * beyond,
    heightMm: deep + out + 140,
    shapes: [{ shape: "group", x: beyond, children: shapes }],
    dimensions:
      deep > 0
        ? [
            {
              axis: "vertical",
              from: 0,
              to: deep,
              side: "left",
              level: 1,
              text: `${p(board.returnEach)} return`,
            },
          ]
        : [],
    title: "Heading from above",
    description: `${heading.heading.replace("-", " ")}; ${board.hangsOn ? `it goes ${p(board.returnEach)} along each side` : `the board stands ${p(board.returnEach)} out from the wall`}.`,
  };
}

/** The front line: pleats laid as boxes, loops for pinch pleats, a close wave for tapes. */
function headingLine(plan: ValancePlan, width: number, y: number, out: number): Point[] {
  const { heading } = plan;
  if (heading.heading === "box-pleat") {
    const box = width / heading.boxes;
    const lap = Math.min(box / 2, heading.takeUp.toMm() / 4);
    const points: Point[] = [[0, y]];
    for (let at = 0; at < heading.boxes; at += 1) {
      const [from, to] = [at * box, (at + 1) * box];
      // Behind each edge the cloth folds back under the box.
      points.push([from + lap, y + 4], [from, y + 10], [to, y + 10], [to - lap, y + 4]);
    }
    points.push([width, y]);
    return points;
  }
  const waves =
    heading.heading === "pinch-pleat" ? heading.pleats : Math.max(8, Math.round(width / 40));
  const deep = heading.heading === "pinch-pleat" ? out : out * 0.4;
  const sharp = heading.heading === "pinch-pleat" ? 5 : 1;
  const steps = waves * 16;
  return Array.from({ length: steps + 1 }, (_, step): Point => {
    const wave = (1 - Math.cos((2 * Math.PI * waves * step) / steps)) / 2;
    return [(width * step) / steps, y + deep * wave ** sharp];
  });
}
