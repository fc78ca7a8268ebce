import { textWidthMm } from "../../drawing/words.ts";
import type { ItemSheet, SheetCheck, SheetGroup } from "../../items/itemDrawing.ts";

/** The text's width and the columns of words of a maker's sheet, as the style sheet has them, millimetres. */
export const TEXT_WIDTH = 170.9;
export const WORDS_WIDTH = 47.5;
export const COLUMN_GAP = 5;
/** Type of headings, body and small words: em and line, millimetres. */
const HEADING = { em: 5.65, line: 7 } as const;
export const BODY = { em: 3.7, line: 4.8 } as const;
export const SMALL = { em: 3.35, line: 4 } as const;
/** A head's rule and the space about it; what a framed text takes beside its lines; the head of a group of words with its space. */
const HEAD_RULE = 5.2;
const FRAME = 7.2;
const GROUP = 5.6;
const GROUP_SPACE = 1.4;
const GROUP_LINE = 3.9;

/** What stands on an item's sheet beside its drawings. */
export interface ItemWords {
  readonly sheet: ItemSheet;
  /** The parts of its head: what it is, where it stands, its number. */
  readonly head: readonly string[];
  /** The framed words at the head: why nothing may be cut, or an estimate. */
  readonly frames: readonly string[];
  /** What of it is another than in the last revision that was sent; empty where nothing is. */
  readonly since: string;
  readonly questions: readonly string[];
  readonly materials: readonly { readonly text: string; readonly by: "studio" | "maker" }[];
  /** The words of the cautions that stand on the last page, and what the maker is paid; empty where there is none. */
  readonly cautions: string;
  readonly rate: string;
}

/** Running text is set this much narrower than `textWidthMm`, which errs on the wide side (measured on printed sheets: 0.84 to 0.87). */
const NARROWER = 0.88;

/** How wide a text is set in the pages' own face. */
export function setWidth(text: string, em: number): number {
  return textWidthMm(text, em) * NARROWER;
}

/** How many lines a text takes in a width, broken at spaces. */
export function linesOf(text: string, width: number, em: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(/\s+/)) {
    const wide = setWidth(word, em);
    if (used > 0 && used + wide > width) {
      lines += 1;
      used = 0;
    }
    used += wide + em * 0.22;
  }
  return lines;
}

/** The widest that a head's first part is, and each of its last; what they leave is the second part's, millimetres. */
const FIRST_PART = 105;
const LAST_PARTS = 45;
const PARTS_GAP = 6;

/** A block's head: its parts on one line, where they are short. */
export function headHeight([heading = "", where = "", ...last]: readonly string[]): number {
  const wide = (text: string, em: number, most: number) => Math.min(most, setWidth(text, em) + 1);
  const first = wide(heading, HEADING.em, FIRST_PART);
  const rest = last.map((text) => wide(text, BODY.em, LAST_PARTS));
  const left = TEXT_WIDTH - first - rest.reduce((a, b) => a + b + PARTS_GAP, PARTS_GAP);
  const tall = [
    linesOf(heading, FIRST_PART, HEADING.em) * HEADING.line,
    linesOf(where, left, BODY.em) * BODY.line,
    ...last.map((text) => linesOf(text, LAST_PARTS, BODY.em) * BODY.line),
  ];
  return Math.max(...tall) + HEAD_RULE;
}

/** The widest that a cutting plan's project and its lot stand beside the cloth's name, which has what they leave, as in the style sheet. */
const PLAN_PROJECT = 30;
const PLAN_LOT = 32;
/** The widest that the project stands where the cloth's name is so short that all four are on one line. */
const PLAN_PROJECT_ROOMY = 48;

/** How wide a cutting plan's project may stand in its head, millimetres: wider where all of the head is then on one line. */
export function planProjectMm(head: readonly [string, string, string, string]): number {
  const [heading, project, lot, number] = head;
  const others = [project, lot, number].map((text) => setWidth(text, BODY.em) + 1);
  const all = setWidth(heading, HEADING.em) + 1 + others.reduce((a, b) => a + b + PARTS_GAP, 0);
  const [projectMm = 0, lotMm = 0] = others;
  const fits = all <= TEXT_WIDTH && projectMm <= PLAN_PROJECT_ROOMY && lotMm <= PLAN_LOT;
  return fits ? PLAN_PROJECT_ROOMY : PLAN_PROJECT;
}

/** A cutting plan's head: its cloth, the project, the lot and the plan's number. */
export function planHeadHeight(head: readonly [string, string, string, string]): number {
  const [heading, project, lot, number] = head;
  const wide = (text: string, most: number) => Math.min(most, setWidth(text, BODY.em) + 1);
  const columns = [
    wide(project, planProjectMm(head)),
    wide(lot, PLAN_LOT),
    wide(number, LAST_PARTS),
  ];
  const left = TEXT_WIDTH - columns.reduce((a, b) => a + b + PARTS_GAP, 0);
  const tall = [project, lot, number].map(
    (text, at) => linesOf(text, columns[at] as number, BODY.em) * BODY.line,
  );
  return Math.max(linesOf(heading, left, HEADING.em) * HEADING.line, ...tall) + HEAD_RULE;
}

/** Framed words at a block's head. */
export function framesHeight(frames: readonly string[]): number {
  return frames.reduce(
    (sum, text) => sum + FRAME + linesOf(text, TEXT_WIDTH - 8, BODY.em * 1.04) * BODY.line,
    0,
  );
}

/** The line below the frames that says what has changed, with the space under it. */
const SINCE_SPACE = 2.4;

/** All that stands over an item's drawings and words: its head, the frames, what has changed. */
export function overHeight({ head, frames, since }: ItemWords): number {
  const sinceMm = since === "" ? 0 : linesOf(since, TEXT_WIDTH, BODY.em) * BODY.line + SINCE_SPACE;
  return headHeight(head) + framesHeight(frames) + sinceMm;
}

function groupHeight({ lines }: SheetGroup, width: number): number {
  return GROUP + lines.reduce((n, l) => n + linesOf(l, width, SMALL.em) * GROUP_LINE, 0);
}

/** Height of groups of words, and of what follows them, in columns as level as can be; a group stays in one column. */
export function wordsHeight(
  groups: readonly SheetGroup[],
  columns = 1,
  width = WORDS_WIDTH,
  lastMm = 0,
): number {
  const tall = [...groups.map((g) => groupHeight(g, width)), lastMm];
  const of = (from: number, left: number): number => {
    const all = tall.slice(from).reduce((a, b) => a + b, 0);
    if (left === 1) return all;
    let best = all;
    let sum = 0;
    for (let at = from; at < tall.length; at++) {
      sum += tall[at] as number;
      best = Math.min(best, Math.max(sum, of(at + 1, left - 1)));
    }
    return best;
  };
  return of(0, columns);
}

/** Boxes to tick in columns: each row as tall as its tallest. */
export function checksHeight(checks: readonly SheetCheck[], columns: number, width: number) {
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

export function signsHeight({ signs }: ItemSheet, width: number): number {
  return signs.length > 0 ? linesOf(signs.join(" "), width, BODY.em) * BODY.line : 0;
}

/** The box of what must be asked before cutting. */
export function askHeight({ questions }: ItemWords, width: number): number {
  const lines = questions.reduce((n, q) => n + linesOf(q, width - 6.4, SMALL.em), 0);
  return lines > 0 ? 12.1 + lines * SMALL.line : 0;
}

/** Materials as a list with who brings each beside it. */
export function materialsHeight({ materials }: ItemWords): number {
  if (materials.length === 0) return 0;
  return 9.2 + materials.reduce((n, m) => n + linesOf(m.text, 78, SMALL.em) * 4 + 0.4, 0);
}

function footWords({ cautions, rate }: ItemWords): string {
  return [cautions && `Cautions on the last page: ${cautions}.`, rate && `Your charge: ${rate}.`]
    .filter((text) => text !== "")
    .join(" ");
}

/** The line of cautions and charge below an item. */
export function footHeight(words: ItemWords, width: number): number {
  const text = footWords(words);
  return text === "" ? 0 : 2.4 + linesOf(text, width, BODY.em) * BODY.line;
}

/** The same line at the end of the columns of words. */
export function footInColumn(words: ItemWords, width: number): number {
  const text = footWords(words);
  return text === "" ? 0 : GROUP_SPACE + linesOf(text, width, SMALL.em) * GROUP_LINE;
}
