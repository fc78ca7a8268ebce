import { line, rect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { capital } from "../../units/capital.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { stroke } from "../common/clothFace.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import type { WallRun } from "../itemKind.ts";
import { borderBands } from "./borderDrawing.ts";
import { firstWall, headWall, wayWords } from "./ceiling.ts";
import type { WallpaperMade } from "./pieces.ts";
import { type OpenedWall, wallDimensions } from "./wallDimensions.ts";

/** A strip has its number where so much of its width or more lies on one face: what is narrower has no room for it. */
const NUMBERED = 0.45;
/** Numbers and names keep so far from the edges of openings, millimetres. */
const CLEAR = 60;

interface Opening {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  readonly what: string;
}

/** Where the faces of an opened wall end, from its left end, that end and the right one with them, millimetres. */
function faceEnds(runs: readonly WallRun[]): number[] {
  let left = 0;
  return [
    0,
    ...runs.map((run) => {
      left += run.width.toMm();
      return left;
    }),
  ];
}

/** Openings of the faces, each clipped to its face, from the opened wall's left end and from the paper's head. */
function openingsOf(runs: readonly WallRun[], height: number): Opening[] {
  let left = 0;
  return runs.flatMap((run) => {
    const at = left;
    left += run.width.toMm();
    return run.openings.flatMap((o) => {
      const from = Math.max(at, at + o.fromLeft.toMm() - run.fromLeft.toMm());
      const to = Math.min(left, at + o.fromLeft.plus(o.width).toMm() - run.fromLeft.toMm());
      const top = Math.max(0, height - o.foot.toMm() - o.height.toMm());
      const foot = Math.min(height, height - o.foot.toMm());
      return to > from && foot > top
        ? [{ x: from, y: top, w: to - from, h: foot - top, what: o.what }]
        : [];
    });
  });
}

function openingShapes(openings: readonly Opening[]): Shape[] {
  return openings.flatMap(({ x, y, w, h, what }): Shape[] => [
    { shape: "path", d: rect(x, y, w, h), fill: { tone: "paper" }, pen: "outline" },
    { shape: "words", x: x + w / 2, y: y + h / 2, text: what, anchor: "middle" },
  ]);
}

/** Dotted levels of the motif, on a half-drop shifted on each second strip. */
function levels(made: WallpaperMade, from: number, to: number, at: number): Shape[] {
  const up = made.repeat?.up.toMm() ?? 0;
  const height = made.height.toMm();
  if (up < 60) return [];
  const shift = made.repeat?.match === "half-drop" && at % 2 !== 0 ? up / 2 : 0;
  const out: Shape[] = [];
  for (let y = shift > 0 ? shift : up; y < height - 1; y += up)
    out.push(stroke(line(from, y, to, y), "level"));
  return out;
}

/** The widest part of a strip that no corner crosses. */
function widest(from: number, to: number, corners: readonly number[]): readonly [number, number] {
  const ends = [from, ...corners.filter((x) => x > from && x < to), to];
  const parts = ends
    .slice(1)
    .map((end, at): readonly [number, number] => [ends[at] as number, end]);
  return parts.reduce((a, b) => (b[1] - b[0] > a[1] - a[0] ? b : a));
}

/** The strips of an opened wall: their numbers and levels, the joins between them, and which they are. */
function stripsOf(
  wall: OpenedWall,
  made: WallpaperMade,
  width: number,
  openings: readonly Opening[],
  corners: readonly number[],
) {
  const height = made.height.toMm();
  const roll = made.rollWidth?.toMm() ?? width;
  const covered = (x: number, y: number) =>
    openings.some(
      (o) => x > o.x - CLEAR && x < o.x + o.w + CLEAR && y > o.y - CLEAR && y < o.y + o.h + CLEAR,
    );
  const shapes: Shape[] = [];
  const edges: number[] = [];
  const hung: number[] = [];
  for (let at = Math.floor(wall.beforeMm / roll); at * roll < wall.beforeMm + width - 0.001; at++) {
    const left = at * roll - wall.beforeMm;
    const [from, to] = [Math.max(0, left), Math.min(width, left + roll)];
    if (left > 0.001) edges.push(left);
    hung.push(wall.first + at + 1);
    shapes.push(...levels(made, from, to, at));
    const [begin, end] = widest(from, to, corners);
    if (end - begin < NUMBERED * roll) continue;
    const x = (begin + end) / 2;
    const y = [0.16, 0.9, 0.5].map((share) => height * share).find((each) => !covered(x, each));
    shapes.push({
      shape: "words",
      x,
      y: y ?? height * 0.05,
      text: String(wall.first + at + 1),
      anchor: "middle",
      weight: "bold",
    });
  }
  const joins = edges.map((x) => stroke(line(x, 0, x, height), "seam"));
  return { shapes: [...shapes, ...joins], edges, hung };
}

/** `strip 1`, `strips 2 to 4`: which of the strips, in the order of hanging, a drawing shows. */
function stripWords(hung: readonly number[]): string {
  const [from, to] = [hung[0] ?? 1, hung.at(-1) ?? 1];
  return from === to ? `strip ${from}` : `strips ${from} to ${to}`;
}

/** A wall of paper from inside the room: strips numbered as they are hung, corners, openings, and the levels at which the motif comes again. */
export function wallDrawing(
  wall: OpenedWall,
  made: WallpaperMade,
  context: DrawingContext,
): Drawing {
  const p = (l: Length) => printLength(l, context.units);
  const whole = Length.sum(wall.runs.map((run) => run.width));
  const [width, height] = [whole.toMm(), made.height.toMm()];
  const ends = faceEnds(wall.runs);
  const openings = openingsOf(wall.runs, height);
  const strips = stripsOf(wall, made, width, openings, ends.slice(1, -1));
  const bands = borderBands(made, width, context.units);
  const name = wall.runs[0]?.wall ?? "";
  return {
    widthMm: width,
    heightMm: height,
    shapes: [
      { shape: "path", d: rect(0, 0, width, height), fill: { tone: "paper" }, pen: "outline" },
      ...strips.shapes,
      ...bands.shapes,
      ...ends.slice(1, -1).map((x) => stroke(line(x, 0, x, height), "cut")),
      ...openingShapes(openings),
    ],
    dimensions: [
      ...bands.dimensions,
      ...wallDimensions(
        { wall, ends, joins: strips.edges, banded: bands.dimensions.length > 0 },
        made,
        p,
      ),
    ],
    ...(made.ceiling
      ? {
          title: `Ceiling, ${stripWords(strips.hung)}; ${firstWall(made.ceiling)} wall at the left, ${headWall(made.ceiling)} wall at the head`,
          description: `${p(whole)} by ${p(made.height)}, strips ${wayWords(made.ceiling)}, numbered from the ${firstWall(made.ceiling)} wall.`,
        }
      : {
          title: `${capital(name)} wall, ${stripWords(strips.hung)}`,
          description: `${p(whole)} wide, ${p(made.height)} high, strips numbered from the left.`,
        }),
  };
}
