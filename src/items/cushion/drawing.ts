import { line, rect } from "../../drawing/paths.ts";
import type { Dimension, Drawing, PathData, Shape } from "../../drawing/shape.ts";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { face, stroke } from "../common/clothFace.ts";
import { centredNote } from "../common/motifNoun.ts";
import type { DrawingContext, ItemDrawing } from "../itemDrawing.ts";
import { faceWords } from "./faceWords.ts";
import { bolsterFlat, boxingFlat } from "./flatParts.ts";
import { bolsterFront, boxFront } from "./fronts.ts";
import type { CushionMade } from "./pieces.ts";
import type { CushionFields } from "./schema.ts";
import { cushionSheet } from "./sheet.ts";

/** Each next cushion leans the other way (degrees), and stands this much of its width before the last. */
const TILTS = [-6, 5, -4, 6];
const LAP = 0.14;
/** How far a stuffed side draws in at its middle, of its length. */
const DRAWN_IN = 0.045;
const WELT_MM = 9;

/** A stuffed square: sharp corners, sides drawn in. */
function outline(w: number, h: number, inset = 0): PathData {
  const f = (n: number) => n.toFixed(1);
  const [x1, y1, x2, y2] = [inset, inset, w - inset, h - inset];
  const dx = 2 * DRAWN_IN * h;
  const dy = 2 * DRAWN_IN * w * 0.7;
  return `M${f(x1)} ${f(y1)}Q${f(w / 2)} ${f(y1 + dy)} ${f(x2)} ${f(y1)}Q${f(x2 - dx)} ${f(h / 2)} ${f(x2)} ${f(y2)}Q${f(w / 2)} ${f(y2 - dy * 0.6)} ${f(x1)} ${f(y2)}Q${f(x1 + dx)} ${f(h / 2)} ${f(x1)} ${f(y1)}Z`;
}

/** Two hairlines that run from each corner into the stuffing. */
function creases(w: number, h: number): Shape[] {
  const f = (n: number) => n.toFixed(1);
  const s = Math.min(w, h);
  const out: Shape[] = [];
  for (const [cx, cy, sx, sy] of [
    [0, 0, 1, 1],
    [w, 0, -1, 1],
    [w, h, -1, -1],
    [0, h, 1, -1],
  ] as const) {
    const p = (u: number, v: number) => `${f(cx + sx * u * s)} ${f(cy + sy * v * s)}`;
    out.push(stroke(`M${p(0.03, 0.035)}Q${p(0.09, 0.07)} ${p(0.13, 0.13)}`, "fold"));
    out.push(stroke(`M${p(0.05, 0.035)}Q${p(0.1, 0.06)} ${p(0.17, 0.1)}`, "fold"));
  }
  return out;
}

/** One cushion, its foot at the lower edge of its box. */
function oneCushion(w: number, h: number, made: CushionMade): Shape[] {
  const border = made.flange.toMm();
  if (border > 0) {
    // The border lies flat and straight; only what is stuffed draws in.
    const inside = oneCushion(w - 2 * border, h - 2 * border, {
      ...made,
      flange: Length.zero,
      welt: null,
    });
    return [
      ...face(
        rect(0, 0, w, h),
        { surface: "face", x: w / 2, y: h / 2 },
        { light: 0.08, dark: 0.16 },
      ),
      { shape: "group", x: border, y: border, children: inside },
    ];
  }
  const inner = made.welt ? WELT_MM : 0;
  const middle = { surface: "face", x: w / 2, y: h / 2 };
  const shade = { light: 0.2, dark: 0.22, across: { light: 0.08, dark: 0.14 } };
  if (inner === 0) return [...face(outline(w, h), middle, shade), ...creases(w, h)];
  return [
    {
      shape: "path",
      d: outline(w, h),
      fill: { surface: "welt", x: 0, y: 0, turnDeg: 45 },
      pen: "outline",
    },
    ...face(outline(w, h, inner), middle, shade, "edge"),
    ...creases(w, h),
  ];
}

function elevation(fields: CushionFields, made: CushionMade, context: DrawingContext): Drawing {
  if (made.boxing) return boxFront(fields, made, context);
  if (made.bolster) return bolsterFront(fields, made, context);
  const w = made.finished[0].toMm();
  const h = made.finished[1].toMm();
  const shown = Math.min(made.count, 6);
  const step = w * (1 - LAP);
  // Leaning lifts a corner: room for it at both sides.
  const lean = Math.sin((6 * Math.PI) / 180);
  const room = lean * h;
  const height = h + lean * w;
  const width = w + step * (shown - 1) + 2 * room;
  const shapes = Array.from({ length: shown }, (_, at): Shape => {
    const turnDeg = TILTS[at % TILTS.length] as number;
    const rad = (Math.abs(turnDeg) * Math.PI) / 180;
    // It leans about the corner that stays on the seat.
    const left = room + at * step;
    const children = oneCushion(w, h, made);
    return turnDeg < 0
      ? {
          shape: "group",
          x: left,
          y: height,
          turnDeg,
          children: [{ shape: "group", y: -h, children }],
        }
      : {
          shape: "group",
          x: left + w * Math.cos(rad),
          y: height,
          turnDeg,
          children: [{ shape: "group", x: -w, y: -h, children }],
        };
  });
  const many = made.count > 1 ? `${made.count} cushions` : "Cushion";
  return {
    widthMm: width,
    heightMm: height,
    shapes,
    dimensions: [],
    title: fields.cushion,
    description: `${many} ${printSize(made.finished, context.units)}, ${made.welt ? "welted" : made.form === "flange" ? `with a flange of ${printLength(made.flange, context.units)}` : "with a knife edge"}.`,
  };
}

/** Front of one cushion flat as it is sewn: finished line, seams and turnings, zip, motif. */
function workshop(fields: CushionFields, made: CushionMade, context: DrawingContext): Drawing[] {
  if (made.bolster) return bolsterFlat(fields, made, context);
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const s = made.seam.toMm();
  const [w, h] = [made.finished[0].toMm(), made.finished[1].toMm()];
  const [cw, ch] = [w + 2 * s, h + 2 * s];
  const shapes: Shape[] = [
    stroke(rect(0, 0, cw, ch), "hidden"),
    { shape: "path", d: rect(s, s, w, h), fill: { tone: "paper" }, pen: "outline" },
  ];
  if (made.welt) shapes.push(stroke(rect(s + 7, s + 7, w - 14, h - 14), "edge"));
  const border = made.flange.toMm();
  if (border > 0)
    shapes.push(stroke(rect(s + border, s + border, w - 2 * border, h - 2 * border), "edge"));
  if (made.faceCentred) {
    shapes.push(
      stroke(line(cw / 2, -12, cw / 2, ch + 12), "centre"),
      stroke(line(-12, ch / 2, cw + 12, ch / 2), "centre"),
    );
    shapes.push({ shape: "sign", sign: "lozenge", x: cw / 2, y: ch / 2 });
    // Two drawings side by side are small: there the lozenge alone says it, as the signs explain.
    if (made.backs === 1)
      shapes.push({
        shape: "note",
        x: cw / 2 + w * 0.04,
        y: ch / 2 - h * 0.04,
        dxPaper: 3.5,
        dyPaper: -9,
        text: centredNote(context.cloth(fields.cloth), context.language),
        end: "arrow",
        within: s + w,
      });
  } else {
    shapes.push({
      shape: "words",
      x: cw / 2,
      y: ch / 2,
      anchor: "middle",
      text: faceWords(
        made.shows.face,
        context.cloth(fields.cloth),
        made.boxing ? "plate, two alike" : "face",
      ),
    });
  }
  shapes.push({
    shape: "sign",
    sign: "arrow",
    x: s + border + w * 0.1,
    y: ch * 0.72,
    turnDeg: -90,
  });
  if (made.closure === "zip" && made.zip && !made.boxing && made.backs === 1) {
    const z = made.zip.toMm();
    shapes.push(stroke(line(cw / 2 - z / 2, s + h, cw / 2 + z / 2, s + h), "cut"));
    shapes.push({
      shape: "note",
      // At its right end, and its words before it: clear of the edges, and of the arrow, on a small drawing too.
      x: cw / 2 + z * 0.42,
      y: s + h - 4,
      dxPaper: -3,
      dyPaper: -5,
      text: `zip ${p(made.zip)}`,
      end: "arrow",
    });
  }
  const dimensions: Dimension[] = [
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
    {
      axis: "vertical",
      from: s,
      to: s + h,
      side: "left",
      level: 1,
      text: `${p(made.finished[1])} finished`,
    },
    { axis: "vertical", from: 0, to: ch, side: "left", level: 2, text: `${p(made.cut[1])} cut` },
  ];
  const front: Drawing = {
    widthMm: cw,
    heightMm: ch,
    shapes,
    dimensions,
    title: made.boxing ? "Top and bottom" : "Face",
    description: `Face of ${fields.cushion}: ${p(made.finished[0])} by ${p(made.finished[1])} finished, cut ${p(made.cut[0])} by ${p(made.cut[1])}${made.faceCentred ? ", motif in its middle" : ""}.`,
  };
  if (made.boxing) return [front, boxingFlat(fields, made, context)];
  return made.backs === 2 ? [front, envelopeBack(fields, made, context)] : [front];
}

/** The two backs of an envelope as they lie one over the other. */
function envelopeBack(fields: CushionFields, made: CushionMade, context: DrawingContext): Drawing {
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const [cw, ch] = [made.cut[0].toMm(), made.cut[1].toMm()];
  const each = made.backCut[1].toMm();
  const s = made.seam.toMm();
  return {
    widthMm: cw,
    heightMm: ch,
    shapes: [
      stroke(rect(0, 0, cw, ch), "outline"),
      stroke(line(0, each, cw, each), "outline"),
      stroke(line(0, ch - each, cw, ch - each), "hidden"),
      stroke(rect(s, s, cw - 2 * s, ch - 2 * s), "hidden"),
      {
        shape: "words",
        x: cw / 2,
        y: (ch - each) / 2,
        anchor: "middle",
        text: made.zip ? "upper back" : "upper back, on top",
      },
      { shape: "words", x: cw / 2, y: (each + ch) / 2, anchor: "middle", text: "lower back" },
    ],
    dimensions: [
      {
        axis: "horizontal",
        from: 0,
        to: cw,
        side: "bottom",
        level: 1,
        text: `${p(made.backCut[0])} cut`,
      },
      {
        axis: "vertical",
        from: 0,
        to: each,
        side: "left",
        level: 1,
        text: `${p(made.backCut[1])} cut`,
      },
      {
        axis: "vertical",
        from: ch - each,
        to: ch,
        side: "right",
        level: 1,
        text: `${p(made.backCut[1])} cut`,
      },
    ],
    title: made.zip ? "Backs, a zip between" : "Backs, an envelope",
    description: `Two backs of ${fields.cushion}, each cut ${p(made.backCut[0])} by ${p(made.backCut[1])}, ${made.zip ? `a zip of ${p(made.zip)} between` : "overlapping"}.`,
  };
}

export const cushionDrawing: ItemDrawing<CushionFields, CushionMade> = {
  kind: "cushion",
  elevation,
  plan: () => null,
  workshop,
  sheet: cushionSheet,
};
