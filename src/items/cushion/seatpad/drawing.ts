import { circle, line, rect } from "../../../drawing/paths.ts";
import type { Drawing, Shape } from "../../../drawing/shape.ts";
import { printLength } from "../../../units/printLength.ts";
import { face, PADDED, stroke } from "../../common/clothFace.ts";
import { centredNote } from "../../common/motifNoun.ts";
import type { DrawingContext, ItemDrawing } from "../../itemDrawing.ts";
import { faceWords } from "../faceWords.ts";
import { boxingFlat } from "../flatParts.ts";
import { boxFront } from "../fronts.ts";
import type { SeatPadMade } from "./pieces.ts";
import type { SeatPadFields } from "./schema.ts";
import { seatPadSheet } from "./sheet.ts";

const f = (n: number) => n.toFixed(1);
const KNIFE_MM = 45;

/** Outline from above, its back at the head, with its corner at x, y. */
function outline(made: SeatPadMade, x: number, y: number): string {
  const [w, d] = [made.finished[0].toMm(), made.finished[1].toMm()];
  if (made.shape === "round") return circle(x + w / 2, y + d / 2, Math.min(w, d) / 2);
  const inset = (w - made.backWidth.toMm()) / 2;
  const r = Math.min(18, d * 0.06);
  return `M${f(x + inset + r)} ${f(y)}H${f(x + w - inset - r)}Q${f(x + w - inset)} ${f(y)} ${f(x + w - inset)} ${f(y + r)}L${f(x + w)} ${f(y + d - r)}Q${f(x + w)} ${f(y + d)} ${f(x + w - r)} ${f(y + d)}H${f(x + r)}Q${f(x)} ${f(y + d)} ${f(x)} ${f(y + d - r)}L${f(x + inset)} ${f(y + r)}Q${f(x + inset)} ${f(y)} ${f(x + inset + r)} ${f(y)}Z`;
}

/** Tufting buttons set out evenly, for the drawing: more along the wider way. */
function buttonSpots(made: SeatPadMade): (readonly [number, number])[] {
  const [w, d] = [made.finished[0].toMm(), made.finished[1].toMm()];
  if (made.buttons === 0) return [];
  if (made.buttons === 1) return [[w / 2, d / 2]];
  const rows = Math.max(1, Math.min(made.buttons, Math.round(Math.sqrt((made.buttons * d) / w))));
  return Array.from({ length: rows }, (_, row) => {
    const n =
      Math.floor(((row + 1) * made.buttons) / rows) - Math.floor((row * made.buttons) / rows);
    return Array.from(
      { length: n },
      (_u, at) => [(w * (at + 0.5)) / n, (d * (row + 0.5)) / rows] as const,
    );
  }).flat();
}

function elevation(fields: SeatPadFields, made: SeatPadMade, context: DrawingContext): Drawing {
  const cushion = { ...fields, cushion: fields["seat-pad"] } as never;
  if (made.boxing)
    return { ...boxFront(cushion, { ...made, count: 1 }, context), title: fields["seat-pad"] };
  const w = made.finished[0].toMm();
  const pillow = `M0 ${f(KNIFE_MM * 0.62)}C${f(w * 0.08)} 0 ${f(w * 0.3)} 0 ${f(w / 2)} 0C${f(w * 0.7)} 0 ${f(w * 0.92)} 0 ${f(w)} ${f(KNIFE_MM * 0.62)}C${f(w * 0.92)} ${f(KNIFE_MM)} ${f(w * 0.7)} ${f(KNIFE_MM)} ${f(w / 2)} ${f(KNIFE_MM)}C${f(w * 0.3)} ${f(KNIFE_MM)} ${f(w * 0.08)} ${f(KNIFE_MM)} 0 ${f(KNIFE_MM * 0.62)}Z`;
  return {
    widthMm: w,
    heightMm: KNIFE_MM,
    shapes: face(pillow, { surface: "face", x: w / 2, y: KNIFE_MM / 2 }, PADDED),
    dimensions: [],
    title: fields["seat-pad"],
    description: `Seat pad from the front, ${printLength(made.finished[0], context.units)} wide, with a knife edge.`,
  };
}

function plan(fields: SeatPadFields, made: SeatPadMade): Drawing {
  const [w, d] = [made.finished[0].toMm(), made.finished[1].toMm()];
  return {
    widthMm: w,
    heightMm: d,
    shapes: [
      ...face(outline(made, 0, 0), { surface: "face", x: w / 2, y: d / 2 }, PADDED, "edge"),
      ...buttonSpots(made).map(([x, y]) => stroke(circle(x, y, 8), "edge")),
    ],
    dimensions: [],
    title: fields["seat-pad"],
    description: "Seat pad from above.",
  };
}

/** The tie of one pair, two strokes that part. */
function tie(x: number, y: number, out: number): Shape[] {
  return [
    stroke(`M${f(x)} ${f(y)}q${f(out * 10)} -40 ${f(out * 26)} -66`, "edge"),
    stroke(`M${f(x)} ${f(y)}q${f(out * 40)} -20 ${f(out * 58)} -52`, "edge"),
  ];
}

/** The top on its cloth: cut rectangle, finished shape, motif, joins, buttons, ties; then the strips of the boxing. */
function workshop(fields: SeatPadFields, made: SeatPadMade, context: DrawingContext): Drawing[] {
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const s = made.seam.toMm();
  const [w, d] = [made.finished[0].toMm(), made.finished[1].toMm()];
  const [cw, cd] = [made.cut[0].toMm(), made.cut[1].toMm()];
  const inset = made.shape === "round" ? w * 0.2 : (w - made.backWidth.toMm()) / 2;
  const tieAt =
    made.ties === 1
      ? [w / 2]
      : Array.from(
          { length: made.ties },
          (_, at) => inset + 14 + ((w - 2 * inset - 28) * at) / (made.ties - 1),
        );
  const face2 = made.cuts.filter(
    (c) => c.surface === "face" && c.piece.startsWith(made.boxing ? "top," : "face,"),
  );
  const seams: Shape[] = [];
  if (face2.length > 1) {
    const total = face2.reduce((n, c) => n + c.width.toMm(), 0);
    const turning = (total - cw) / 2 / (face2.length - 1);
    let at = 0;
    for (const [n, part] of face2.slice(0, -1).entries()) {
      at += part.width.toMm() - turning * (n === 0 ? 1 : 2);
      seams.push(stroke(line(at, 0, at, cd), "seam"));
    }
  }
  const shapes: Shape[] = [
    ...tieAt.flatMap((x) =>
      tie(s + x, s + (made.shape === "round" ? d * 0.1 : 0), x < w / 2 ? -1 : 1),
    ),
    stroke(rect(0, 0, cw, cd), "hidden"),
    { shape: "path", d: outline(made, s, s), fill: { tone: "paper" }, pen: "outline" },
    ...seams,
    ...buttonSpots(made).map(([x, y]) => stroke(circle(s + x, s + y, 8), "dimension")),
    ...(made.faceCentred
      ? [
          stroke(line(cw / 2, -12, cw / 2, cd + 12), "centre"),
          stroke(line(-12, cd / 2, cw + 12, cd / 2), "centre"),
          { shape: "sign", sign: "lozenge", x: cw / 2, y: cd / 2 } as const,
          ...(made.buttons > 0
            ? []
            : [
                {
                  shape: "note",
                  x: cw / 2 + 10,
                  y: cd / 2 - 10,
                  dxPaper: 6,
                  dyPaper: -8,
                  text: centredNote(context.cloth(fields.cloth), context.language),
                  end: "arrow",
                } as const,
              ]),
        ]
      : [
          {
            shape: "words",
            x: cw / 2,
            y: cd / 2,
            anchor: "middle",
            text: faceWords(
              made.shows.face,
              context.cloth(fields.cloth),
              made.boxing ? "top and bottom" : "face",
            ),
          } as const,
        ]),
    { shape: "words", x: s + w * 0.28, y: s + d, anchor: "middle", text: "front", dyPaper: -2 },
    {
      shape: "sign",
      sign: "arrow",
      x: s + Math.max(inset * 0.6, w * 0.1),
      y: cd * 0.62,
      turnDeg: made.railroad ? 0 : -90,
    },
  ];
  const top: Drawing = {
    widthMm: cw,
    heightMm: cd,
    shapes,
    dimensions: [
      {
        axis: "horizontal",
        from: s,
        to: s + w,
        side: "bottom",
        level: 1,
        text: `${p(made.finished[0])} finished`,
      },
      {
        axis: "horizontal",
        from: 0,
        to: cw,
        side: "bottom",
        level: 2,
        text: `${p(made.cut[0])} cut`,
      },
      ...(made.shape === "tapered"
        ? [
            {
              axis: "horizontal",
              from: s + inset,
              to: s + w - inset,
              side: "top",
              level: made.ties > 0 ? 2 : 1,
              text: `${p(made.backWidth)} at the back`,
            } as const,
          ]
        : []),
      {
        axis: "vertical",
        from: s,
        to: s + d,
        side: "left",
        level: 1,
        text: `${p(made.finished[1])} finished`,
      },
      { axis: "vertical", from: 0, to: cd, side: "left", level: 2, text: `${p(made.cut[1])} cut` },
    ],
    title: made.boxing ? "Top and bottom" : "Face",
    description: `${fields["seat-pad"]} from above: ${p(made.finished[0])} by ${p(made.finished[1])} finished, cut ${p(made.cut[0])} by ${p(made.cut[1])}${made.faceCentred ? ", motif in its middle" : ""}.`,
  };
  const cushion = { ...fields, cushion: fields["seat-pad"] } as never;
  return made.boxing ? [top, boxingFlat(cushion, made, context)] : [top];
}

export const seatPadDrawing: ItemDrawing<SeatPadFields, SeatPadMade> = {
  kind: "seat-pad",
  elevation,
  plan,
  workshop,
  sheet: seatPadSheet,
};
