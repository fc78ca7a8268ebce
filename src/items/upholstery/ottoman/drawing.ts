import { circle, line, roundedRect } from "../../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../../drawing/shape.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import {
  FLAT,
  face,
  floorShadow,
  leg,
  PADDED,
  roundedBand,
  stroke,
} from "../../common/clothFace.ts";
import type { DrawingContext, ItemDrawing } from "../../itemDrawing.ts";
import { showsMotif } from "../coverPiece.ts";
import { flatPieces } from "../flatPieces.ts";
import type { OttomanMade } from "./pieces.ts";
import type { OttomanFields } from "./schema.ts";
import { ottomanSheet } from "./sheet.ts";

const WELT_MM = 9;

/** Where its parts stand from the front: crown of the top above, sides, legs. */
function shape(made: OttomanMade) {
  const [width, depth, height] = made.size.map((l) => l.toMm()) as [number, number, number];
  const legTop = Math.max(20, Math.min(height, made.sideHeight.toMm()));
  const crown = Math.min(26, legTop * 0.1);
  return { width, depth, height, legTop, crown };
}

function legs(s: ReturnType<typeof shape>): Shape[] {
  if (s.height - s.legTop < 12) return [];
  const wide = Math.min(52, s.width * 0.08);
  const x = s.width * 0.05;
  return [
    ...leg(x, s.legTop - 2, s.height, wide, wide * 0.62),
    ...leg(s.width - x - wide, s.legTop - 2, s.height, wide, wide * 0.62),
  ];
}

function elevation(fields: OttomanFields, made: OttomanMade, context: DrawingContext): Drawing {
  const s = shape(made);
  const mid = s.width / 2;
  const f = (n: number) => n.toFixed(1);
  const top = `M4 ${f(s.crown + 4)}C${f(s.width * 0.1)} 0 ${f(s.width * 0.3)} 0 ${f(mid)} 0C${f(s.width * 0.7)} 0 ${f(s.width * 0.9)} 0 ${f(s.width - 4)} ${f(s.crown + 4)}Z`;
  const across = made.round ? { light: 0.16, dark: 0.3 } : { light: 0.04, dark: 0.08 };
  const front = made.pieces.find((p) => p.piece === "front" || p.piece === "side");
  const surface = front?.surface ?? "cover";
  const topSurface = made.pieces.find((p) => p.piece === "top")?.surface ?? "cover";
  const body = roundedRect(0, s.crown, s.width, s.legTop - s.crown, made.round ? 18 : 10);
  const buttons: Shape[] =
    made.job.buttons > 0
      ? [0.25, 0.5, 0.75].map((at) => ({
          shape: "path",
          d: circle(s.width * at, s.crown * 0.55, 7),
          fill: { surface: topSurface, x: 0, y: 0 },
          pen: "edge",
        }))
      : [];
  return {
    widthMm: s.width,
    heightMm: s.height,
    shapes: [
      floorShadow(s.width * 0.02, s.height - 1, s.width * 0.96),
      ...legs(s),
      ...face(top, { surface: topSurface, x: mid, y: 0 }, { light: 0.26, dark: 0.04 }),
      ...buttons,
      ...face(
        body,
        { surface, x: mid, y: (s.crown + s.legTop) / 2 },
        { ...FLAT, dark: 0.22, across },
      ),
      ...(made.welt
        ? [
            {
              shape: "path",
              d: roundedRect(0, s.crown - WELT_MM / 2, s.width, WELT_MM, WELT_MM / 2),
              fill: { surface: "welt", x: 0, y: 0, turnDeg: 45 },
              pen: "fold",
            } as const,
          ]
        : []),
    ],
    dimensions: [],
    title: fields.ottoman,
    description: `Ottoman from the front, ${printSize(made.size, context.units)} (width, depth, height), covered in ${context.cloth(fields.cloth)?.name ?? fields.cloth}.`,
  };
}

function topOutline(made: OttomanMade): string {
  const s = shape(made);
  return made.round
    ? circle(s.width / 2, s.depth / 2, Math.min(s.width, s.depth) / 2)
    : roundedRect(0, 0, s.width, s.depth, 14);
}

function plan(fields: OttomanFields, made: OttomanMade): Drawing {
  const s = shape(made);
  const surface = made.pieces.find((p) => p.piece === "top")?.surface ?? "cover";
  return {
    widthMm: s.width,
    heightMm: s.depth,
    shapes: [
      ...face(topOutline(made), { surface, x: s.width / 2, y: s.depth / 2 }, PADDED, "edge"),
      ...(made.welt && !made.round
        ? [
            {
              shape: "path",
              d: roundedBand(0, 0, s.width, s.depth, 14, WELT_MM),
              fill: { surface: "welt", x: 0, y: 0, turnDeg: 45 },
              pen: "fold",
            } as const,
          ]
        : []),
    ],
    dimensions: [],
    title: fields.ottoman,
    description: "Ottoman from above.",
  };
}

/** Top and front, lines only, with letters, motif and sizes; then every piece flat. */
function workshop(fields: OttomanFields, made: OttomanMade, context: DrawingContext): Drawing[] {
  const s = shape(made);
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const mid = s.width / 2;
  const piece = (name: string) => made.pieces.find((x) => x.piece === name);
  const top = piece("top");
  const front = piece("front") ?? piece("side");
  const column = top && (top.inColumn || showsMotif(top));
  const letter = (x: number, y: number, text: string | undefined): Shape[] =>
    text
      ? [{ shape: "words", x, y, text, anchor: "middle", weight: "bold", dxPaper: 5, dyPaper: 1.2 }]
      : [];
  const above: Shape[] = [
    { shape: "path", d: topOutline(made), fill: { tone: "paper" }, pen: "outline" },
    ...(column ? [stroke(line(mid, -14, mid, s.depth + 14), "centre")] : []),
    ...(top && showsMotif(top)
      ? [{ shape: "sign", sign: "lozenge", x: mid, y: s.depth / 2 } as const]
      : []),
    ...letter(mid, s.depth / 2, top?.letter),
    { shape: "words", x: s.width * 0.25, y: s.depth, anchor: "middle", text: "front", dyPaper: -2 },
  ];
  const paper = { tone: "paper" } as const;
  const seen: Shape[] = [
    ...legs(s),
    {
      shape: "path",
      d: roundedRect(0, s.crown, s.width, s.legTop - s.crown, made.round ? 18 : 10),
      fill: paper,
      pen: "outline",
    },
    stroke(
      `M4 ${(s.crown + 4).toFixed(1)}C${(s.width * 0.1).toFixed(1)} 0 ${(s.width * 0.9).toFixed(1)} 0 ${(s.width - 4).toFixed(1)} ${(s.crown + 4).toFixed(1)}`,
      "outline",
    ),
    ...(made.welt ? [stroke(line(0, s.crown + WELT_MM, s.width, s.crown + WELT_MM), "edge")] : []),
    ...(column ? [stroke(line(mid, -14, mid, s.legTop + 14), "centre")] : []),
    ...letter(mid, (s.crown + s.legTop) / 2, front?.letter),
    stroke(line(-30, s.height, s.width + 30, s.height), "cut"),
  ];
  const legSize: Dimension[] =
    s.height - s.legTop > 12
      ? [
          {
            axis: "vertical",
            from: 0,
            to: s.legTop,
            side: "left",
            level: 1,
            text: p(made.sideHeight),
          },
        ]
      : [];
  return [
    {
      widthMm: s.width,
      heightMm: s.depth,
      shapes: above,
      dimensions: [
        {
          axis: "horizontal",
          from: 0,
          to: s.width,
          side: "bottom",
          level: 1,
          text: p(made.size[0]),
        },
        { axis: "vertical", from: 0, to: s.depth, side: "left", level: 1, text: p(made.size[1]) },
      ],
      title: "From above",
      description: `${fields.ottoman} from above, ${p(made.size[0])} by ${p(made.size[1])}.`,
    },
    {
      widthMm: s.width,
      heightMm: s.height,
      shapes: seen,
      dimensions: [
        ...legSize,
        {
          axis: "vertical",
          from: 0,
          to: s.height,
          side: "left",
          level: legSize.length + 1,
          text: `${p(made.size[2])} high`,
        },
      ],
      title: "Front",
      description: `Front of ${fields.ottoman}, ${p(made.size[2])} high.`,
    },
    ...flatPieces(made, context),
  ];
}

export const ottomanDrawing: ItemDrawing<OttomanFields, OttomanMade> = {
  kind: "ottoman",
  elevation,
  plan,
  workshop,
  sheet: ottomanSheet,
};
