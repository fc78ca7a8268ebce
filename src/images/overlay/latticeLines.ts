import type { ClothMeasure, MeasuredRepeat } from "../../cloth/clothMeasure.ts";
import { motifCentre } from "../../cloth/motif/motifCentre.ts";
import { crop } from "../../cloth/pixels/pixels.ts";
import type { ClothView } from "../../cloth/reading/clothView.ts";
import { type RepeatShape, repeatShape, type Vector } from "./drawRepeatShape.ts";

/** A label, centred on a place in pixels. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

/** The measured repeat and motif as SVG over a prepared photograph, and where their labels stand (in pixels). */
export interface DrawnLattice {
  readonly svg: string;
  readonly labels: readonly Label[];
}

/** Repeats smaller than this, in pixels, are drawn by several at once: single ones would hide the cloth. */
const CLOSEST_PX = 64;
const LINE = "#ffffff";
const CASING = "#1f1c18";
const MOTIF = "#ffd34d";
/** What is not cloth, and what lies beside the one repeat, stand back. */
const VEIL = "#faf7f0";

/**
 * The columns of the repeat over the part that was measured, one repeat as it is cut by (or one repeat of a stripe's bands) with its
 * sizes, and a bar as long as the motif. What is not sure is dashed. `say` prints millimetres.
 */
export function latticeLines(
  view: ClothView,
  measure: ClothMeasure,
  say: (mm: number) => string,
): DrawnLattice {
  const { part, mmPerPx } = view;
  const { repeat, motifMm } = measure.pattern;
  const centre = motifMm ? motifCentre(crop(view.whole, part), motifMm, mmPerPx) : null;
  const motif: Vector = [
    part.x + part.width * (centre?.x ?? 0.5),
    part.y + part.height * (centre?.y ?? 0.5),
  ];
  const labels: Label[] = [];
  const parts = [clip(view), leftOut(view)];
  const shape = repeat && repeatShape(repeat, mmPerPx);
  const at = shape ? roomiest(motif, shape, view) : motif;
  if (repeat && shape) parts.push(columns(view, repeat, shape, at, say, labels));
  else if (repeat) parts.push(bands(view, repeat, at, say, labels));
  if (motifMm !== null) parts.push(motifBar(view, measure, at, say, labels));
  return { svg: parts.join(""), labels };
}

function clip({ part }: ClothView): string {
  return `<clipPath id="part"><rect x="${part.x}" y="${part.y}" width="${part.width}" height="${part.height}"/></clipPath>`;
}

function leftOut({ whole, part }: ClothView): string {
  if (part.width >= whole.width && part.height >= whole.height) return "";
  return `<path d="M0 0H${whole.width}V${whole.height}H0Z M${part.x} ${part.y}v${part.height}h${part.width}v${-part.height}Z" fill="${VEIL}" fill-opacity="0.72" fill-rule="evenodd"/>`;
}

/** Of the places like the motif's the one around which a whole repeat lies most in the part. */
function roomiest(from: Vector, { up, over }: RepeatShape, { part }: ClothView): Vector {
  const wanted: Vector = [part.x + part.width / 2, part.y + part.height / 2];
  const away = ([x, y]: Vector) => Math.hypot(x - wanted[0], y - wanted[1]);
  let best = from;
  for (let i = -60; i <= 60; i++) {
    for (let j = -60; j <= 60; j++) {
      const at = sum(from, times(over, i), times(up, j));
      if (away(at) < away(best)) best = at;
    }
  }
  return best;
}

/** The columns side by side, each with the feet of its repeats, and one repeat set off from the rest. */
function columns(
  view: ClothView,
  repeat: MeasuredRepeat,
  shape: RepeatShape,
  middle: Vector,
  say: (mm: number) => string,
  labels: Label[],
): string {
  const { part } = view;
  const across = Math.max(1, Math.ceil(CLOSEST_PX / Math.hypot(...shape.right)));
  // Half-drop columns are drawn by twos, or the drop would be lost.
  const many = repeat.match === "half-drop" && across > 1 && across % 2 === 1 ? across + 1 : across;
  const high = Math.max(1, Math.ceil(CLOSEST_PX / Math.hypot(...shape.up)));
  const up = times(shape.up, high);
  const right = times(shape.right, many);
  const over = many === 1 ? shape.over : right;
  const corner = sum(middle, times(right, -0.5), times(up, -0.5));
  const far = Math.hypot(part.width, part.height);
  const most = Math.min(200, Math.ceil(far / Math.hypot(...right)) + 1);
  const rows = Math.min(200, Math.ceil(far / Math.hypot(...up)) + most);
  const dash = repeat.sure ? "" : ' stroke-dasharray="10 8"';
  const thin: string[] = [];
  for (let i = -most; i <= most; i++) {
    const foot = sum(corner, times(over, i));
    thin.push(path(sum(foot, times(up, -rows)), sum(foot, times(up, rows))));
    for (let j = -rows; j <= rows; j++) {
      const left = sum(foot, times(up, j));
      if (isNear(left, part, far / 4)) thin.push(path(left, sum(left, right)));
    }
  }
  const cell = outline(corner, right, up);
  const { x, y, width, height } = part;
  const parts = [
    `<path d="M${x} ${y}h${width}v${height}h${-width}Z${cell}" fill="${VEIL}" fill-opacity="0.34" fill-rule="evenodd"/>`,
    `<path d="${thin.join("")}" stroke="${CASING}" stroke-opacity="0.35" stroke-width="3"${dash}/>`,
    `<path d="${thin.join("")}" stroke="${LINE}" stroke-opacity="0.9" stroke-width="1.6"${dash}/>`,
    `<path d="${cell}" stroke="${CASING}" stroke-width="6"${dash}/>`,
    `<path d="${cell}" stroke="${LINE}" stroke-width="3"${dash}/>`,
  ];
  const { verticalMm, horizontalMm, match } = repeat;
  const doubt = repeat.sure ? "" : ", not sure";
  const inAll = (n: number) => (n === 1 ? "" : `${n} repeats, each `);
  // Above the middle, where the motif is.
  const upAt = sum(corner, times(up, 0.78));
  const acrossAt = sum(corner, times(right, 0.5));
  if (verticalMm !== null && horizontalMm !== null && match !== "other") {
    const way = match === "half-drop" ? "half-drop" : "straight";
    labels.push({ x: upAt[0], y: upAt[1], text: `${inAll(high)}${say(verticalMm)} up${doubt}` });
    const text = `${inAll(many)}${say(horizontalMm)} across, ${way}${doubt}`;
    labels.push({ x: acrossAt[0], y: acrossAt[1], text });
  } else {
    const long = (v: Vector) => say(Math.hypot(...v) * view.mmPerPx);
    labels.push({ x: upAt[0], y: upAt[1], text: `${inAll(high)}${long(shape.up)}` });
    const text = `${inAll(many)}${long(shape.right)}, set askew${doubt}`;
    labels.push({ x: acrossAt[0], y: acrossAt[1], text });
  }
  return `<g clip-path="url(#part)">${parts.join("")}</g>`;
}

/** A line along the run at each repeat of a stripe, and one repeat set off from the rest. */
function bands(
  view: ClothView,
  repeat: MeasuredRepeat,
  middle: Vector,
  say: (mm: number) => string,
  labels: Label[],
): string {
  const { part, mmPerPx } = view;
  const one = (repeat.lattice[0] as Vector).map((v) => v / mmPerPx) as unknown as Vector;
  const high = Math.max(1, Math.ceil(CLOSEST_PX / Math.hypot(...one)));
  const step = times(one, high);
  const period = Math.hypot(...step);
  const far = Math.hypot(part.width, part.height);
  const along = times([-step[1] / period, step[0] / period], far);
  const most = Math.min(200, Math.ceil(far / period) + 1);
  const dash = repeat.sure ? "" : ' stroke-dasharray="10 8"';
  const corner = sum(middle, times(step, -0.5));
  const thin: string[] = [];
  for (let i = -most; i <= most; i++) {
    const at = sum(corner, times(step, i));
    thin.push(path(sum(at, times(along, -1)), sum(at, along)));
  }
  const cell = outline(sum(corner, times(along, -1)), step, times(along, 2));
  const { x, y, width, height } = part;
  labels.push({
    x: middle[0],
    y: middle[1] - 0.16 * height,
    text: `${high === 1 ? "" : `${high} repeats, each `}${say(Math.hypot(...(repeat.lattice[0] as Vector)))} from band to band${repeat.sure ? "" : ", not sure"}`,
  });
  const parts = [
    `<path d="M${x} ${y}h${width}v${height}h${-width}Z${cell}" fill="${VEIL}" fill-opacity="0.34" fill-rule="evenodd"/>`,
    `<path d="${thin.join("")}" stroke="${CASING}" stroke-opacity="0.5" stroke-width="4"${dash}/>`,
    `<path d="${thin.join("")}" stroke="${LINE}" stroke-width="2"${dash}/>`,
    `<path d="${cell}" stroke="${CASING}" stroke-width="6"${dash}/>`,
    `<path d="${cell}" stroke="${LINE}" stroke-width="3"${dash}/>`,
  ];
  return `<g clip-path="url(#part)">${parts.join("")}</g>`;
}

/** A bar with ends, as long as the motif: level, or for a stripe across the run. */
function motifBar(
  { mmPerPx, part }: ClothView,
  { pattern }: ClothMeasure,
  middle: Vector,
  say: (mm: number) => string,
  labels: Label[],
): string {
  const motifMm = pattern.motifMm as number;
  const { kind, directionDeg } = pattern;
  const long = motifMm / mmPerPx;
  const turn = directionDeg === null ? 0 : ((directionDeg + 90) * Math.PI) / 180;
  const way: Vector = [Math.cos(turn), -Math.sin(turn)];
  const [from, to] = [sum(middle, times(way, -long / 2)), sum(middle, times(way, long / 2))];
  const end = times([-way[1], way[0]], 9);
  const d = [
    path(from, to),
    ...[from, to].map((at) => path(sum(at, times(end, -1)), sum(at, end))),
  ].join("");
  const below = Math.min(middle[1] + 34, part.y + part.height - 20);
  const what = kind === "stripe" ? "a band" : kind === "check" ? "a square" : "the motif";
  labels.push({ x: middle[0], y: below, text: `${what}, ${say(motifMm)}` });
  return `<path d="${d}" stroke="${CASING}" stroke-width="8" stroke-linecap="round"/><path d="${d}" stroke="${MOTIF}" stroke-width="4" stroke-linecap="round"/>`;
}

function outline(corner: Vector, right: Vector, up: Vector): string {
  const corners = [corner, sum(corner, right), sum(corner, right, up), sum(corner, up)];
  return `M${corners.map(point).join("L")}Z`;
}

function path(from: Vector, to: Vector): string {
  return `M${point(from)}L${point(to)}`;
}

function point([x, y]: Vector): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}

function sum(...vectors: readonly Vector[]): Vector {
  return [vectors.reduce((all, [x]) => all + x, 0), vectors.reduce((all, [, y]) => all + y, 0)];
}

function times([x, y]: Vector, by: number): Vector {
  return [x * by, y * by];
}

function isNear([x, y]: Vector, part: ClothView["part"], far: number): boolean {
  return (
    x >= part.x - far &&
    y >= part.y - far &&
    x <= part.x + part.width + far &&
    y <= part.y + part.height + far
  );
}
