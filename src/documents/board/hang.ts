import { leanOf, MOST_LEAN } from "./balance.ts";
import { CAPTION_MM, type Field, GAP_MM, type HangPiece, type HungPiece } from "./hangPiece.ts";
import { type Column, hangRows } from "./hangRows.ts";
import { shareOut } from "./shareOut.ts";
import { areaWeight, aspectOf } from "./weights.ts";

interface Sized {
  readonly piece: HangPiece;
  /** The width of its place, in which it stands at the left: its caption needs it where the piece itself is narrower. */
  readonly place: number;
  width: number;
  height: number;
}

/** No place is narrower than a caption can be. */
const LEAST_WIDTH = 25;
/** A row may take this much of the field's height. */
const UPPER_TOP = 0.6;
const LOWER_TOP = 0.27;
/** How much of the field's height the hanging fills before space is left above it. */
const FILL = 0.84;
/** Of a lower row the largest has so much more than its weight, the smallest so much less: a row of even pieces says nothing. */
const SPREAD = { from: 1.3, to: 0.75 };
/** Two pieces alone fill the field together; the main cloth takes the greater part. */
const OF_TWO = { main: 0.54, other: 0.42 };

/** A mirrored row may lose so much of the cloth's area to the title. */
const LEAST_AREA = 0.98;

const widest = (p: HangPiece): number => p.most?.width ?? Number.POSITIVE_INFINITY;
const tallest = (p: HangPiece): number => p.most?.height ?? Number.POSITIVE_INFINITY;

/** The width of all but one band's neighbour of a stripe, where that is no more than a place's. */
function bandOf(piece: HangPiece): number {
  return piece.look === "stripe" && piece.repeatOnPaperMm && piece.repeatOnPaperMm <= 60
    ? 0.87 * piece.repeatOnPaperMm
    : 0;
}

/** Places for the columns of a row, from the weights and aspects of what hangs in them, that fill the field. */
function placesOf(
  columns: readonly Column[],
  field: Field,
  least: number,
  more: (at: number) => number,
  most: (piece: HangPiece) => number = () => Number.POSITIVE_INFINITY,
): number[] {
  const area = field.width * field.height;
  return shareOut(
    columns.map((column, at) => ({
      wanted: Math.max(
        ...column.map((p) => Math.sqrt(areaWeight(p) * more(at) * area * aspectOf(p))),
      ),
      least: Math.max(least, ...column.map((p) => Math.min(bandOf(p), widest(p)))),
      most: Math.min(Math.max(...column.map(widest)), Math.max(...column.map(most))),
    })),
    field.width - GAP_MM * (columns.length - 1),
  );
}

function sized(piece: HangPiece, place: number, top: number): Sized {
  const width = Math.min(place, widest(piece));
  return { piece, place, width, height: Math.min(width / aspectOf(piece), top, tallest(piece)) };
}

/** No two neighbours nearly equal in both ways: the smaller one's height gives way by an eighth. */
function unequal(row: readonly Sized[]): void {
  for (let at = 1; at < row.length; at++) {
    const a = row[at - 1] as Sized;
    const b = row[at] as Sized;
    const near = (p: number, q: number): boolean => Math.abs(p - q) / Math.max(p, q) < 0.08;
    if (near(a.width, b.width) && near(a.height, b.height)) {
      const smaller = areaWeight(a.piece) <= areaWeight(b.piece) ? a : b;
      smaller.height *= 0.86;
    }
  }
}

/** Cloth is cut by the length: the main cloth grows until the field is well used; a stripe and a plain beside it follow. */
function lengthen(upper: readonly Sized[], available: number): void {
  const main = upper.find((s) => s.piece.role === "main");
  const highest = Math.max(...upper.map((s) => s.height));
  if (!main) return;
  // A narrow photograph hangs as a length.
  const narrow = main.piece.most !== null && main.width >= main.piece.most.width - 0.01;
  if (highest < available)
    main.height = Math.max(
      main.height,
      Math.min(available, main.width / (narrow ? 0.2 : 0.52), tallest(main.piece)),
    );
  for (const s of upper) {
    // An anchor stands lower than the main cloth, so that the cloth is seen first.
    if (s.piece.role === "anchor") s.height = Math.min(s.height, Math.max(40, main.height * 0.88));
    if (s === main || s.piece.ownAspect !== null) continue;
    const share = s.piece.look === "stripe" ? 0.84 : s.piece.role === "plain" ? 0.62 : 0.7;
    const limit = s.piece.look === "stripe" ? s.width / 0.3 : s.width / 0.5;
    s.height = Math.max(s.height, Math.min(main.height * share, limit, tallest(s.piece)));
  }
}

/** Nothing is larger than the main cloth, unless its photograph shows too little for that. */
function below(main: Sized | undefined, all: readonly Sized[]): void {
  if (!main || main.piece.most) return;
  const most = main.width * main.height * 0.9;
  for (const s of all) {
    const area = s.width * s.height;
    if (s === main || s.piece.role === "anchor" || area <= most) continue;
    s.height *= most / area;
  }
}

/** The room that a title takes at the upper left. */
interface TitleRoom {
  readonly width: number;
  readonly height: number;
}

/** The rows in one order, from left to right. */
function hangInOrder(
  upper: readonly HangPiece[],
  lower: readonly Column[],
  field: Field,
  title: TitleRoom,
): HungPiece[] {
  const lowerTop = LOWER_TOP * field.height;
  const ranks = lower
    .map((column, at) => ({ at, size: Math.max(...column.map(areaWeight)) }))
    .sort((a, b) => b.size - a.size || a.at - b.at)
    .map((r) => r.at);
  const more = (at: number): number =>
    lower.length < 3
      ? 1
      : SPREAD.from - ((SPREAD.from - SPREAD.to) * ranks.indexOf(at)) / (lower.length - 1);
  const places = placesOf(lower, field, LEAST_WIDTH, more);
  const low = lower.map((column, at) =>
    column.map((piece) =>
      sized(
        piece,
        places[at] as number,
        (lowerTop - CAPTION_MM * (column.length - 1)) / column.length,
      ),
    ),
  );
  unequal(low.filter((c) => c.length === 1).flat());
  const footOf = (column: readonly Sized[]): number =>
    column.reduce((sum, s) => sum + s.height + CAPTION_MM, 0);
  const lowerBand = Math.max(0, ...low.map(footOf));
  const ofTwo = (piece: HangPiece): number =>
    upper.length !== 2
      ? Number.POSITIVE_INFINITY
      : field.width * (piece.role === "main" ? OF_TWO.main : OF_TWO.other);
  const upperPlaces = placesOf(
    upper.map((p) => [p]),
    field,
    upper.length > 3 ? LEAST_WIDTH : 30,
    () => 1,
    ofTwo,
  );
  const high = upper.map((piece, at) =>
    sized(piece, upperPlaces[at] as number, UPPER_TOP * field.height),
  );
  lengthen(high, FILL * field.height - lowerBand - CAPTION_MM);
  unequal(high);
  const datum = field.height - lowerBand - CAPTION_MM;
  // The title's room is kept free over whatever stands below it.
  let left = 0;
  for (const s of high) {
    s.height = Math.min(s.height, left < title.width ? datum - title.height : datum);
    left += s.place + GAP_MM;
  }
  const main = high.find((s) => s.piece.role === "main");
  below(main, [...high, ...low.flat()]);
  const out: HungPiece[] = [];
  let x = 0;
  for (const s of high) {
    const { width, height } = s;
    out.push({ id: s.piece.id, x, y: datum - height, width, height, row: "upper" });
    x += s.place + GAP_MM;
  }
  x = 0;
  for (const [at, column] of low.entries()) {
    let y = datum + CAPTION_MM;
    for (const { piece, width, height } of column) {
      out.push({ id: piece.id, x, y, width, height, row: "lower" });
      y += height + CAPTION_MM;
    }
    x += (places[at] as number) + GAP_MM;
  }
  return out;
}

/** The orders of the rows that are tried, the usual one first: the lower row mirrored, and the upper one where no anchor begins it. */
function ordersOf(pieces: readonly HangPiece[]): { upper: HangPiece[]; lower: Column[] }[] {
  const { upper, lower } = hangRows(pieces);
  const turned = [...lower].reverse();
  const usual = [
    { upper, lower },
    { upper, lower: turned },
  ];
  if (upper.some((p) => p.role === "anchor")) return usual;
  const other = [...upper].reverse();
  return [...usual, { upper: other, lower }, { upper: other, lower: turned }];
}

/**
 * Hangs the mix on a datum: the upper row stands on it (feet level, tops ragged), captions hang beneath, the lower row hangs below
 * (tops level, feet ragged), of many pieces two small ones below each other. The stack stands on the foot of the field, so that all
 * spare height is above, where the title lives. Rows are mirrored where the whole would lean to a side. No piece is larger than its photograph shows. Deterministic; two to thirteen pieces.
 * Millimetres.
 */
export function hang(
  pieces: readonly HangPiece[],
  field: Field,
  title: TitleRoom = { width: 0, height: 0 },
): HungPiece[] {
  const all = ordersOf(pieces).map(({ upper, lower }) => hangInOrder(upper, lower, field, title));
  const usual = all[0] as HungPiece[];
  const area = (hung: readonly HungPiece[]): number =>
    hung.reduce((sum, h) => sum + h.width * h.height, 0);
  const lean = (hung: readonly HungPiece[]): number => Math.abs(leanOf(pieces, hung, field));
  // An order in which the title would cut a piece down is none.
  const whole = all.filter((hung) => area(hung) >= area(usual) * LEAST_AREA);
  return (
    whole.find((hung) => lean(hung) <= MOST_LEAN) ??
    whole.reduce((a, b) => (lean(b) < lean(a) - 1e-9 ? b : a), usual)
  );
}
