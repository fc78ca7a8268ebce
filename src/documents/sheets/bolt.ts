import { builtText, textWidthMm } from "../../drawing/words.ts";
import type { ClothQuantity, PlannedPiece } from "../../quantities/quantityTypes.ts";
import { lotOfLength } from "../../quantities/text/lotWords.ts";
import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import { escapeHtml, type Markup } from "../words/marks.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { label, labelBox, pieceLabel } from "./boltLabels.ts";
import { lozenges, middleLines, motifBoxes } from "./boltMotifs.ts";
import { ROW_MM, type Row, rowsOf, scaleOf } from "./boltScale.ts";
import { clearShift, type LabelBox, meets } from "./labelPlaces.ts";
import { type OffCut, offCutsOf } from "./offCuts.ts";
import { stripLabel } from "./stripLabel.ts";

const r = (n: number): string => svgNumber(n, 2);
/** Running dimensions stand upright, so they need this much room from one to the next. */
const STEP = 3.9;
/** From a row's foot to the distances below it, which stand upright. */
const DISTANCES = 3;
/** What stands beside a row: the letters of the first distance, and the distances from the left selvedge. */
const BEFORE = 1.6;
const SIDE = 14;
/** Room below a row for the longest distance that may be written there. */
function below({ plan }: ClothQuantity, units: UnitSystem): number {
  const ends = plan.pieces.flatMap((p) => [p.y, p.y.plus(p.height)]);
  const words = new Set([...ends, ...plan.lengths].map((each) => printLength(each, units)));
  // Figures with a built fraction run narrower than `textWidthMm` says, and the letters of a unit do not.
  const widths = [...words].map((text) =>
    units === "inches"
      ? textWidthMm(text.replace(/\d+\/\d+/, "88"), 3.2) * 0.85
      : textWidthMm(text, 3.2) + 0.4,
  );
  return DISTANCES + Math.max(8, ...widths);
}

/** Off-cuts with a shorter side than this go with the shreds. */
const LEAST_OFF_CUT = Length.mm(100);

interface Sheet {
  readonly cloth: ClothQuantity;
  readonly scale: number;
  readonly width: number;
  readonly high: number;
  readonly units: UnitSystem;
  readonly numberOf: ReadonlyMap<string, number>;
  readonly offCuts: readonly OffCut[];
  /** With feet and tops in millimetres, worked out once: a plan may have thousands. */
  readonly pieces: readonly {
    readonly piece: PlannedPiece;
    readonly length: number;
    readonly from: number;
    readonly to: number;
  }[];
}

/**
 * The cutting plan of one cloth, black on white, one drawing a row so that a long cloth can run over pages: face up, the pattern
 * pointing right, the left selvedge at the top and the cloth's start at the left; waste hatched, flaws crossed, motifs printed
 * through. Distances run from one datum each way: the start of the length, and the left selvedge.
 */
export function boltRows(
  cloth: ClothQuantity,
  numberOf: ReadonlyMap<string, number>,
  units: UnitSystem,
  prefix: string,
): Markup[] {
  const scale = scaleOf(cloth);
  const width = cloth.usableWidth.toMm();
  const offCuts = offCutsOf(cloth.plan, cloth.usableWidth, LEAST_OFF_CUT);
  const pieces = cloth.plan.pieces.map((piece) => ({
    piece,
    length: piece.length,
    from: piece.y.toMm(),
    to: piece.y.plus(piece.height).toMm(),
  }));
  const sheet = { cloth, scale, width, high: width / scale, units, numberOf, offCuts, pieces };
  const rows = rowsOf(cloth, scale);
  const foot = below(cloth, units);
  return rows.map((row, at) => {
    const id = `${prefix}-r${at}`;
    const y0 = headroom(row);
    const height = y0 + sheet.high + foot;
    const here = piecesIn(sheet, row);
    const said = here.map((p) => `${numberOf.get(p.id)}: ${p.piece}`).join("; ");
    const whole = BEFORE + ROW_MM + SIDE - 1.6;
    return {
      html: `<svg xmlns="http://www.w3.org/2000/svg" class="drawn" width="${whole}mm" height="${r(height)}mm" viewBox="${-BEFORE} 0 ${whole} ${r(height)}" role="img" aria-labelledby="${id}-t ${id}-d" font-family="'Alegreya Sans',sans-serif"><title id="${id}-t">Cutting plan, one to ${scale}${rows.length > 1 ? `, part ${at + 1} of ${rows.length}` : ""}</title><desc id="${id}-d">${escapeHtml(said)}</desc>${rowDrawing(sheet, row, y0, id)}</svg>`,
    };
  });
}

/** How long the drawing is on paper at most, millimetres. */
export function boltWidth(cloth: ClothQuantity): number {
  const scale = scaleOf(cloth);
  return Math.max(0, ...rowsOf(cloth, scale).map((row) => (row.to - row.from) / scale));
}

/** Room above a row: the start of a length has words there. */
function headroom(row: Row): number {
  return row.from === 0 ? 5.4 : 2;
}

/** How tall all rows of the drawing are on paper together, millimetres. */
export function boltHeight(cloth: ClothQuantity, units: UnitSystem): number {
  const scale = scaleOf(cloth);
  const high = cloth.usableWidth.toMm() / scale + below(cloth, units);
  return rowsOf(cloth, scale).reduce((sum, row) => sum + headroom(row) + high, 0);
}

/** The scale of the plan, for the words above it. */
export function boltScale(cloth: ClothQuantity): number {
  return scaleOf(cloth);
}

/** `15 1/4″ × 54″ (3)`, the largest first: what is left over whole. */
export function offCutWords(cloth: ClothQuantity, units: UnitSystem): string[] {
  const counts = new Map<string, { area: number; count: number }>();
  for (const { width, height } of offCutsOf(cloth.plan, cloth.usableWidth, LEAST_OFF_CUT)) {
    const text = `${printLength(width, units)} × ${printLength(height, units)}`;
    const same = counts.get(text);
    if (same) same.count++;
    else counts.set(text, { area: width.toMm() * height.toMm(), count: 1 });
  }
  return [...counts]
    .sort((a, b) => b[1].area - a[1].area)
    .map(([text, { count }]) => (count > 1 ? `${text} (${count})` : text));
}

function piecesIn({ pieces }: Sheet, row: Row): PlannedPiece[] {
  return pieces
    .filter((p) => p.length === row.length && p.from < row.to - 0.5 && p.to > row.from + 0.5)
    .map((p) => p.piece);
}

function rowDrawing(sheet: Sheet, row: Row, y0: number, id: string): string {
  const { cloth, scale, high } = sheet;
  const long = (row.to - row.from) / scale;
  let hatch = "";
  for (let x = -high; x < long; x += 2) hatch += `M${r(x)} ${r(y0 + high)}l${r(high)} ${r(-high)}`;
  const ground = `<clipPath id="${id}"><rect x="0" y="${r(y0)}" width="${r(long)}" height="${r(high)}"/></clipPath><path d="${hatch}" clip-path="url(#${id})" stroke="#000" stroke-width=".13" fill="none"/>`;
  const edges = `<path d="M0 ${r(y0)}H${r(long)}M0 ${r(y0 + high)}H${r(long)}" stroke="#000" stroke-width=".5"/><path d="M0 ${r(y0 - 1)}v${r(high + 2)}M${r(long)} ${r(y0 - 1)}v${r(high + 2)}" stroke="#000" stroke-width=".35"/>`;
  const motifs = motifBoxes(cloth, scale, row, y0);
  const taken: LabelBox[] = [];
  const { shapes, labels } = pieceShapes(sheet, row, y0, taken, motifs);
  const left = offCutLabels(sheet, row, y0, taken, motifs);
  // Where words have no other place, a motif is left out whole: half of one would be read as another mark.
  const shown = motifs.filter((motif) => !taken.some((box) => meets(box, motif)));
  return (
    ground +
    flawShapes(sheet, row, y0, id) +
    shapes +
    middleLines(cloth, scale, long, y0) +
    lozenges(shown) +
    left +
    labels +
    edges +
    runningDimensions(sheet, row, y0) +
    (row.from === 0 ? startWords(sheet, row, long, y0) : "")
  );
}

function pieceShapes(
  sheet: Sheet,
  row: Row,
  y0: number,
  taken: LabelBox[],
  motifs: readonly LabelBox[],
): { shapes: string; labels: string } {
  const { scale, numberOf } = sheet;
  const long = (row.to - row.from) / scale;
  let shapes = "";
  let labels = "";
  const here = piecesIn(sheet, row).map((p) => {
    const x = Math.max(0, (p.y.toMm() - row.from) / scale);
    const x2 = Math.min(long, (p.y.plus(p.height).toMm() - row.from) / scale);
    return { p, x, width: x2 - x, y: y0 + p.x.toMm() / scale, height: p.width.toMm() / scale };
  });
  const cloth = { top: y0 + 0.3, foot: y0 + sheet.high - 0.3 };
  for (const at of here) {
    const { p, x, width: w, y, height: h } = at;
    shapes += `<rect x="${r(x)}" y="${r(y)}" width="${r(w)}" height="${r(h)}" fill="#fff" stroke="#000" stroke-width=".35"/>`;
    const number = String(numberOf.get(p.id) ?? "");
    labels +=
      stripLabel(number, at, taken, here, cloth) ??
      pieceLabel({ number, name: p.piece, up: !p.turned }, at, taken, motifs, cloth);
    if (p.turned && w > 11 && h > 8)
      labels += `<text x="${r(x + 1)}" y="${r(y + h - 1)}" font-size="3.2">turned</text>`;
  }
  return { shapes, labels };
}

/** What nothing is cut from: crossed both ways, so that it is not taken for waste. */
function flawShapes({ cloth, scale }: Sheet, row: Row, y0: number, id: string): string {
  let out = "";
  for (const flaw of cloth.plan.flaws) {
    if (flaw.length !== row.length) continue;
    const from = Math.max(row.from, flaw.y.toMm());
    const to = Math.min(row.to, flaw.y.plus(flaw.height).toMm());
    if (to <= from) continue;
    const x = (from - row.from) / scale;
    const w = Math.max(0.8, (to - from) / scale);
    const y = y0 + flaw.x.toMm() / scale;
    const h = flaw.width.toMm() / scale;
    let cross = "";
    for (let at = -h; at < w; at += 1.6)
      cross += `M${r(x + at)} ${r(y)}l${r(h)} ${r(h)}M${r(x + at)} ${r(y + h)}l${r(h)} ${r(-h)}`;
    const clip = `${id}-f${r(x)}-${r(y)}`.replaceAll(".", "_");
    out += `<clipPath id="${clip}"><rect x="${r(x)}" y="${r(y)}" width="${r(w)}" height="${r(h)}"/></clipPath><path d="${cross}" clip-path="url(#${clip})" stroke="#000" stroke-width=".2" fill="none"/><rect x="${r(x)}" y="${r(y)}" width="${r(w)}" height="${r(h)}" fill="none" stroke="#000" stroke-width=".5"/>`;
    if (w > 11 && h > 6) out += label("flaw", x + w / 2, y + h / 2);
  }
  return out;
}

/** The sizes of what is left over, each within its own rectangle, clear of motifs where it can be. */
function offCutLabels(
  { offCuts, scale, units }: Sheet,
  row: Row,
  y0: number,
  taken: LabelBox[],
  motifs: readonly LabelBox[],
): string {
  let out = "";
  for (const cut of offCuts) {
    if (cut.length !== row.length) continue;
    const middle = cut.y.toMm() + cut.height.toMm() / 2;
    if (middle < row.from || middle >= row.to) continue;
    const text = `${printLength(cut.width, units)} × ${printLength(cut.height, units)}`;
    const w = cut.height.toMm() / scale;
    const h = cut.width.toMm() / scale;
    const tw = textWidthMm(text, 3.2) * 1.05 + 1.6;
    const cx = (middle - row.from) / scale;
    const cy = y0 + (cut.x.toMm() + cut.width.toMm() / 2) / scale;
    const level = w >= tw && h >= 4.6;
    if (!level && !(h >= tw && w >= 4.6)) continue;
    const box = labelBox(text, cx, cy, !level);
    const room = { x: cx - w / 2 + 0.3, y: cy - h / 2 + 0.3, width: w - 0.6, height: h - 0.6 };
    const { dx, dy } = clearShift([box], room, taken, motifs);
    taken.push({ ...box, x: box.x + dx, y: box.y + dy });
    out += label(text, cx + dx, cy + dy, !level);
  }
  return out;
}

/** The values to be written at their places, leaving out what would run into the one before; both ends are always written. */
function spaced(all: readonly Length[], at: (length: Length) => number): Length[] {
  const sorted = [...all].sort((a, b) => a.compare(b));
  const last = sorted.at(-1);
  const kept: Length[] = [];
  for (const each of sorted) {
    const before = kept.at(-1);
    if (before && at(each) - at(before) < STEP) continue;
    if (last && each !== last && at(last) - at(each) < STEP) continue;
    kept.push(each);
  }
  return kept;
}

/** Distances of every edge along, from the start of the length, below the row; and across, from the left selvedge, beside it. */
function runningDimensions(sheet: Sheet, row: Row, y0: number): string {
  const { scale, high, units, cloth } = sheet;
  const long = (row.to - row.from) / scale;
  const here = piecesIn(sheet, row);
  const grains = (mm: number) => Length.mm(Math.round(mm * 160)).dividedBy(160);
  const along = (length: Length) => (length.toMm() - row.from) / scale;
  const inRow = (length: Length) => along(length) > -0.01 && along(length) < long + 0.01;
  const feet = here.flatMap((p) => [p.y, p.y.plus(p.height)]).filter(inRow);
  const foot = y0 + high;
  let out = "";
  let ticks = "";
  for (const each of spaced([grains(row.from), ...feet, grains(row.to)], along)) {
    const x = along(each);
    ticks += `M${r(x)} ${r(foot + 0.4)}v2`;
    out += `<text transform="translate(${r(x + 1.1)} ${r(foot + 2.9)}) rotate(-90)" text-anchor="end" font-size="3.2">${builtText(printLength(each, units))}</text>`;
  }
  const across = (length: Length) => length.toMm() / scale;
  const sides = here.flatMap((p) => [p.x, p.x.plus(p.width)]);
  for (const each of spaced([Length.zero, ...sides, cloth.usableWidth], across)) {
    const y = y0 + across(each);
    ticks += `M${r(long + 0.6)} ${r(y)}h2`;
    out += `<text x="${r(long + 3)}" y="${r(y + 1.1)}" font-size="3.2">${builtText(printLength(each, units))}</text>`;
  }
  return `<path d="${ticks}" stroke="#000" stroke-width=".2" fill="none"/>${out}`;
}

function startWords({ cloth }: Sheet, row: Row, long: number, y0: number): string {
  const which = cloth.plan.lengths.length > 1 ? ` of length ${row.length + 1}` : "";
  const lot = lotOfLength(cloth, row.length);
  const words = `start${which}${lot === null ? "" : `, lot ${lot}`}`;
  const end = textWidthMm(words, 3.2) + 0.5;
  const selvedge = "left selvedge";
  const right = Math.max(long, end + 12 + textWidthMm(selvedge, 3.2));
  return `<text x="0" y="${r(y0 - 2.5)}" font-size="3.2">${escapeHtml(words)}</text><path d="M${r(end)} ${r(y0 - 3.6)}h5" stroke="#000" stroke-width=".25"/><path d="M${r(end + 7.4)} ${r(y0 - 3.6)}l-2.6 -.7v1.4z"/><text x="${r(right)}" y="${r(y0 - 2.5)}" text-anchor="end" font-size="3.2">${selvedge}</text>`;
}
