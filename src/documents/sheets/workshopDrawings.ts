import { paperSize, renderDrawing } from "../../drawing/renderDrawing.ts";
import type { Drawing } from "../../drawing/shape.ts";
import { textWidthMm } from "../../drawing/words.ts";
import { ITEM_DRAWINGS } from "../../items/drawings.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import type { ItemData } from "../projectData.ts";
import type { Markup } from "../words/marks.ts";

/** The drawings' column on paper, the gap between two that stand side by side, and what a caption takes, millimetres. */
export const DRAWINGS_WIDTH = 118;
const GAP = 4;
const CAPTION = 8.6;
const CAPTION_EM = 3.7;
/** The tallest that views of an item are drawn, however much of the page is left: one alone, the first of several, another. */
const ALONE = 106;
const FIRST = 92;
const ANOTHER = 72;
/** What stands below the views. */
const BELOW_HEIGHT = 56;
const SCALES = [
  1, 2, 2.5, 4, 5, 6, 8, 10, 12, 15, 16, 20, 24, 25, 30, 32, 36, 40, 48, 50, 60, 75, 80, 100, 120,
  150, 200, 250, 300,
];

/** Drawings that stand side by side share one scale; any other is a row of its own. */
interface Row {
  readonly drawings: readonly Drawing[];
  /** Where in `SCALES` its scale stands. */
  at: number;
}

function captionOf({ title }: Drawing, scale: number): string {
  return `${title}, one to ${scale}`;
}

/** What a row takes on paper at a scale, with its captions. */
function rowSize(drawings: readonly Drawing[], scale: number): { width: number; height: number } {
  const sizes = drawings.map((d) => ({
    ...paperSize(d, { scale: 1 / scale, style: "workshop" }),
    caption: textWidthMm(captionOf(d, scale), CAPTION_EM),
  }));
  const wide = sizes.map((s) => Math.max(s.widthMm, drawings.length > 1 ? s.caption : 0));
  return {
    width: wide.reduce((sum, w) => sum + w, GAP * (wide.length - 1)),
    height: Math.max(...sizes.map((s) => s.heightMm)) + CAPTION,
  };
}

/** The place in `SCALES` of the largest scale at which a row keeps to the column and to a height; the smallest where none does. */
function largest(drawings: readonly Drawing[], height: number): number {
  const at = SCALES.findIndex((scale) => {
    const wide = drawings.reduce((sum, d) => sum + d.widthMm / scale, 0);
    if (wide > DRAWINGS_WIDTH) return false;
    const size = rowSize(drawings, scale);
    return size.width <= DRAWINGS_WIDTH && size.height - CAPTION <= height;
  });
  return at < 0 ? SCALES.length - 1 : at;
}

/** All views in one row, in two, or each in its own. */
function splits(views: readonly Drawing[]): (readonly Drawing[])[][] {
  const half = Math.ceil(views.length / 2);
  const each = views.map((d) => [d]);
  if (views.length < 2) return [each];
  if (views.length < 3) return [[views], each];
  return [[views], [views.slice(0, half), views.slice(half)], each];
}

/** A row is made smaller only where that gains so much height, millimetres: chains of dimensions do not shrink. */
const LEAST_GAIN = 1;

function heightAt({ drawings }: Row, at: number): number {
  return rowSize(drawings, SCALES[at] as number).height;
}

/**
 * Rows made smaller until all keep to the height that their page leaves them, the largest scale first, so that views stay alike in
 * size: an item is never broken over two pages.
 */
function fitted(rows: readonly Row[], roomMm: number): Row[] {
  const now = rows.map((row) => ({ ...row, height: heightAt(row, row.at) }));
  for (;;) {
    if (now.reduce((sum, row) => sum + row.height, 0) <= roomMm) return now;
    const able = now
      .filter((row) => row.at < SCALES.length - 1)
      .map((row) => ({ row, next: heightAt(row, row.at + 1) }))
      .sort((a, b) => a.row.at - b.row.at || b.row.height - a.row.height);
    const first = able.find(({ row, next }) => row.height - next >= LEAST_GAIN) ?? able[0];
    if (!first) return now;
    first.row.at += 1;
    first.row.height = first.next;
  }
}

/**
 * Each drawing of an item at one of the usual scales: views beside one another or each in a row, whichever leaves the smallest of
 * all drawings largest; then what is laid flat below them.
 */
function rowsOf(all: readonly Drawing[], roomMm: number): Row[] {
  const below = all
    .filter((d) => d.below)
    .map((d): Row => ({ drawings: [d], at: largest([d], BELOW_HEIGHT) }));
  const ways = splits(all.filter((d) => !d.below)).map((groups) => {
    const views = groups.map((drawings, at): Row => {
      const height = groups.length === 1 ? ALONE : at === 0 ? FIRST : ANOTHER;
      return { drawings, at: largest(drawings, height) };
    });
    return fitted([...views, ...below], roomMm);
  });
  const smallest = (rows: readonly Row[]) => Math.max(...rows.map((row) => row.at));
  const together = (rows: readonly Row[]) =>
    rows.reduce((sum, row) => sum + row.at * row.drawings.length, 0);
  const better = (a: readonly Row[], b: readonly Row[]) =>
    smallest(b) - smallest(a) || together(b) - together(a);
  return ways.reduce((a, b) => (better(a, b) < 0 ? b : a));
}

/** A drawing with its caption, at one to `scale`. */
export interface WorkshopDrawing {
  readonly svg: Markup;
  readonly words: string;
  readonly scale: number;
  /** True where it stands on the item's second page. */
  readonly onSecond: boolean;
}

/** The first row fitted to a first page, the others to a second. */
function rowsOnTwo(rows: readonly Row[], firstMm: number, secondMm: number): Row[] {
  const first = rows.slice(0, 1).map((row) => ({ ...row, at: largest(row.drawings, ALONE) }));
  return [...fitted(first, firstMm), ...fitted(rows.slice(1), secondMm)];
}

/**
 * The workshop drawings of an item, each at the largest scale that keeps the item to its page, of which `roomMm` is left for them.
 * Where it has a second page with `secondMm` left, the first row stands on the first and the others on the second.
 */
export function workshopDrawings(
  item: ItemData,
  context: DrawingContext,
  prefix: string,
  roomMm: number,
  secondMm: number | null = null,
): WorkshopDrawing[] {
  const entry = ITEM_DRAWINGS.find((d) => d.kind === item.kind.kind);
  if (!entry) return [];
  const all = entry.workshop(item.record.fields as never, item.made as never, context);
  const rows =
    secondMm === null
      ? rowsOf(all, roomMm)
      : rowsOnTwo(rowsOf(all, roomMm + secondMm), roomMm, secondMm);
  return rows.flatMap(({ drawings, at }, row) =>
    drawings.map((drawing, column) => {
      const scale = SCALES[at] as number;
      const { svg } = renderDrawing(drawing, {
        scale: 1 / scale,
        bindings: () => null,
        style: "workshop",
        dimensions: true,
        idPrefix: `${prefix}-d${row}-${column}`,
      });
      return {
        svg: { html: svg },
        words: captionOf(drawing, scale),
        scale,
        onSecond: secondMm !== null && row > 0,
      };
    }),
  );
}
