import { line, rect } from "../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import { printLength } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext, ItemDrawing } from "../itemDrawing.ts";
import type { WallRun } from "../itemKind.ts";
import type { WallpaperMade } from "./pieces.ts";
import type { WallpaperFields } from "./schema.ts";
import { wallpaperSheet } from "./sheet.ts";

/** Each run of wall from inside the room: strips numbered as they are hung, openings, and the levels at which the motif comes again. */
function workshop(_: WallpaperFields, made: WallpaperMade, context: DrawingContext): Drawing[] {
  const drawings: Drawing[] = [];
  let number = 0;
  for (const stretch of made.stretches) {
    // A stretch goes on round its corners: a strip may begin on one wall and end on the next.
    let before = 0;
    const first = number;
    for (const run of stretch.runs) {
      drawings.push(runDrawing(run, made, context, before, first));
      before += run.width.toMm();
    }
    number += Math.ceil(Math.round((before / (made.rollWidth?.toMm() ?? before)) * 1e6) / 1e6);
  }
  return drawings;
}

function runDrawing(
  run: WallRun,
  made: WallpaperMade,
  context: DrawingContext,
  before: number,
  first: number,
): Drawing {
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const width = run.width.toMm();
  const height = made.height.toMm();
  const roll = made.rollWidth?.toMm() ?? width;
  const shapes: Shape[] = [
    { shape: "path", d: rect(0, 0, width, height), fill: { tone: "paper" }, pen: "outline" },
  ];
  const openings = run.openings.map((o) => ({
    x: o.fromLeft.toMm() - run.fromLeft.toMm(),
    w: o.width.toMm(),
    y: height - o.foot.toMm() - o.height.toMm(),
    h: o.height.toMm(),
    what: o.what,
  }));
  const covered = (x: number, y: number) =>
    openings.some((o) => x > o.x - 60 && x < o.x + o.w + 60 && y > o.y - 60 && y < o.y + o.h + 60);
  const edges: number[] = [];
  const hung: number[] = [];
  const startAt = Math.floor(before / roll);
  for (let at = startAt; at * roll < before + width - 0.001; at += 1) {
    const left = at * roll - before;
    const seenLeft = Math.max(0, left);
    const seenRight = Math.min(width, left + roll);
    if (left > 0.001) edges.push(left);
    const middle = (seenLeft + seenRight) / 2;
    hung.push(first + at + 1);
    if (seenRight - seenLeft < 90) continue;
    const y =
      [0.16, 0.9, 0.5].map((share) => height * share).find((each) => !covered(middle, each)) ??
      height * 0.05;
    shapes.push({
      shape: "words",
      x: middle,
      y,
      text: String(first + at + 1),
      anchor: "middle",
      weight: "bold",
    });
    shapes.push(...levels(made, seenLeft, seenRight, height, at));
  }
  for (const x of edges) shapes.push(stroke(line(x, 0, x, height), "seam"));
  const bands: Dimension[] = [];
  for (const border of made.borders) {
    const foot = height - border.foot.toMm();
    const head = foot - border.width.toMm();
    shapes.push({
      shape: "path",
      d: rect(0, head, width, foot - head),
      fill: { tone: "paper" },
      pen: "outline",
    });
    // A narrow border has no room for its name: the words column gives it with its height.
    if (foot - head >= 200)
      shapes.push({
        shape: "words",
        x: width / 2,
        y: (head + foot) / 2,
        text: border.name,
        anchor: "middle",
        dyPaper: 1.2,
      });
    if (border.at !== "ceiling")
      bands.push({
        axis: "vertical",
        from: foot,
        to: height,
        side: "left",
        level: 1,
        text: p(border.foot),
      });
  }
  for (const o of openings) {
    const left = Math.max(0, o.x);
    const right = Math.min(width, o.x + o.w);
    if (right <= left) continue;
    shapes.push({
      shape: "path",
      d: rect(left, Math.max(0, o.y), right - left, Math.min(height, o.y + o.h) - Math.max(0, o.y)),
      fill: { tone: "paper" },
      pen: "outline",
    });
    shapes.push({
      shape: "words",
      x: (left + right) / 2,
      y: Math.max(0, o.y) + o.h / 2,
      text: o.what,
      anchor: "middle",
    });
  }
  const dimensions: Dimension[] = [
    { axis: "horizontal", from: 0, to: width, side: "bottom", level: 1, text: p(run.width) },
    ...bands,
    {
      axis: "vertical",
      from: 0,
      to: height,
      side: "left",
      level: bands.length > 0 ? 2 : 1,
      text: p(made.height),
    },
  ];
  const one = edges[0] !== undefined && edges[1] !== undefined ? [edges[0], edges[1]] : null;
  if (one && made.rollWidth)
    dimensions.push({
      axis: "horizontal",
      from: one[0] as number,
      to: one[1] as number,
      side: "top",
      level: 1,
      text: p(made.rollWidth),
    });
  if (made.repeat && made.repeat.up.toMm() < height)
    dimensions.push({
      axis: "vertical",
      from: 0,
      to: made.repeat.up.toMm(),
      side: "right",
      level: 1,
      text: `${p(made.repeat.up)} repeat`,
      brief: p(made.repeat.up),
    });
  return {
    widthMm: width,
    heightMm: height,
    shapes,
    dimensions,
    title: `${run.wall[0]?.toUpperCase()}${run.wall.slice(1)} wall, ${stripWords(hung)}`,
    description: `${p(run.width)} wide, ${p(made.height)} high, strips numbered from the left.`,
  };
}

/** `strip 1`, `strips 2 to 4`: which of the strips, in the order of hanging, a drawing shows. */
function stripWords(hung: readonly number[]): string {
  const [from, to] = [hung[0] ?? 1, hung.at(-1) ?? 1];
  return from === to ? `strip ${from}` : `strips ${from} to ${to}`;
}

/** Dotted levels of the motif, on a half-drop shifted on each second strip. */
function levels(
  made: WallpaperMade,
  from: number,
  to: number,
  height: number,
  at: number,
): Shape[] {
  const up = made.repeat?.up.toMm() ?? 0;
  if (up < 60) return [];
  const shift = made.repeat?.match === "half-drop" && at % 2 !== 0 ? up / 2 : 0;
  const out: Shape[] = [];
  for (let y = shift > 0 ? shift : up; y < height - 1; y += up)
    out.push(stroke(line(from, y, to, y), "level"));
  return out;
}

export const wallpaperDrawing: ItemDrawing<WallpaperFields, WallpaperMade> = {
  kind: "wallpaper",
  // Paper is the wall's own ground, which the elevation of the room lays behind everything.
  elevation: () => null,
  plan: () => null,
  workshop,
  sheet: wallpaperSheet,
};
