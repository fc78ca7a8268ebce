import { circle, ellipse, line, rect } from "../../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../../drawing/shape.ts";
import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { DrawingContext } from "../../itemDrawing.ts";
import { stroke } from "../clothFace.ts";
import type { FlatCover } from "./flatCover.ts";
import { type FlatPanel, joinsOf } from "./flatPanel.ts";
import { ovalOutline } from "./oval.ts";

export interface FlatView {
  readonly cover: FlatCover;
  readonly finished: readonly [Length, Length];
  readonly round: boolean;
  /** What it covers, as a rectangle in the finished piece from its upper left corner; an ellipse on one without corners. */
  readonly under: {
    readonly word: string;
    readonly left: Length;
    readonly top: Length;
    readonly width: Length;
    readonly height: Length;
  } | null;
  /** Parts of its length from head to foot, `pillows`, `bed`, `foot drop`. */
  readonly parts: readonly { readonly length: Length; readonly word: string }[];
  /** Squares cut out at the foot's corners, across and along. */
  readonly split: readonly [Length, Length] | null;
  readonly title: string;
  readonly description: string;
}

/** Words in a drawing at its usual scales need so much of the piece below an edge, in mm of the piece. */
const WORDS_BELOW_EDGE = 150;

/** A flat cover laid out, head at the top: finished line, edge as cut, joins, what lies under it, and its motif. */
export function flatView(ask: FlatView, context: DrawingContext): Drawing {
  const { cover, finished, under, round } = ask;
  const p = (l: Length) => printLength(l, context.units);
  const [w, h] = [finished[0].toMm(), finished[1].toMm()];
  const [cw, ch] = [cover.cut[0].toMm(), cover.cut[1].toMm()];
  const t = cover.turning.toMm();
  const u = cover.headTurning.toMm();
  // Drawn at its finished size; what quilting takes up is in the cut sizes alone.
  const [ow, oh] = [w + 2 * t, h + u + cover.endTurning.toMm()];
  const shapes: Shape[] = [stroke(rect(0, 0, ow, oh), "hidden")];
  const outline = round ? roundOutline(ask, ow / 2, oh / 2) : rect(t, u, w, h);
  shapes.push({ shape: "path", d: outline, fill: { tone: "paper" }, pen: "outline" });
  const dimensions: Dimension[] = [
    across(t, t + w, `${p(finished[0])} finished`, "bottom", 1),
    across(0, ow, `${p(cover.cut[0])} cut`, "bottom", 2),
    down(0, oh, `${p(cover.cut[1])} cut`, "left", 2),
    down(u, u + h, `${p(finished[1])} finished`, "left", 1),
  ];
  if (under) {
    const [x, y] = [t + under.left.toMm(), u + under.top.toMm()];
    const [uw, uh] = [under.width.toMm(), under.height.toMm()];
    const below = round ? ellipse(ow / 2, oh / 2, uw / 2, uh / 2) : rect(x, y, uw, uh);
    shapes.push(stroke(below, "edge"), {
      shape: "words",
      x: x + uw / 2,
      // Of a shallow one the words stand lower, or its edge would run through them.
      y: y + (round ? uh * 0.22 : Math.max(uh * 0.12, Math.min(uh * 0.36, WORDS_BELOW_EDGE))),
      anchor: "middle",
      text: under.word,
    });
  }
  const face = cover.face;
  if (face) shapes.push(...seamLines(face, cover, ow, oh));
  if (face?.parts) dimensions.push(...seamChain(face, cover, face.sideways ? oh : ow, p));
  let y = u;
  for (const part of ask.parts) {
    const to = y + part.length.toMm();
    dimensions.push(down(y, to, `${p(part.length)} ${part.word}`, "right", face?.sideways ? 2 : 1));
    y = to;
  }
  if (ask.split) {
    const [sx, sy] = [ask.split[0].toMm(), ask.split[1].toMm()];
    for (const x of [t, t + w - sx]) shapes.push(stroke(rect(x, u + h - sy, sx, sy), "cut"));
  }
  const middle = under
    ? [
        t + under.left.toMm() + under.width.toMm() / 2,
        u + under.top.toMm() + under.height.toMm() / 2,
      ]
    : [ow / 2, oh / 2];
  if (face?.centred) {
    const [mx, my] = middle as [number, number];
    shapes.push(
      stroke(line(mx, 0, mx, oh), "centre"),
      stroke(line(0, my, ow, my), "centre"),
      ...(face.gap ? [] : [{ shape: "sign", sign: "lozenge", x: mx, y: my } as const]),
    );
  }
  shapes.push({
    shape: "sign",
    sign: "arrow",
    x: ow * 0.3,
    y: oh * 0.62,
    turnDeg: face?.sideways ? 0 : -90,
  });
  return {
    widthMm: ow,
    heightMm: oh,
    shapes,
    dimensions,
    title: ask.title,
    description: `${ask.description} Cut ${p(cover.cut[0])} by ${p(cover.cut[1])}${cw === ow && ch === oh ? "" : ", with what quilting takes up"}${face?.parts ? `, in ${face.parts.length} parts` : ""}.`,
  };
}

/** The finished edge about (x, y): everywhere as far from what it covers, a circle or an oval. */
function roundOutline({ finished, under }: FlatView, x: number, y: number): string {
  if (!under || under.width.equals(under.height)) return circle(x, y, finished[0].toMm() / 2);
  const top = { a: under.width.toMm() / 2, b: under.height.toMm() / 2 };
  return ovalOutline(x, y, top, under.left.toMm());
}

function across(
  from: number,
  to: number,
  text: string,
  side: "top" | "bottom",
  level: number,
): Dimension {
  return { axis: "horizontal", from, to, side, level, text };
}

function down(
  from: number,
  to: number,
  text: string,
  side: "left" | "right",
  level: number,
): Dimension {
  return { axis: "vertical", from, to, side, level, text };
}

/** Joins as lines over the whole piece. */
function seamLines(face: FlatPanel, cover: FlatCover, ow: number, oh: number): Shape[] {
  const t = cover.turning;
  return joinsOf(face, t).map((at) => {
    const x = at.plus(t).toMm();
    return stroke(face.sideways ? line(0, x, ow, x) : line(x, 0, x, oh), "seam");
  });
}

/** From finished edge to join to join to finished edge. */
function seamChain(
  face: FlatPanel,
  cover: FlatCover,
  whole: number,
  p: (l: Length) => string,
): Dimension[] {
  const t = cover.turning;
  const size = face.sideways ? face.height : face.width;
  const ends = [t.minus(t), ...joinsOf(face, t), size.minus(t.times(2))];
  const scale = (whole - 2 * t.toMm()) / size.minus(t.times(2)).toMm();
  return ends.slice(1).map((to, n) => {
    const from = ends[n] as Length;
    const [a, b] = [t.toMm() + from.toMm() * scale, t.toMm() + to.toMm() * scale];
    const text = p(to.minus(from));
    return face.sideways ? down(a, b, text, "right", 1) : across(a, b, text, "top", 1);
  });
}
