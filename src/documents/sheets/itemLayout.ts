import type { Drawing } from "../../drawing/shape.ts";
import {
  type DrawingSpace,
  dividedRows,
  type Row,
  refitted,
  rowsHeight,
  rowsOf,
  smallestScale,
} from "./drawingRows.ts";
import {
  askHeight,
  COLUMN_GAP,
  checksHeight,
  footHeight,
  headHeight,
  type ItemWords,
  materialsHeight,
  overHeight,
  signsHeight,
  TEXT_WIDTH,
  WORDS_WIDTH,
  wordsHeight,
} from "./itemHeights.ts";

/** The text's height on a page of a maker's sheet, millimetres, and what estimates of wrapped lines may be wrong by on it. */
export const PAGE_HEIGHT = { letter: 243.4, a4: 261 } as const;
export const SLACK = 4;
export type SheetPaper = keyof typeof PAGE_HEIGHT;

/** The drawings' column beside one column of words. */
export const DRAWINGS_WIDTH = TEXT_WIDTH - WORDS_WIDTH - COLUMN_GAP;
/** Words too many for one page go over to the next sooner than drawings are made smaller than this, millimetres. */
const LEAST_DRAWINGS = 110;
/** A drawing smaller than one to this is hard to work from. */
export const LEAST_LEGIBLE = 40;
/** A column of words nearly as tall as its page may be a line taller than was reckoned, and leave the next page empty. */
const WORDS_SLACK = 5;
/** Between drawings with their words and those over the whole width below, as in the style sheet. */
const WIDE_SPACE = 3;
/** The line on the first page that says what stands on the second. */
const NEXT_LINE = 7;
/** The tallest that a drawing is made on the first of two pages, and on the second over the whole width. */
const TALLEST_FIRST = 150;
const TALLEST_SECOND = 64;

/** How an item stands on paper: what of it is drawn at which scale, and where its words stand. */
export interface ItemLayout {
  /** Its words as this layout shows them: materials, cautions and charge may stand among the groups. */
  readonly words: ItemWords;
  readonly rows: readonly Row[];
  /** Drawings that stand over the whole width below drawings and words, where they would be too small beside the words. */
  readonly wide: readonly Row[];
  /** On a second page of the item with materials and boxes to tick, so that the first can be read; null where all stands on one. */
  readonly overleaf: { readonly rows: readonly Row[]; readonly heightMm: number } | null;
  /** Columns of words beside the drawings, or in place of them. */
  readonly wordColumns: 1 | 2 | 3;
  /** The boxes stand across the whole width; else the words column is so tall that they keep beside it. */
  readonly checksAcross: boolean;
  /** The words are taller than a page is, and stand in columns below the drawings, over the page if need be. */
  readonly wordsBelow: boolean;
  /** On a page that items share: signs, questions and boxes stand over the whole width below drawings and words. */
  readonly shared: boolean;
  /** About what it takes of its page, millimetres. */
  readonly heightMm: number;
}

/** Materials as a group of words, by who brings them. */
export function withMaterials(words: ItemWords): ItemWords {
  const from = (by: "studio" | "maker", who: string) => {
    const texts = words.materials.filter((m) => m.by === by).map((m) => m.text);
    return texts.length === 0 ? [] : [`${who}: ${texts.join("; ")}.`];
  };
  const lines = [...from("maker", "From your stock"), ...from("studio", "From the studio")];
  const { sheet } = words;
  const groups = lines.length === 0 ? [] : [{ heading: "Materials", lines }];
  return { ...words, sheet: { ...sheet, groups: [...sheet.groups, ...groups] }, materials: [] };
}

/** The height left for the drawings of an item on a page or a part of one, what stands below them taken off. */
interface PageRoom {
  readonly drawingsMm: number;
  readonly checksAcross: boolean;
  readonly wordsBelow: boolean;
  /** What an item takes whose drawings take so much. */
  readonly takes: (drawingsMm: number) => number;
}

/** `wordsSlackMm`: so much less than the page a column of words must be to stand beside the drawings. */
function pageRoom(words: ItemWords, pageMm: number, wordsSlackMm = 0): PageRoom {
  const { sheet } = words;
  const above = overHeight(words);
  const page = pageMm - above;
  const left =
    signsHeight(sheet, DRAWINGS_WIDTH) + askHeight(words, DRAWINGS_WIDTH) + materialsHeight(words);
  const across = checksHeight(sheet.checks, 3, TEXT_WIDTH) + footHeight(words, TEXT_WIDTH);
  const inside = checksHeight(sheet.checks, 2, DRAWINGS_WIDTH) + footHeight(words, DRAWINGS_WIDTH);
  const tall = wordsHeight(sheet.groups);
  if (tall + wordsSlackMm > page)
    return {
      drawingsMm: Math.max(LEAST_DRAWINGS, page - left - across - tall / 3 - 10),
      checksAcross: true,
      wordsBelow: true,
      takes: () => pageMm,
    };
  const checksAcross = tall + across <= page;
  return {
    drawingsMm: page - left - (checksAcross ? across : inside),
    checksAcross,
    wordsBelow: false,
    takes: (drawingsMm) =>
      above +
      (checksAcross
        ? Math.max(drawingsMm + left, tall) + across
        : Math.max(drawingsMm + left + inside, tall)),
  };
}

/** An item on a page, or on so much of one: drawings at the left, words in a column beside them. Its first row is as tall as views usually are, or up to `tallestMm`. */
export function onOnePage(
  words: ItemWords,
  views: readonly Drawing[],
  pageMm: number,
  wordsSlackMm = 0,
  tallestMm: number | null = null,
): ItemLayout {
  const { drawingsMm, checksAcross, wordsBelow, takes } = pageRoom(words, pageMm, wordsSlackMm);
  const space = { widthMm: DRAWINGS_WIDTH, heightMm: drawingsMm };
  const usual = rowsOf(views, space);
  const rows = tallestMm === null ? usual : refitted(usual, { ...space, tallestMm });
  const heightMm = takes(rowsHeight(rows));
  return {
    words,
    rows,
    wide: [],
    overleaf: null,
    wordColumns: 1,
    checksAcross,
    wordsBelow,
    shared: false,
    heightMm,
  };
}

/**
 * An item on a page whose last drawings stand over the whole width, above the boxes to tick: in the way that draws the smallest of all
 * largest. Null where there is one drawing alone, or the page has no room for it.
 */
function withWideRows(
  words: ItemWords,
  views: readonly Drawing[],
  pageMm: number,
): ItemLayout | null {
  const all = rowsOf(views, { widthMm: DRAWINGS_WIDTH, heightMm: 2 * pageMm });
  const ways = all.slice(1).flatMap((_, at): ItemLayout[] => {
    const space = { widthMm: TEXT_WIDTH, heightMm: pageMm / 2, tallestMm: TALLEST_SECOND };
    const wide = refitted(all.slice(at + 1), space);
    const wideMm = rowsHeight(wide) + WIDE_SPACE;
    const { drawingsMm, checksAcross, wordsBelow, takes } = pageRoom(
      words,
      pageMm - wideMm,
      WORDS_SLACK,
    );
    if (wordsBelow || !checksAcross) return [];
    const rows = refitted(all.slice(0, at + 1), {
      widthMm: DRAWINGS_WIDTH,
      heightMm: drawingsMm,
      tallestMm: TALLEST_FIRST,
    });
    if (rowsHeight(rows) > drawingsMm) return [];
    const heightMm = takes(rowsHeight(rows)) + wideMm;
    const other = { overleaf: null, wordColumns: 1, checksAcross, wordsBelow } as const;
    return [{ words, rows, wide, ...other, shared: false, heightMm }];
  });
  return ways.reduce<ItemLayout | null>(
    (best, next) => (best && smallestOf(best) <= smallestOf(next) ? best : next),
    null,
  );
}

/** The scale of the smallest drawing of a layout: one to so much. */
function smallestOf({ rows, wide, overleaf }: ItemLayout): number {
  return smallestScale([...rows, ...wide, ...(overleaf?.rows ?? [])]);
}

/** The first rows of drawings with words and questions on a first page; the others with materials and boxes to tick on a second. */
function onTwoPages(words: ItemWords, views: readonly Drawing[], pageMm: number): ItemLayout {
  const { sheet } = words;
  const asked = {
    ...words,
    sheet: { ...sheet, checks: [] },
    materials: [],
    cautions: "",
    rate: "",
  };
  const first = pageRoom(asked, pageMm, WORDS_SLACK);
  const firstMm = first.drawingsMm - NEXT_LINE;
  const made = { ...words, frames: [], since: "", questions: [] };
  const beside =
    headHeight(made.head) +
    materialsHeight(made) +
    checksHeight(sheet.checks, 3, TEXT_WIDTH) +
    footHeight(made, TEXT_WIDTH);
  const second: Required<DrawingSpace> = {
    widthMm: TEXT_WIDTH,
    heightMm: pageMm - beside,
    tallestMm: TALLEST_SECOND,
  };
  const all = rowsOf(views, { widthMm: DRAWINGS_WIDTH, heightMm: firstMm + second.heightMm });
  const space = { widthMm: DRAWINGS_WIDTH, heightMm: firstMm, tallestMm: TALLEST_FIRST };
  const { rows, others } = dividedRows(all, space, second);
  return {
    words,
    rows,
    wide: [],
    overleaf: { rows: others, heightMm: beside + rowsHeight(others) },
    wordColumns: 1,
    checksAcross: true,
    wordsBelow: first.wordsBelow,
    shared: false,
    heightMm: first.takes(rowsHeight(rows)) + NEXT_LINE,
  };
}

/**
 * An item on a page of its own. Its materials stand below the drawings, or, where the drawings gain by it, below the words. Where that
 * leaves drawings too small to work from, the last of them stand over the whole width below; where that does not do, it takes two pages, if
 * they are larger there than on one that the first row may fill.
 */
export function pageLayout(
  words: ItemWords,
  views: readonly Drawing[],
  paper: SheetPaper,
): ItemLayout {
  const pageMm = PAGE_HEIGHT[paper] - SLACK;
  const plain = onOnePage(words, views, pageMm, WORDS_SLACK);
  if (plain.wordsBelow) return plain;
  const moved = onOnePage(withMaterials(words), views, pageMm, WORDS_SLACK);
  const one = !moved.wordsBelow && smallestOf(moved) < smallestOf(plain) ? moved : plain;
  if (smallestOf(one) <= LEAST_LEGIBLE) return one;
  const wide = [words, withMaterials(words)].flatMap(
    (each) => withWideRows(each, views, pageMm) ?? [],
  );
  const legible = wide.find((each) => smallestOf(each) <= LEAST_LEGIBLE);
  if (legible) return legible;
  const tall = onOnePage(words, views, pageMm, WORDS_SLACK, TALLEST_FIRST);
  const best = smallestOf(tall) < smallestOf(one) ? tall : one;
  const two = onTwoPages(words, views, pageMm);
  return smallestOf(two) < smallestOf(best) ? two : best;
}
