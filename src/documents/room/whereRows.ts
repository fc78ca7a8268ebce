/** What the lists beside the plan take, in millimetres of paper; estimates on the safe side. */

/** On the page a letter of the lists takes so much on average, and a line so much. */
const LETTER_MM = 1.62;
const LINE_MM = 4.4;
/** A cloth's name runs wider, on a line of its own above its role. */
const NAME_LETTER_MM = 2.05;
const NAME_LINE_MM = 4.8;
/** Between two rows, and between a square and its name. */
export const ROW_GAP_MM = 2;
export const SQUARE_GAP_MM = 4;
/** Colours are flats: a small square says as much as a large one. */
export const COLOUR_MM = 8;
/** A cutting of a cloth is as large as the page lets it be, in which one can still see a motif. */
const CUTTINGS_MM = [14, 13, 12, 11, 10, 9, 8];

/** A row of the lists: a name, what stands below it, and places. */
export interface WhereRow {
  readonly name: string;
  readonly where: string;
  /** A cloth's role, which stands below its name in the larger face; null of a colour. */
  readonly role: string | null;
}

/** The columns of the lists. */
export interface WhereColumns {
  readonly listWidth: number;
  readonly nameWidth: number;
  readonly square: number;
}

function linesOf(text: string, letters: number): number {
  return Math.max(1, Math.ceil(text.length / Math.max(8, letters)));
}

/** How high a row stands with the gap below it. */
function rowMm(row: WhereRow, { listWidth, nameWidth, square }: WhereColumns): number {
  const places = listWidth - square - SQUARE_GAP_MM - nameWidth;
  const words = linesOf(row.where, places / LETTER_MM) * LINE_MM;
  const letters = nameWidth / LETTER_MM;
  const name =
    row.role === null
      ? linesOf(row.name, letters) * LINE_MM
      : linesOf(row.name, nameWidth / NAME_LETTER_MM) * NAME_LINE_MM +
        linesOf(row.role, letters) * LINE_MM;
  return Math.max(row.role === null ? COLOUR_MM : square, words, name) + ROW_GAP_MM;
}

/** How high all rows stand together. */
export function rowsMm(rows: readonly WhereRow[], columns: WhereColumns): number {
  return rows.reduce((sum, row) => sum + rowMm(row, columns), 0);
}

/** The largest square with which all rows stand in a height; the smallest where none does. */
export function squareFor(
  rows: readonly WhereRow[],
  columns: Omit<WhereColumns, "square">,
  height: number,
): number {
  const fits = CUTTINGS_MM.find((square) => rowsMm(rows, { ...columns, square }) <= height);
  return fits ?? (CUTTINGS_MM.at(-1) as number);
}
