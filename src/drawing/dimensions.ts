import {
  BESIDE_MM,
  GAP_MM,
  isNarrow,
  LEAST_MM,
  type PlacedDimension,
  placedDimensions,
  textFor,
} from "./dimensionPlaces.ts";
import { figure, line } from "./paths.ts";
import { type DrawingStyle, inkOf, penWidth } from "./pens.ts";
import type { Dimension } from "./shape.ts";
import { whiteGround } from "./whiteGround.ts";
import { builtText, builtWidthMm, EM_MM, textWidthMm } from "./words.ts";

const OVERSHOOT_MM = 1.5;
/** Further past the end of its line than this a text is not read as belonging to it. */
const FAR_MM = 5;
/** Arrows of parts that share one text stand inside parts of this length, and nowhere in shorter ones. */
const ARROWS_MM = 6;

export interface Inset {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface Mark {
  readonly svg: string;
  /** Its figures, drawn over the lines of all. */
  readonly figures: string;
  /** Paper rectangle of its text, in the drawing's paper coordinates. */
  readonly text: {
    readonly x1: number;
    readonly y1: number;
    readonly x2: number;
    readonly y2: number;
  };
}

/**
 * Dimension chains on paper around a drawing of `width` by `height` paper millimetres: arrows on a maker's sheet, ticks on an
 * elevation, parts nearer than totals. Returns their SVG and how much room they take beyond each side.
 */
export function drawDimensions(
  dimensions: readonly Dimension[],
  size: { readonly width: number; readonly height: number },
  scale: number,
  style: DrawingStyle,
): { svg: string; inset: Inset } {
  const inset = { left: 0, top: 0, right: 0, bottom: 0 };
  const placed = placedDimensions(dimensions, scale);
  const marks = placed.map((dimension) => drawOne(dimension, placed, size, scale, style));
  for (const [at, dimension] of placed.entries()) {
    const { text } = marks[at] as Mark;
    inset[dimension.side] = Math.max(inset[dimension.side], dimension.offsetMm + OVERSHOOT_MM);
    inset.left = Math.max(inset.left, -text.x1);
    inset.top = Math.max(inset.top, -text.y1);
    inset.right = Math.max(inset.right, text.x2 - size.width);
    inset.bottom = Math.max(inset.bottom, text.y2 - size.height);
  }
  const svg = [...marks.map((mark) => mark.svg), ...marks.map((mark) => mark.figures)].join("");
  return { svg, inset };
}

function drawOne(
  dimension: PlacedDimension,
  all: readonly PlacedDimension[],
  size: { readonly width: number; readonly height: number },
  scale: number,
  style: DrawingStyle,
): Mark {
  const horizontal = dimension.axis === "horizontal";
  const from = Math.min(dimension.from, dimension.to) * scale;
  const to = Math.max(dimension.from, dimension.to) * scale;
  const outward = dimension.side === "top" || dimension.side === "left" ? -1 : 1;
  const edge = outward < 0 ? 0 : horizontal ? size.height : size.width;
  const at = edge + outward * dimension.offsetMm;
  const span = to - from;
  const { only } = dimension;
  const said = only === "lines" ? "" : textFor(dimension, span);
  const wide = textWidthMm(said);
  const narrow = only === undefined && isNarrow(dimension, scale);
  // (along, off) to (x, y)
  const p = (along: number, off: number) =>
    horizontal ? ([along, off] as const) : ([off, along] as const);
  const segment = (a: number, offA: number, b: number, offB: number) =>
    line(...p(a, offA), ...p(b, offB));
  const ink = inkOf(style);
  const stroke = `stroke="${ink}" stroke-width="${penWidth("dimension", style)}"`;
  const lines = [
    segment(from, edge + outward * GAP_MM, from, at + outward * OVERSHOOT_MM),
    segment(to, edge + outward * GAP_MM, to, at + outward * OVERSHOOT_MM),
    segment(from, at, to, at),
  ];
  let heads = "";
  if (style === "workshop") {
    const outside = only === undefined && span < LEAST_MM[dimension.axis];
    if (outside) lines.push(segment(from - 5, at, from, at), segment(to, at, to + 5, at));
    if (only === undefined || span >= ARROWS_MM)
      heads =
        arrow(p(from, at), horizontal, outside ? 1 : -1, ink) +
        arrow(p(to, at), horizontal, outside ? -1 : 1, ink);
  } else {
    for (const end of [from, to]) {
      const [x, y] = p(end, at);
      lines.push(line(x - 0.9, y + 0.9, x + 0.9, y - 0.9));
    }
  }
  const arrowRoom = style === "workshop" && span < LEAST_MM[dimension.axis] ? 6 : 1.6;
  const place = narrow
    ? beside(dimension, all, scale, from, to, at, wide, arrowRoom, horizontal)
    : { along: (from + to) / 2, off: at - 1, anchor: "middle", turned: !horizontal };
  const [x, y] = p(place.along, place.off);
  const turn = place.turned ? ` transform="rotate(-90 ${figure(x)} ${figure(y)})"` : "";
  // Words over several parts stand on white, clear of the lines between them.
  const ground =
    only === "words"
      ? whiteGround(x - wide / 2, y, wide)
      : place.anchor === "start" && horizontal && narrow
        ? whiteGround(x, y, builtWidthMm(said))
        : "";
  const text = `${ground}<text x="${figure(x)}" y="${figure(y)}" font-size="${EM_MM}" text-anchor="${place.anchor}" fill="${ink}"${turn}>${builtText(said)}</text>`;
  return {
    svg: only === "words" ? "" : `<path d="${lines.join("")}" fill="none" ${stroke}/>${heads}`,
    figures: said === "" ? "" : text,
    text: textBox(x, y, wide, place.anchor, place.turned),
  };
}

/**
 * Text of a part too short for it: past the end where no neighbour of its chain stands, else before its beginning, else above the
 * line. Vertical parts carry it level, beside the line and away from the drawing.
 */
function beside(
  dimension: PlacedDimension,
  all: readonly PlacedDimension[],
  scale: number,
  from: number,
  to: number,
  at: number,
  wide: number,
  room: number,
  horizontal: boolean,
) {
  if (!horizontal) {
    const left = dimension.side === "left";
    return {
      along: (from + to) / 2 + 1.2,
      off: at + (left ? -1 : 1) * BESIDE_MM,
      anchor: left ? "end" : "start",
      turned: false,
    };
  }
  const chain = all.filter(
    (d) => d !== dimension && d.side === dimension.side && d.level === dimension.level,
  );
  const taken = (a: number, b: number) =>
    chain.some((d) => Math.min(d.from, d.to) * scale < b && Math.max(d.from, d.to) * scale > a);
  const own = builtWidthMm(textFor(dimension, to - from));
  const clear = pastLines(to + room, own, outerLines(dimension, all, scale, to));
  // Far from its line a figure is nobody's: nearer by a line that runs through its white.
  const after = clear - to - room > FAR_MM ? to + room : clear;
  if (!taken(to + 0.1, after + wide))
    return { along: after, off: at + 1.2, anchor: "start", turned: false };
  if (!taken(from - room - wide, from - 0.1))
    return { along: from - room, off: at + 1.2, anchor: "end", turned: false };
  return { along: (from + to) / 2, off: at - 1, anchor: "middle", turned: false };
}

/** Where the lines of chains further out run past this one, beyond `end`, nearest first. */
function outerLines(
  dimension: PlacedDimension,
  all: readonly PlacedDimension[],
  scale: number,
  end: number,
): number[] {
  return all
    .filter((d) => d.side === dimension.side && d.offsetMm > dimension.offsetMm)
    .flatMap((d) => [d.from * scale, d.to * scale])
    .filter((at) => at > end + 0.1)
    .toSorted((a, b) => a - b);
}

/** Where a text begins that none of these lines runs through. */
function pastLines(start: number, wide: number, lines: readonly number[]): number {
  return lines.reduce(
    (from, at) => (at > from - 1 && at < from + wide + 1 ? at + 1.2 : from),
    start,
  );
}

function arrow(
  [x, y]: readonly [number, number],
  horizontal: boolean,
  way: number,
  ink: string,
): string {
  const turn = (horizontal ? 0 : 90) + (way < 0 ? 180 : 0);
  return `<path d="M0 0L-2.6 -0.5V0.5Z" fill="${ink}" transform="translate(${figure(x)} ${figure(y)}) rotate(${turn})"/>`;
}

function textBox(
  x: number,
  y: number,
  wide: number,
  anchor: string,
  turned: boolean,
): Mark["text"] {
  const start = anchor === "middle" ? -wide / 2 : anchor === "end" ? -wide : 0;
  if (turned) return { x1: x - EM_MM, x2: x + 1, y1: y - start - wide, y2: y - start };
  return { x1: x + start, x2: x + start + wide, y1: y - EM_MM, y2: y + 1 };
}
