import { circle, line, polyline, rect, roundedRect } from "../../../drawing/paths.ts";
import type { Drawing, Shape } from "../../../drawing/shape.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import { face, PADDED, stroke } from "../../common/clothFace.ts";
import type { DrawingContext, ItemDrawing } from "../../itemDrawing.ts";
import { showsMotif } from "../coverPiece.ts";
import { flatPieces } from "../flatPieces.ts";
import { buttonPlaces } from "./buttonPlaces.ts";
import { headboardFitting } from "./fitting.ts";
import { frame } from "./frame.ts";
import type { HeadboardMade } from "./pieces.ts";
import type { HeadboardFields } from "./schema.ts";
import { headboardSheet } from "./sheet.ts";

const WELT_MM = 9;
const f = (n: number) => n.toFixed(1);

/** A board inset by so much at head and sides, its head straight or arched; its foot at `height`. */
function outline(width: number, height: number, rise: number, inset: number): string {
  const [l, r, top] = [inset, width - inset, inset];
  const c = Math.max(4, 26 - inset * 0.2);
  if (rise <= 0)
    return `M${f(l)} ${f(height)}V${f(top + c)}Q${f(l)} ${f(top)} ${f(l + c)} ${f(top)}H${f(r - c)}Q${f(r)} ${f(top)} ${f(r)} ${f(top + c)}V${f(height)}Z`;
  const shoulder = top + rise;
  // A quadratic's middle stands half way to its handle.
  return `M${f(l)} ${f(height)}V${f(shoulder)}Q${f(width / 2)} ${f(top - rise)} ${f(r)} ${f(shoulder)}V${f(height)}Z`;
}

function elevation(fields: HeadboardFields, made: HeadboardMade, context: DrawingContext): Drawing {
  const s = frame(made);
  const mid = { x: s.width / 2, y: s.height / 2 };
  const borderSurface = fields["border-cloth"] ? "border-top" : "cover";
  const inner = outline(s.width, s.height, s.rise, s.inset || WELT_MM);
  const places = buttonPlaces(made.job.buttons, s);
  const deep = fields.buttoning === "deep";
  return {
    widthMm: s.width,
    heightMm: s.height,
    shapes: [
      ...(made.border || made.welt
        ? [
            ...face(
              outline(s.width, s.height, s.rise, 0),
              made.border
                ? { surface: borderSurface, ...mid }
                : { surface: "welt", x: 0, y: 0, turnDeg: 45 },
              { light: 0.14, dark: 0.2 },
            ),
            ...face(
              inner,
              { surface: "cover", ...mid },
              { ...PADDED, across: { light: 0.05, dark: 0.08 } },
              "edge",
            ),
          ]
        : face(
            outline(s.width, s.height, s.rise, 0),
            { surface: "cover", ...mid },
            {
              ...PADDED,
              across: { light: 0.05, dark: 0.08 },
            },
          )),
      ...(made.welt && made.border
        ? [
            {
              shape: "path",
              d: inner + outline(s.width, s.height, s.rise, s.inset + WELT_MM),
              fill: null,
              pen: "fold",
            } as const,
          ]
        : []),
      ...(deep ? places.pleats.map((points) => stroke(polyline(points), "fold")) : []),
      ...places.buttons.map(
        ([x, y]): Shape => ({
          shape: "path",
          d: circle(x, y, 10),
          fill: { surface: "cover", x: 0, y: 0 },
          pen: "edge",
        }),
      ),
    ],
    dimensions: [],
    title: fields.headboard,
    description: `Headboard, ${printSize(made.size, context.units)} (width, depth, height), covered in ${context.cloth(fields.cloth)?.name ?? fields.cloth}.`,
  };
}

function plan(fields: HeadboardFields, made: HeadboardMade): Drawing {
  const s = frame(made);
  return {
    widthMm: s.width,
    heightMm: s.depth,
    shapes: [
      {
        shape: "path",
        d: roundedRect(0, 0, s.width, s.depth, Math.min(16, s.depth / 3)),
        fill: { surface: "cover", x: s.width / 2, y: s.depth / 2 },
        pen: "edge",
      },
    ],
    dimensions: [],
    title: fields.headboard,
    description: "Headboard from above.",
  };
}

/** The face with its joins, border, buttons and motif; its section; then every piece flat. */
function workshop(
  fields: HeadboardFields,
  made: HeadboardMade,
  context: DrawingContext,
): Drawing[] {
  const s = frame(made);
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const main = made.pieces.find((x) => x.piece === "face" || x.piece === "panel");
  const mid = s.width / 2;
  const middle = main?.piece === "panel" ? (s.inset + s.height) / 2 : s.height / 2;
  const paper = { tone: "paper" } as const;
  const places = buttonPlaces(made.job.buttons, s);
  const seams: Shape[] = [];
  if (main?.parts) {
    // Joins as they will be seen: each part's clear width from the middle.
    const wholes = main.parts.filter((x) => x.selvedge === null);
    const total = main.parts.reduce((n, x) => n + x.width.toMm(), 0);
    const turning = (total - main.cut[0].toMm()) / 2 / (main.parts.length - 1);
    let at = mid - main.cut[0].toMm() / 2;
    for (const [n, part] of main.parts.slice(0, -1).entries()) {
      at += part.width.toMm() - turning * (n === 0 ? 1 : 2);
      const x = mid + (at - mid) / made.takeUp;
      if (x > 0 && x < s.width)
        seams.push(stroke(line(x, s.rise * 0.6 + s.inset, x, s.height), "seam"));
    }
    if (wholes.length === 0) seams.length = 0;
  }
  const letters: Shape[] = made.pieces.flatMap((x): Shape[] => {
    const spot =
      x === main
        ? { x: mid, y: middle }
        : x.piece === "border-top"
          ? // Half way between the two arches, each of which is there about a fifth of its rise below its head.
            { x: s.width * 0.3, y: s.rise * 0.185 + s.inset / 2 }
          : { x: s.width - s.inset / 2, y: s.height * 0.7 };
    return [
      {
        shape: "words",
        ...spot,
        text: x.letter,
        anchor: "middle",
        weight: "bold",
        dxPaper: x === main ? 5 : 0,
        dyPaper: x === main && made.job.buttons > 0 ? 5 : 1.2,
      },
    ];
  });
  const column = main && (showsMotif(main) || main.inColumn);
  return [
    {
      widthMm: s.width,
      heightMm: s.height,
      shapes: [
        { shape: "path", d: outline(s.width, s.height, s.rise, 0), fill: paper, pen: "outline" },
        ...(made.border ? [stroke(outline(s.width, s.height, s.rise, s.inset), "edge")] : []),
        ...seams,
        ...(column ? [stroke(line(mid, -14, mid, s.height + 14), "centre")] : []),
        ...places.buttons.map(([x, y]) => stroke(circle(x, y, 9), "dimension")),
        ...(main && showsMotif(main)
          ? [{ shape: "sign", sign: "lozenge", x: mid, y: middle } as const]
          : []),
        ...letters,
      ],
      dimensions: [
        {
          axis: "horizontal",
          from: 0,
          to: s.width,
          side: "bottom",
          level: 1,
          text: p(made.size[0]),
        },
        ...(made.border
          ? [
              {
                axis: "horizontal",
                from: s.inset,
                to: s.width - s.inset,
                side: "top",
                level: 1,
                text: `${p(made.size[0].minus(made.border.times(2)))} panel`,
              } as const,
            ]
          : []),
        ...(s.rise > 0
          ? [
              {
                axis: "vertical",
                from: s.rise,
                to: s.height,
                side: "left",
                level: 1,
                text: p(made.size[2].minus(made.rise)),
              } as const,
            ]
          : []),
        {
          axis: "vertical",
          from: 0,
          to: s.height,
          side: "left",
          level: s.rise > 0 ? 2 : 1,
          text: p(made.size[2]),
        },
      ],
      title: "Front",
      description: `Front of ${fields.headboard}, ${p(made.size[0])} by ${p(made.size[2])}${main?.parts ? ", joined at both sides of a whole width" : ""}.`,
    },
    {
      widthMm: s.depth,
      heightMm: s.height,
      shapes: [
        { shape: "path", d: rect(0, 0, s.depth, s.height), fill: paper, pen: "outline" },
        stroke(line(12, 8, 12, s.height - 8), "hidden"),
      ],
      dimensions: [
        {
          axis: "horizontal",
          from: 0,
          to: s.depth,
          side: "bottom",
          level: 1,
          text: `${p(made.size[1])} deep`,
        },
      ],
      title: "Side",
      description: `${fields.headboard} from its side, ${p(made.size[1])} deep, board and lining at the back.`,
    },
    ...flatPieces(made, context),
  ];
}

export const headboardDrawing: ItemDrawing<HeadboardFields, HeadboardMade> = {
  kind: "headboard",
  elevation,
  plan,
  workshop,
  sheet: headboardSheet,
  fitting: headboardFitting,
};
