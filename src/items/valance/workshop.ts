import { levelPast } from "../../drawing/dimensions.ts";
import { line, type Point, polyline, rect } from "../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { stroke } from "../clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import { depthAt } from "../lowerEdge.ts";
import { frontOutline } from "../lowerOutline.ts";
import { valanceFront, valanceSeams } from "./elevation.ts";
import type { ValanceMade } from "./pieces.ts";
import type { ValancePlan } from "./plan.ts";
import type { ValanceFields } from "./schema.ts";

/** The front with its dimensions, and the heading from above. */
export function valanceWorkshop(
  fields: ValanceFields,
  made: ValanceMade,
  context: DrawingContext,
): Drawing[] {
  const { plan } = made;
  if (plan === null) return [];
  const p = (length: Length) => printLength(length, context.units);
  const template = plan.flatEdge.arcs > 0 ? [flatTemplate(plan, p)] : [];
  return [front(fields, plan, p), ...template, fromAbove(plan, p)];
}

function front(fields: ValanceFields, plan: ValancePlan, p: (length: Length) => string): Drawing {
  const { board, heading } = plan;
  const width = board.length.toMm();
  const height = plan.edge.deepest.toMm();
  const shaped = plan.edge.arcs > 0;
  const hem = plan.hem.dividedBy(2);
  const shapes: Shape[] = [...valanceFront(plan)];
  if (heading.heading !== "box-pleat")
    shapes.push(stroke(line(0, heading.depth.toMm(), width, heading.depth.toMm()), "edge"));
  if (!shaped)
    shapes.push(stroke(line(0, height - hem.toMm(), width, height - hem.toMm()), "hidden"));
  for (const seam of valanceSeams(plan))
    shapes.push(stroke(line(seam, 0, seam, depthAt(plan.edge, seam)), "seam"));
  shapes.push(stroke(line(width / 2, -20, width / 2, height + 20), "centre"));
  if (plan.lowestMotif && plan.cloth.repeat) {
    const y = height - plan.lowestMotif.toMm();
    shapes.push(stroke(line(-20, y, width + 20, y), "level"));
  }
  const dimensions: Dimension[] = [
    {
      axis: "horizontal",
      from: 0,
      to: width,
      side: "bottom",
      level: 1,
      text: `${p(board.length)} front`,
    },
    {
      axis: "vertical",
      from: 0,
      to: height,
      side: "left",
      level: 1,
      text: `${p(plan.edge.deepest)} ${shaped ? "deepest" : "deep"}`,
      brief: p(plan.edge.deepest),
    },
    shaped
      ? {
          axis: "vertical",
          from: 0,
          to: plan.edge.shortest.toMm(),
          side: "right",
          level: levelPast([p(heading.depth)]),
          text: `${p(plan.edge.shortest)} shortest`,
          brief: p(plan.edge.shortest),
        }
      : {
          axis: "vertical",
          from: height - hem.toMm(),
          to: height,
          side: "right",
          level: 1,
          text: p(hem),
        },
  ];
  if (heading.heading !== "box-pleat")
    dimensions.push({
      axis: "vertical",
      from: 0,
      to: heading.depth.toMm(),
      side: "right",
      level: 1,
      text: p(heading.depth),
    });
  if (heading.heading === "box-pleat") {
    const box = width / heading.boxes;
    dimensions.push({
      axis: "horizontal",
      from: 0,
      to: box,
      side: "top",
      level: 1,
      text: p(heading.box),
    });
  }
  if (plan.lowestMotif && plan.cloth.repeat) {
    dimensions.push({
      axis: "vertical",
      from: height - plan.lowestMotif.toMm(),
      to: height,
      side: "right",
      level: 3,
      text: p(plan.lowestMotif),
    });
  }
  return {
    widthMm: width,
    heightMm: height,
    shapes,
    dimensions,
    title: `${fields.valance}, front view`,
    description: `Valance: ${dimensions.map((d) => d.text).join("; ")}.`,
  };
}

/** So much of a scalloped front is shown flat, so that a scallop can be read. */
const MOST_TEMPLATE_MM = 2600;

/** The lower edge on the flat cloth of the front, as its template is drawn: turnings outside it. */
function flatTemplate(plan: ValancePlan, p: (length: Length) => string): Drawing {
  const { flatEdge, flatFront, hem, headingTurn } = plan;
  const chord = flatEdge.chord.toMm();
  const shown = Math.min(flatEdge.arcs, Math.max(1, Math.floor(MOST_TEMPLATE_MM / chord)));
  const width = shown * chord;
  const [top, seam] = [headingTurn.toMm(), hem.toMm()];
  const height = flatEdge.deepest.toMm() + top + seam;
  const radius = p(Length.mm((flatEdge.radiusMm ?? 0).toFixed(3)));
  const shapes: Shape[] = [
    stroke(rect(0, 0, width, height), "hidden"),
    {
      shape: "group",
      y: top,
      children: [
        {
          shape: "path",
          d: frontOutline({ ...flatEdge, arcs: shown }, width),
          fill: { tone: "white" },
          pen: "outline",
        },
      ],
    },
    {
      shape: "note",
      x: chord / 2,
      y: top + depthAt(flatEdge, chord / 2),
      dxPaper: 6,
      dyPaper: -7,
      text: `radius ${radius}`,
      end: "arrow",
    },
    {
      shape: "sign",
      sign: "arrow",
      x: width * 0.9,
      y: top + flatEdge.shortest.toMm() * 0.6,
      turnDeg: -90,
    },
  ];
  return {
    widthMm: width,
    heightMm: height,
    shapes,
    dimensions: [
      {
        axis: "horizontal",
        from: 0,
        to: width,
        side: "bottom",
        level: shown > 1 ? 2 : 1,
        text: `${p(flatFront)} front, flat${shown < flatEdge.arcs ? `: ${flatEdge.arcs} scallops, ${shown} shown` : ""}`,
      },
      ...(shown > 1
        ? [
            {
              axis: "horizontal",
              from: 0,
              to: chord,
              side: "bottom",
              level: 1,
              text: p(flatEdge.chord),
            } as const,
          ]
        : []),
      {
        axis: "vertical",
        from: 0,
        to: height,
        side: "left",
        level: 2,
        text: `${p(plan.cutHeight)} cut`,
      },
      {
        axis: "vertical",
        from: top,
        to: top + flatEdge.shortest.toMm(),
        side: "left",
        level: 1,
        text: p(flatEdge.shortest),
      },
      {
        axis: "vertical",
        from: top + flatEdge.shortest.toMm(),
        to: top + flatEdge.deepest.toMm(),
        side: "right",
        level: 1,
        text: p(flatEdge.deepest.minus(flatEdge.shortest)),
      },
    ],
    title: "Front flat, as it is cut",
    description: `The front flat, ${p(flatFront)} wide: ${flatEdge.arcs} ${flatEdge.arcs === 1 ? "arc" : "arcs"} of radius ${radius} along its lower edge, ${p(hem)} seam outside.`,
    below: true,
  };
}

function fromAbove(plan: ValancePlan, p: (length: Length) => string): Drawing {
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
      text: "wall at the top",
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
    description: `${heading.heading.replace("-", " ")}; the board stands ${p(board.returnEach)} out from the wall.`,
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
