import {
  BODY,
  framesHeight,
  linesOf,
  planHeadHeight,
  SMALL,
  setWidth,
  TEXT_WIDTH,
} from "./itemHeights.ts";

/** What a cloth's block says, plainly, and how its plan is drawn. */
export interface ClothWords {
  readonly head: readonly [string, string, string, string];
  readonly frames: readonly string[];
  /** Over the plan. */
  readonly over: string;
  /** What is used and where to begin; what is left. */
  readonly words: readonly string[];
  readonly estimates: readonly string[];
  readonly rows: readonly ClothRow[];
  readonly planMm: number;
  /** The plan's column where its words stand beside it. */
  readonly boltColumnMm: number;
  readonly short: boolean;
  readonly listBeside: boolean;
  readonly oneLine: boolean;
}

export interface ClothRow {
  readonly number: string;
  readonly piece: string;
  readonly item: string;
  readonly size: string;
  readonly at: string;
  readonly left: string;
}

/** The space between two columns of a list; the columns of numbers and of counts; the least and the most of a column of places, millimetres. */
const CELL_SPACE = 3;
const NUMBERS = 9;
const COUNTS = 10.5;
const LEAST_PLACE = 16.5;
const MOST_PLACE = 19;
/** Over the whole width: columns of numbers, and of distances from the start, from the least. */
const NUMBERS_WIDE = [9, 13, 18, 24];
const PLACES_WIDE = [24, 30, 38, 46];
/** How the names of items and of pieces may share what is left: the items' part. */
const SPLITS = [0.5, 0.4, 0.6, 0.35, 0.65];
/** How much text a place has in a list over the whole width. */
const PLACE = 28;
/** The list's title and heads, on two lines where it is narrow, and the line below it; a row's line and the space under it. */
const LIST_WIDE = 18.5;
const LIST_BESIDE = 22;
const ROW_LINE = 4;
const ROW_SPACE = 0.9;

function widest(texts: readonly string[]): number {
  return Math.max(0, ...texts.map((text) => setWidth(text, SMALL.em)));
}

/** Whether numbers, names and sizes have room on one line of a list over the whole width, beside columns of places that are not too narrow. */
export function inOneLine(rows: readonly ClothRow[]): boolean {
  const column = (of: (row: ClothRow) => string) => widest(rows.map(of)) + CELL_SPACE;
  const place = (of: (row: ClothRow) => string) =>
    Math.min(PLACE, Math.max(LEAST_PLACE, column(of)));
  const named = [column((r) => r.number), column((r) => r.item), column((r) => r.piece)];
  const others = [COUNTS, column((r) => r.size), place((r) => r.at), place((r) => r.left)];
  return [...named, ...others].reduce((a, b) => a + b) <= TEXT_WIDTH;
}

/** A row's lines with its columns so wide, millimetres, their space included. */
function rowLines(
  row: ClothRow,
  [number = 0, item = 0, piece = 0, , , at = 0, left = 0]: readonly number[],
): number {
  const cells = [
    [row.number, number],
    [row.item, item],
    [row.piece, piece],
    [row.at, at],
    [row.left, left],
  ] as const;
  return Math.max(...cells.map(([text, mm]) => linesOf(text, mm - CELL_SPACE, SMALL.em)));
}

/**
 * Columns of a list, millimetres: number, item, piece, count, size (never broken), from the start, from the selvedge. Over the whole width
 * numbers and places may be wider, where many pieces of one line lie at many places. What the others leave the two of names share; the
 * widths are those with which the list is shortest.
 */
export function listColumns(rows: readonly ClothRow[], width: number): number[] {
  const isWide = width >= TEXT_WIDTH;
  const size = Math.ceil(CELL_SPACE + widest(["Cut, width ×", ...rows.map((r) => r.size)]));
  const place = (texts: readonly string[]) =>
    Math.min(MOST_PLACE, Math.max(LEAST_PLACE, widest(texts) + CELL_SPACE));
  const at = place(rows.map((r) => r.at));
  const left = place(rows.map((r) => r.left));
  const ways = (isWide ? NUMBERS_WIDE : [NUMBERS]).flatMap((numbers) =>
    (isWide ? [at, ...PLACES_WIDE] : [at]).flatMap((from) =>
      SPLITS.map((part) => {
        const names = width - numbers - COUNTS - size - from - left;
        return [numbers, names * part, names * (1 - part), COUNTS, size, from, left];
      }),
    ),
  );
  const linesAt = (columns: readonly number[]) =>
    rows.reduce((sum, row) => sum + rowLines(row, columns), 0);
  const exact = ways
    .map((columns) => ({ columns, lines: linesAt(columns) }))
    .reduce((best, next) => (next.lines < best.lines ? next : best)).columns;
  return exact.map((mm) => Math.round(mm * 10) / 10);
}

/** Whether a row of such a list takes more than one line. */
export function wrapped(rows: readonly ClothRow[], width: number): boolean {
  const columns = listColumns(rows, width);
  return rows.some((row) => rowLines(row, columns) > 1);
}

/** The width beside a plan. */
export function widthBeside(boltColumnMm: number): number {
  return TEXT_WIDTH - boltColumnMm - 5;
}

/** About how tall a list of cuts is in a width, millimetres. */
function listHeight({ rows, oneLine, listBeside }: ClothWords, width: number): number {
  if (rows.length === 0) return 0;
  const columns =
    oneLine && !listBeside
      ? [width, width, width, COUNTS, width, PLACE, PLACE]
      : listColumns(rows, width);
  const lines = rows.map((row) => rowLines(row, columns));
  const head = listBeside ? LIST_BESIDE : LIST_WIDE;
  return head + lines.reduce((sum, n) => sum + n * ROW_LINE + ROW_SPACE, 0);
}

/** About how tall a cloth's block is on paper, millimetres: head and frame, words, the plan's rows, and the list, whose long names wrap. */
export function clothHeight(cloth: ClothWords): number {
  const lines = (texts: readonly string[], width: number) =>
    texts.reduce((sum, text) => sum + linesOf(text, width, BODY.em) * BODY.line, 0);
  const above =
    planHeadHeight(cloth.head) + framesHeight(cloth.frames) + lines([cloth.over], TEXT_WIDTH);
  const below = lines(cloth.estimates, TEXT_WIDTH);
  const beside = widthBeside(cloth.boltColumnMm);
  const wide = cloth.short ? beside : TEXT_WIDTH;
  const words = lines(cloth.words, wide);
  const inside = words + (cloth.listBeside ? listHeight(cloth, beside) : 0);
  const plan = cloth.short ? Math.max(cloth.planMm, inside) : cloth.planMm + inside;
  return above + plan + (cloth.listBeside ? 0 : listHeight(cloth, TEXT_WIDTH)) + below;
}
