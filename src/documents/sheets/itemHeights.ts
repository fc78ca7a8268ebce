import { textWidthMm } from "../../drawing/words.ts";
import type { ItemSheet, SheetGroup } from "../../items/itemDrawing.ts";
import { DRAWINGS_WIDTH } from "./workshopDrawings.ts";

/** The text's width and the columns of a maker's sheet, as the style sheet has them, millimetres. */
const TEXT_WIDTH = 170;
const WORDS_WIDTH = 47.5;
const PAGE_HEIGHT = { letter: 243.4, a4: 261 } as const;
/** Type of body, small words and heads: em and line, millimetres. */
const BODY = { em: 3.7, line: 4.8 } as const;
const SMALL = { em: 3.35, line: 4 } as const;
/** What estimates of wrapped lines may be wrong by on a page. */
const SLACK = 5;

/** Words too many for one page go over to the next sooner than drawings are made smaller than this, millimetres. */
const LEAST_DRAWINGS = 110;

/** What stands on an item's page beside its drawings. */
export interface ItemWords {
  readonly sheet: ItemSheet;
  /** The framed words at the head: why nothing may be cut, or an estimate. */
  readonly frames: readonly string[];
  readonly questions: readonly string[];
  readonly materials: readonly string[];
  readonly foot: string;
}

/** How an item's page is divided: the height left for drawings, and where the boxes to tick stand. */
export interface ItemRoom {
  readonly drawingsMm: number;
  /** The boxes stand across both columns; else the words column is so tall that they keep beside it. */
  readonly checksAcross: boolean;
  /** The words are taller than a page is, and stand in columns below the drawings, over the page if need be. */
  readonly wordsBelow: boolean;
  /** Materials, boxes and all drawings but the first stand on a second page of the item, so that the first can be read. */
  readonly overleaf: boolean;
}

/** Running text is set this much narrower than `textWidthMm`, which errs on the wide side (measured on printed sheets: 0.84 to 0.87). */
const NARROWER = 0.88;

/** How many lines a text takes in a width, broken at spaces. */
function linesOf(text: string, width: number, em: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(/\s+/)) {
    const wide = textWidthMm(word, em) * NARROWER;
    if (used > 0 && used + wide > width) {
      lines += 1;
      used = 0;
    }
    used += wide + em * 0.22;
  }
  return lines;
}

function wordsHeight(groups: readonly SheetGroup[]): number {
  return groups.reduce(
    (sum, g) =>
      sum + 5.6 + g.lines.reduce((n, l) => n + linesOf(l, WORDS_WIDTH, SMALL.em) * 3.9, 0),
    0,
  );
}

function checksHeight({ checks }: ItemSheet, columns: number, width: number): number {
  if (checks.length === 0) return 0;
  const column = (width - 4 * (columns - 1)) / columns;
  let sum = 1.6;
  for (let at = 0; at < checks.length; at += columns) {
    const row = checks.slice(at, at + columns);
    const lines = row.map(({ text, blank }) =>
      linesOf(blank === null ? text : `${text} ${"_".repeat(14)}`, column - 6, SMALL.em),
    );
    sum += Math.max(...lines) * SMALL.line + 1.4;
  }
  return sum;
}

/** Height left for the drawings of an item that has a page to itself: what the words need is taken off first. */
export function roomForDrawings(words: ItemWords, paper: "letter" | "a4"): ItemRoom {
  const { sheet, frames, questions, materials, foot } = words;
  const framed = frames.reduce(
    (sum, text) => sum + 7.2 + linesOf(text, TEXT_WIDTH - 8, BODY.em * 1.04) * BODY.line,
    0,
  );
  const page = PAGE_HEIGHT[paper] - 12.2 - framed - SLACK;
  const signs =
    sheet.signs.length > 0 ? linesOf(sheet.signs.join(" "), DRAWINGS_WIDTH, BODY.em) : 0;
  const asked = questions.reduce((n, q) => n + linesOf(q, DRAWINGS_WIDTH - 6.4, SMALL.em), 0);
  const left =
    signs * BODY.line +
    (asked > 0 ? 12.1 + asked * SMALL.line : 0) +
    (materials.length > 0
      ? 9.2 + materials.reduce((n, m) => n + linesOf(m, 78, SMALL.em) * 4 + 0.4, 0)
      : 0);
  const footed = foot === "" ? 0 : 2.4;
  const across =
    checksHeight(sheet, 3, TEXT_WIDTH) + footed + linesOf(foot, TEXT_WIDTH, BODY.em) * BODY.line;
  const inside =
    checksHeight(sheet, 2, DRAWINGS_WIDTH) +
    footed +
    linesOf(foot, DRAWINGS_WIDTH, BODY.em) * BODY.line;
  const tall = wordsHeight(sheet.groups);
  if (tall > page) {
    const below = tall / 3 + 10;
    const drawingsMm = Math.max(LEAST_DRAWINGS, page - left - across - below);
    return { drawingsMm, checksAcross: true, wordsBelow: true, overleaf: false };
  }
  const checksAcross = tall + across <= page;
  return {
    drawingsMm: page - left - (checksAcross ? across : inside),
    checksAcross,
    wordsBelow: false,
    overleaf: false,
  };
}

/** The line on the first page that says what stands on the second. */
const NEXT_LINE = 7;

/**
 * Heights left where an item has two pages: on the first for its first drawings with words and questions, on the second for its other
 * drawings with materials and boxes to tick.
 */
export function roomOnTwoPages(
  words: ItemWords,
  paper: "letter" | "a4",
): { readonly first: ItemRoom; readonly secondMm: number } {
  const asked = { ...words, sheet: { ...words.sheet, checks: [] }, materials: [], foot: "" };
  const first = roomForDrawings(asked, paper);
  const made = {
    ...words,
    sheet: { ...words.sheet, groups: [], signs: [] },
    frames: [],
    questions: [],
  };
  return {
    first: {
      drawingsMm: first.drawingsMm - NEXT_LINE,
      checksAcross: true,
      wordsBelow: first.wordsBelow,
      overleaf: true,
    },
    secondMm: roomForDrawings(made, paper).drawingsMm,
  };
}
