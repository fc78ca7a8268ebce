import type { ClothQuantity } from "../../quantities/quantityTypes.ts";
import { cutGroups } from "./cutNumbers.ts";

/** One stretch of the cloth that is drawn as a row, in millimetres of the real thing along the length. */
export interface Row {
  readonly length: number;
  readonly from: number;
  readonly to: number;
}

/** A row on paper is at most so long, millimetres; what stands right of it are the distances from the left selvedge. */
export const ROW_MM = 156;
const SCALES = [20, 25, 30, 35, 40, 45, 50, 60, 65, 70, 80];
/** The cloth's width on paper, millimetres: low enough for rows upon a page, high enough for two lines of label. */
const HIGHEST = 48;
const LOWEST = 19;
const ONE_ROW = 36;
/** What stands above and below a row, how much of a page rows and cut list may take, and a line of the list, millimetres. */
const AROUND = 16;
const PLAN_HIGH = 177;
const LIST_LINE = 4.9;
/** A list with more lines than this goes on a page after the plan's, which then has its page to itself. */
const MOST_LINES = 26;
/** A strip narrower than this on paper has its number over its edges, millimetres. */
const NARROWEST = 2.5;
/** So many distances of pieces alike stand on one line of the list. */
const PLACES_A_LINE = 4;
const MOST_PIECES = 600;

/** Rows that end at a straight cut where there is one, else at a piece's end, else where the paper ends; a long cloth wraps. */
export function rowsOf(cloth: ClothQuantity, scale: number): Row[] {
  const perRow = ROW_MM * scale;
  return cloth.plan.lengths.flatMap((whole, index): Row[] => {
    const end = whole.toMm();
    const cuts = cloth.plan.crossCuts.filter((c) => c.length === index).map((c) => c.y.toMm());
    const feet = cloth.plan.pieces
      .filter((p) => p.length === index)
      .flatMap((p) => [p.y.toMm(), p.y.plus(p.height).toMm()]);
    const rows: Row[] = [];
    let from = 0;
    while (end - from > perRow + 1) {
      const limit = from + perRow;
      const good = cuts.filter((c) => c > from + perRow * 0.25 && c <= limit);
      const second = feet.filter((c) => c > from + perRow * 0.25 && c <= limit);
      const to =
        good.length > 0 ? Math.max(...good) : second.length > 0 ? Math.max(...second) : limit;
      rows.push({ length: index, from, to });
      from = to;
    }
    if (end > 0) rows.push({ length: index, from, to: end });
    return rows;
  });
}

/**
 * The scale at which rows, ending at straight cuts, use the page's width best, and the plan still goes on one page with its words; of
 * those nearly as good the largest. A plan of one row is kept low, so that several small cloths go on a page.
 */
export function scaleOf(cloth: ClothQuantity): number {
  const width = cloth.usableWidth.toMm();
  const able = SCALES.filter((s) => width / s <= HIGHEST && width / s >= LOWEST);
  // Over many pages in any case: the choice is not worth its time.
  if (cloth.plan.pieces.length > MOST_PIECES) return able.at(-1) ?? (SCALES.at(-1) as number);
  if (able.length === 0)
    return SCALES.find((s) => width / s <= HIGHEST) ?? (SCALES.at(-1) as number);
  const single = able.find((scale) => width / scale <= ONE_ROW && rowsOf(cloth, scale).length <= 1);
  if (single) return single;
  const rated = able.map((scale) => {
    const rows = rowsOf(cloth, scale);
    // The last row is as long as it is.
    const whole = rows.slice(0, -1).reduce((sum, row) => sum + (row.to - row.from) / scale, 0);
    const fill = rows.length <= 1 ? 1 : whole / ((rows.length - 1) * ROW_MM);
    return { scale, fill, high: rows.length * (width / scale + AROUND) };
  });
  const best = (some: typeof rated) => {
    const fullest = Math.max(...some.map((each) => each.fill));
    return some.find((each) => each.fill >= fullest - 0.06)?.scale;
  };
  const lines = cutGroups(cloth).reduce(
    (sum, group) => sum + Math.ceil(group.pieces.length / PLACES_A_LINE),
    0,
  );
  const fitting = (room: number) => rated.filter((each) => each.high <= room);
  const besides = fitting(PLAN_HIGH - (lines > MOST_LINES ? 0 : LIST_LINE * lines));
  // Strips too narrow for their numbers are drawn larger, and the list goes over the page.
  const narrowest = Math.min(
    ...cloth.plan.pieces.flatMap((p) => [p.width.toMm(), p.height.toMm()]),
  );
  const crowded = besides.every((each) => narrowest / each.scale < NARROWEST);
  const alone = crowded ? fitting(PLAN_HIGH) : [];
  const clear = alone.filter((each) => narrowest / each.scale >= NARROWEST);
  const larger = clear.length > 0 ? clear : alone.slice(0, 1);
  const onePage = larger.length > 0 ? larger : besides;
  const least = Math.min(...rated.map((each) => each.high));
  // Over several pages in any case: on as few as can be.
  const few = rated.filter((each) => each.high <= least * 1.2);
  return best(onePage.length > 0 ? onePage : few) as number;
}
