import { rect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { Length } from "../../units/length.ts";
import { depthAt } from "../common/board/lowerEdge.ts";
import { frontOutline } from "../common/board/lowerOutline.ts";
import { stroke } from "../common/clothFace.ts";
import type { ValancePlan } from "./plan.ts";

/** So much of a scalloped front is shown flat, so that a scallop can be read. */
const MOST_TEMPLATE_MM = 2600;

/** The lower edge on the flat cloth of the front, as its template is drawn: turnings outside it. */
export function flatTemplate(plan: ValancePlan, p: (length: Length) => string): Drawing {
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
      x: width * 0.06,
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
