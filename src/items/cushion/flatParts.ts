import { circle, line, rect } from "../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import type { CushionMade } from "./pieces.ts";
import type { CushionFields } from "./schema.ts";

function across(from: number, to: number, text: string, level = 1): Dimension {
  return { axis: "horizontal", from, to, side: "bottom", level, text };
}

function down(from: number, to: number, text: string, side: "left" | "right" = "left"): Dimension {
  return { axis: "vertical", from, to, side, level: 1, text };
}

function flat(x: number, y: number, w: number, h: number, s: number): Shape[] {
  return [
    stroke(rect(x, y, w, h), "hidden"),
    {
      shape: "path",
      d: rect(x + s, y + s, w - 2 * s, h - 2 * s),
      fill: { tone: "paper" },
      pen: "outline",
    },
  ];
}

/** The strips of a box cushion's boxing, one under the other, each as it is cut. */
export function boxingFlat(
  fields: CushionFields,
  made: CushionMade,
  context: DrawingContext,
): Drawing {
  const p = (l: Length) => printLength(l, context.units);
  const s = made.seam.toMm();
  const strips = made.boxing?.strips ?? [];
  const widest = Math.max(...strips.map((x) => x.cut[0].toMm()));
  const shapes: Shape[] = [];
  const dimensions: Dimension[] = [];
  // Room under each strip for its name and length, at the scale that the widest one gives.
  const gap = widest * 0.12;
  let y = 0;
  for (const strip of strips) {
    const [w, h] = [strip.cut[0].toMm(), strip.cut[1].toMm()];
    const x = (widest - w) / 2;
    shapes.push(...flat(x, y, w, h, s));
    shapes.push({
      shape: "words",
      x: widest / 2,
      y: y + h + gap * 0.45,
      anchor: "middle",
      text: `${strip.count > 1 ? `${strip.count} × ` : ""}${strip.name}, ${p(strip.cut[0])} cut`,
    });
    dimensions.push(down(y, y + h, p(strip.cut[1]), "left"));
    y += h + gap;
  }
  return {
    widthMm: widest,
    heightMm: y,
    shapes,
    dimensions,
    title: "Boxing",
    description: `Boxing of ${fields.cushion}: ${strips.map((x) => `${x.count} ${x.name}, ${p(x.cut[0])} by ${p(x.cut[1])}`).join("; ")}.`,
  };
}

/** A bolster's body laid flat, its zip seam at the foot, and one of its ends. */
export function bolsterFlat(
  fields: CushionFields,
  made: CushionMade,
  context: DrawingContext,
): Drawing[] {
  const bolster = made.bolster;
  if (!bolster) return [];
  const p = (l: Length) => printLength(l, context.units);
  const s = made.seam.toMm();
  const [w, h] = [bolster.body[0].toMm(), bolster.body[1].toMm()];
  const e = bolster.end.toMm();
  const round = bolster.section === "round";
  const body: Shape[] = [
    ...flat(0, 0, w, h, s),
    { shape: "sign", sign: "arrow", x: w * 0.14, y: h * 0.72, turnDeg: -90 },
  ];
  if (made.faceCentred) {
    body.push(stroke(line(w / 2, -12, w / 2, h + 12), "centre"));
    body.push(stroke(line(-12, h / 2, w + 12, h / 2), "centre"));
    body.push({ shape: "sign", sign: "lozenge", x: w / 2, y: h / 2 });
  } else body.push({ shape: "words", x: w / 2, y: h / 2, anchor: "middle", text: "body" });
  if (!round)
    for (const at of [1, 2, 3])
      body.push(stroke(line(s, (h * at) / 4, w - s, (h * at) / 4), "fold"));
  if (made.zip) {
    const z = made.zip.toMm();
    body.push(stroke(line((w - z) / 2, h - s, (w + z) / 2, h - s), "cut"));
    body.push({
      shape: "note",
      // As on a cushion's face: its words end before the zip does.
      x: w / 2 + z * 0.42,
      y: h - s - 4,
      dxPaper: -3,
      dyPaper: -5,
      text: `zip ${p(made.zip)}`,
      end: "arrow",
    });
  }
  const end: Shape[] = round
    ? [
        stroke(circle(e / 2, e / 2, e / 2), "hidden"),
        {
          shape: "path",
          d: circle(e / 2, e / 2, e / 2 - s),
          fill: { tone: "paper" },
          pen: "outline",
        },
      ]
    : flat(0, 0, e, e, s);
  end.push({ shape: "words", x: e / 2, y: e / 2, anchor: "middle", text: "end, two" });
  return [
    {
      widthMm: w,
      heightMm: h,
      shapes: body,
      dimensions: [
        across(s, w - s, `${p(made.finished[0])} finished`),
        across(0, w, `${p(bolster.body[0])} cut`, 2),
        down(0, h, `${p(bolster.body[1])} cut`),
      ],
      title: "Body",
      description: `Body of ${fields.cushion}, cut ${p(bolster.body[0])} by ${p(bolster.body[1])}.`,
    },
    {
      widthMm: e,
      heightMm: e,
      shapes: end,
      dimensions: [
        across(s, e - s, `${p(made.finished[1])} finished`),
        across(0, e, `${p(bolster.end)} cut`, 2),
      ],
      title: "Ends",
      description: `Each of two ends of ${fields.cushion}, ${p(bolster.end)} ${round ? "across" : "square"} as cut.`,
    },
  ];
}
