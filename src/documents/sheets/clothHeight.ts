import {
  BODY,
  framesHeight,
  headHeight,
  linesOf,
  SMALL,
  setWidth,
  TEXT_WIDTH,
} from "./itemHeights.ts";

/** What a cloth's block says, plainly, and how its plan is drawn. */
export interface ClothWords {
  readonly head: readonly string[];
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
  readonly piece: string;
  readonly item: string;
  readonly size: string;
  readonly at: string;
  readonly left: string;
}

/** Columns of a list beside its plan, as the style sheet has them, and the space between two, millimetres. */
const NUMBERS = 10;
const FROM = 19;
const CELL_SPACE = 3;
/** How much text a place has in a list over the whole width. */
const PLACE = 28;
/** The list's title and heads, on two lines where it is narrow, and the line below it; a row's line and the space under it. */
const LIST_WIDE = 18.5;
const LIST_BESIDE = 24;
const ROW_LINE = 4;
const ROW_SPACE = 0.9;

/** How wide the column of sizes is set, millimetres: none is broken. */
export function sizesWidth(rows: readonly { readonly size: string }[]): number {
  return Math.ceil(CELL_SPACE + Math.max(0, ...rows.map(({ size }) => setWidth(size, SMALL.em))));
}

/** About how tall a list of cuts is in a width, millimetres: its two columns of names share what the figures leave. */
function listHeight({ rows, oneLine, listBeside }: ClothWords, width: number): number {
  if (rows.length === 0) return 0;
  const figures = 2 * (NUMBERS + FROM) + sizesWidth(rows);
  const names = (width - figures) / 2 - CELL_SPACE;
  const place = listBeside ? FROM - CELL_SPACE : PLACE;
  const lines = rows.map(({ piece, item, at, left }) => {
    const placed = [at, left].map((text) => linesOf(text, place, SMALL.em));
    if (oneLine && !listBeside) return Math.max(...placed);
    return Math.max(...placed, ...[piece, item].map((text) => linesOf(text, names, SMALL.em)));
  });
  const head = listBeside ? LIST_BESIDE : LIST_WIDE;
  return head + lines.reduce((sum, n) => sum + n * ROW_LINE + ROW_SPACE, 0);
}

/** About how tall a cloth's block is on paper, millimetres: head and frame, words, the plan's rows, and the list, whose long names wrap. */
export function clothHeight(cloth: ClothWords): number {
  const lines = (texts: readonly string[], width: number) =>
    texts.reduce((sum, text) => sum + linesOf(text, width, BODY.em) * BODY.line, 0);
  const above =
    headHeight(cloth.head) + framesHeight(cloth.frames) + lines([cloth.over], TEXT_WIDTH);
  const below = lines(cloth.estimates, TEXT_WIDTH);
  const beside = TEXT_WIDTH - cloth.boltColumnMm - 5;
  const wide = cloth.short ? beside : TEXT_WIDTH;
  const words = lines(cloth.words, wide);
  const inside = words + (cloth.listBeside ? listHeight(cloth, beside) : 0);
  const plan = cloth.short ? Math.max(cloth.planMm, inside) : cloth.planMm + inside;
  return above + plan + (cloth.listBeside ? 0 : listHeight(cloth, TEXT_WIDTH)) + below;
}
