import type { Drawing } from "../../drawing/shape.ts";
import { keepsTo, type Row, rowsHeight, rowsOf, scaleOf, smallestScale } from "./drawingRows.ts";
import {
  askHeight,
  COLUMN_GAP,
  checksHeight,
  footInColumn,
  type ItemWords,
  overHeight,
  signsHeight,
  TEXT_WIDTH,
  WORDS_WIDTH,
  wordsHeight,
} from "./itemHeights.ts";
import {
  DRAWINGS_WIDTH,
  type ItemLayout,
  LEAST_LEGIBLE,
  onOnePage,
  withMaterials,
} from "./itemLayout.ts";

/**
 * What is drawn on a page that items share is at least so long and so wide on paper, millimetres, and its scale at least this part of
 * that on a page of its own; what is smaller on its own page too stays as large as there.
 */
const LEAST_SIDES = [36, 10] as const;
const LEAST_PART = 2.5;
/** Between drawings and the line that says what their signs mean. */
const SIGNS_SPACE = 1.4;
/** Heights of blocks that are tried, millimetres. */
const STEP = 1;
const SMALLEST = 40;

/** An item laid out in a part of a page. */
type Way = (words: ItemWords, views: readonly Drawing[], heightMm: number) => ItemLayout;

/** Whether rows can still be worked from, beside the same drawings on a page of their own. */
function legible(rows: readonly Row[], own: readonly Row[]): boolean {
  return rows.every((row) =>
    row.drawings.every((drawing) => {
      const scale = scaleOf(row);
      const page = own.find((o) => o.drawings.includes(drawing));
      if (!page || scale <= scaleOf(page)) return true;
      const sides = [drawing.widthMm / scale, drawing.heightMm / scale].sort((a, b) => b - a);
      return (
        scale <= Math.min(scaleOf(page) * LEAST_PART, LEAST_LEGIBLE) &&
        sides.every((side, at) => side >= (LEAST_SIDES[at] as number))
      );
    }),
  );
}

/** Drawings, and beside them all words in columns; what must be said over the whole width stands below. */
function beside(columns: 2 | 3): Way {
  const widthMm = columns === 3 ? 0 : TEXT_WIDTH - columns * (WORDS_WIDTH + COLUMN_GAP);
  const column = columns === 3 ? (TEXT_WIDTH - 2 * COLUMN_GAP) / 3 : WORDS_WIDTH;
  return (plain, views, heightMm) => {
    const words = withMaterials(plain);
    const { sheet } = words;
    const otherMm =
      overHeight(words) +
      SIGNS_SPACE +
      signsHeight(sheet, TEXT_WIDTH) +
      askHeight(words, TEXT_WIDTH) +
      checksHeight(sheet.checks, 3, TEXT_WIDTH);
    const wordsMm = wordsHeight(sheet.groups, columns, column, footInColumn(words, column));
    const rows = rowsOf(views, { widthMm, heightMm: heightMm - otherMm });
    return {
      words,
      rows,
      wide: [],
      overleaf: null,
      wordColumns: columns,
      checksAcross: true,
      wordsBelow: false,
      shared: true,
      heightMm: otherMm + Math.max(rowsHeight(rows), wordsMm),
    };
  };
}

const WAYS: readonly { readonly way: Way; readonly widthMm: number }[] = [
  { way: beside(2), widthMm: TEXT_WIDTH - 2 * (WORDS_WIDTH + COLUMN_GAP) },
  { way: onOnePage, widthMm: DRAWINGS_WIDTH },
  {
    way: (words, views, mm) => onOnePage(withMaterials(words), views, mm),
    widthMm: DRAWINGS_WIDTH,
  },
];
const WITHOUT_DRAWINGS = [{ way: beside(3), widthMm: 0 }];

/** How an item stands whole and legible on a part of a page, in the way that draws it largest; null where it cannot. */
export function sharedLayout(
  words: ItemWords,
  views: readonly Drawing[],
  own: ItemLayout,
  partMm: number,
): ItemLayout | null {
  if (own.overleaf || own.wordsBelow) return null;
  const ways = views.length === 0 ? WITHOUT_DRAWINGS : WAYS;
  const layouts = ways.flatMap(({ way, widthMm }) => {
    const layout = way(words, views, partMm);
    const { rows, heightMm, wordsBelow } = layout;
    const stands = !wordsBelow && heightMm <= partMm && keepsTo(rows, widthMm);
    return stands && legible(rows, [...own.rows, ...own.wide]) ? [layout] : [];
  });
  return layouts.reduce<ItemLayout | null>(
    (best, next) => (best && smallestScale(best.rows) <= smallestScale(next.rows) ? best : next),
    null,
  );
}

/** The height of the smallest part of a page, up to `mostMm`, that an item can stand on so; null where it needs more. */
export function leastShared(
  words: ItemWords,
  views: readonly Drawing[],
  own: ItemLayout,
  mostMm: number,
): number | null {
  for (let partMm = SMALLEST; partMm <= mostMm; partMm += STEP) {
    const layout = sharedLayout(words, views, own, partMm);
    if (layout) return layout.heightMm;
  }
  return null;
}
