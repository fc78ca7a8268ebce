import { line, rect, roundedRect } from "../../../drawing/paths.ts";
import type { Drawing, Shape } from "../../../drawing/shape.ts";
import { printLength, printSize } from "../../../units/printLength.ts";
import { face, PADDED, stroke } from "../../common/clothFace.ts";
import type { DrawingContext, ItemDrawing } from "../../itemDrawing.ts";
import type { DropInMade } from "./pieces.ts";
import type { DropInFields } from "./schema.ts";
import { dropInSheet } from "./sheet.ts";

const f = (n: number) => n.toFixed(1);

/** Outline from above, its back at the head, narrower there where it is so. */
function outline(made: DropInMade, x: number, y: number): string {
  const [w, d] = [made.front.toMm(), made.depth.toMm()];
  const inset = (w - made.back.toMm()) / 2;
  const r = Math.min(24, d * 0.08);
  return `M${f(x + inset + r)} ${f(y)}H${f(x + w - inset - r)}Q${f(x + w - inset)} ${f(y)} ${f(x + w - inset)} ${f(y + r)}L${f(x + w)} ${f(y + d - r)}Q${f(x + w)} ${f(y + d)} ${f(x + w - r)} ${f(y + d)}H${f(x + r)}Q${f(x)} ${f(y + d)} ${f(x)} ${f(y + d - r)}L${f(x + inset)} ${f(y + r)}Q${f(x + inset)} ${f(y)} ${f(x + inset + r)} ${f(y)}Z`;
}

/** From the front as it lies in its chair: its edge and the crown of its top. */
function elevation(fields: DropInFields, made: DropInMade, context: DrawingContext): Drawing {
  const w = made.front.toMm();
  const t = Math.min(made.thickness?.toMm() ?? 50, 90);
  return {
    widthMm: w,
    heightMm: t,
    shapes: face(
      roundedRect(0, 0, w, t, Math.min(22, t * 0.45)),
      { surface: "cover", x: w / 2, y: t / 2 },
      { light: 0.26, dark: 0.2 },
    ),
    dimensions: [],
    title: fields["drop-in-seat"],
    description: `Drop-in seat from the front, ${printSize([made.front, made.depth], context.units)}, covered in ${context.cloth(fields.cloth)?.name ?? fields.cloth}.`,
  };
}

function plan(fields: DropInFields, made: DropInMade): Drawing {
  const [w, d] = [made.front.toMm(), made.depth.toMm()];
  return {
    widthMm: w,
    heightMm: d,
    shapes: face(outline(made, 0, 0), { surface: "cover", x: w / 2, y: d / 2 }, PADDED, "edge"),
    dimensions: [],
    title: fields["drop-in-seat"],
    description: "Drop-in seat from above.",
  };
}

/** The cloth as it is cut, the seat upon it, the motif in its middle, the fold lines of the wrap. */
function workshop(fields: DropInFields, made: DropInMade, context: DrawingContext): Drawing[] {
  const piece = made.pieces[0];
  if (!piece) return [];
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const [w, d] = [made.front.toMm(), made.depth.toMm()];
  const [cw, cd] = [piece.cut[0].toMm(), piece.cut[1].toMm()];
  const [x, y] = [(cw - w) / 2, (cd - d) / 2];
  const marks: Shape[] =
    piece.centred || piece.inColumn
      ? [
          stroke(line(cw / 2, -14, cw / 2, cd + 14), "centre"),
          ...(piece.centred
            ? [
                stroke(line(-14, cd / 2, cw + 14, cd / 2), "centre"),
                { shape: "sign", sign: "lozenge", x: cw / 2, y: cd / 2 } as const,
                {
                  shape: "note",
                  x: cw / 2 + 10,
                  y: cd / 2 - 10,
                  dxPaper: 6,
                  dyPaper: -8,
                  text: context.language === "en-US" ? "motif\ncentered" : "motif\ncentred",
                  end: "arrow",
                } as const,
              ]
            : []),
        ]
      : [];
  const shapes: Shape[] = [
    stroke(rect(0, 0, cw, cd), "hidden"),
    { shape: "path", d: outline(made, x, y), fill: { tone: "paper" }, pen: "outline" },
    ...marks,
    { shape: "words", x: x + w * 0.26, y: y + d, anchor: "middle", text: "front", dyPaper: -2 },
    { shape: "words", x: cw / 2 - w * 0.22, y, anchor: "middle", text: "back", dyPaper: 5 },
    {
      shape: "sign",
      sign: "arrow",
      x: x + w * 0.14,
      y: cd * 0.6,
      turnDeg: made.job.railroad ? 0 : -90,
    },
  ];
  return [
    {
      widthMm: cw,
      heightMm: cd,
      shapes,
      dimensions: [
        { axis: "horizontal", from: x, to: x + w, side: "bottom", level: 1, text: p(made.front) },
        {
          axis: "horizontal",
          from: 0,
          to: cw,
          side: "bottom",
          level: 2,
          text: `${p(piece.cut[0])} cut`,
        },
        ...(made.back.equals(made.front)
          ? []
          : [
              {
                axis: "horizontal",
                from: (cw - made.back.toMm()) / 2,
                to: (cw + made.back.toMm()) / 2,
                side: "top",
                level: 1,
                text: p(made.back),
              } as const,
            ]),
        { axis: "vertical", from: y, to: y + d, side: "left", level: 1, text: p(made.depth) },
        {
          axis: "vertical",
          from: 0,
          to: cd,
          side: "left",
          level: 2,
          text: `${p(piece.cut[1])} cut`,
        },
      ],
      title: "Seat from above, on its cloth",
      description: `${fields["drop-in-seat"]}: ${p(made.front)} by ${p(made.depth)}, cut ${p(piece.cut[0])} by ${p(piece.cut[1])}${piece.centred ? ", motif in its middle" : ""}.`,
    },
  ];
}

export const dropInDrawing: ItemDrawing<DropInFields, DropInMade> = {
  kind: "drop-in-seat",
  elevation,
  plan,
  workshop,
  sheet: dropInSheet,
};
