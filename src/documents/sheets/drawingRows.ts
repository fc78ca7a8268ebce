import { paperSize } from "../../drawing/renderDrawing.ts";
import type { Drawing } from "../../drawing/shape.ts";
import { textWidthMm } from "../../drawing/words.ts";

/** The gap between two drawings that stand side by side, and what a caption takes, millimetres. */
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

/** The paper that an item's drawings may take, millimetres. */
export interface DrawingSpace {
  readonly widthMm: number;
  readonly heightMm: number;
  /** The tallest that a drawing is made where the height allows it; of views, what suits a page where nothing is said. */
  readonly tallestMm?: number;
}

/** Drawings that stand side by side share one scale; any other is a row of its own. */
export interface Row {
  readonly drawings: readonly Drawing[];
  /** Where in `SCALES` its scale stands. */
  at: number;
}

export function scaleOf({ at }: Row): number {
  return SCALES[at] as number;
}

export function captionOf({ title }: Drawing, scale: number): string {
  return `${title}, one to ${scale}`;
}

interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly caption: number;
}

/** Sizes that were measured before: many divisions of a page ask for the same ones. */
const measured = new WeakMap<Drawing, Map<number, Size>>();

function sizeOf(drawing: Drawing, scale: number): Size {
  const sizes = measured.get(drawing) ?? new Map<number, Size>();
  measured.set(drawing, sizes);
  const known = sizes.get(scale);
  if (known) return known;
  const size = {
    ...paperSize(drawing, { scale: 1 / scale, style: "workshop" }),
    caption: textWidthMm(captionOf(drawing, scale), CAPTION_EM),
  };
  sizes.set(scale, size);
  return size;
}

/** What a row takes on paper at a scale, with its captions. */
function rowSize(drawings: readonly Drawing[], scale: number): { width: number; height: number } {
  const sizes = drawings.map((d) => sizeOf(d, scale));
  const wide = sizes.map((s) => Math.max(s.widthMm, drawings.length > 1 ? s.caption : 0));
  return {
    width: wide.reduce((sum, w) => sum + w, GAP * (wide.length - 1)),
    height: Math.max(...sizes.map((s) => s.heightMm)) + CAPTION,
  };
}

/**
 * The place in `SCALES` of the largest scale at which a row keeps to a width and to a height. Where its chains of dimensions, which do
 * not shrink, are too wide at every scale, that at which it is least too wide: figures beside a small drawing take more than within it.
 */
function largest(drawings: readonly Drawing[], height: number, width: number): number {
  const at = SCALES.findIndex((scale) => {
    const wide = drawings.reduce((sum, d) => sum + d.widthMm / scale, 0);
    if (wide > width) return false;
    const size = rowSize(drawings, scale);
    return size.width <= width && size.height - CAPTION <= height;
  });
  if (at >= 0) return at;
  const low = SCALES.map((scale, place) => ({ place, ...rowSize(drawings, scale) })).filter(
    (row) => row.height - CAPTION <= height,
  );
  const narrowest = Math.min(...low.map((row) => row.width));
  return low.find((row) => row.width <= narrowest + WIDER)?.place ?? SCALES.length - 1;
}

/** Of scales whose rows are as wide as each other to this, the largest is taken, millimetres. */
const WIDER = 0.5;

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

/** What rows take below each other, millimetres. */
export function rowsHeight(rows: readonly Row[]): number {
  return rows.reduce((sum, row) => sum + heightAt(row, row.at), 0);
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
export function rowsOf(all: readonly Drawing[], space: DrawingSpace): Row[] {
  const { widthMm, heightMm, tallestMm } = space;
  const row = (drawings: readonly Drawing[], height: number): Row => ({
    drawings,
    at: largest(drawings, tallestMm ?? height, widthMm),
  });
  const below = all.filter((d) => d.below).map((d) => row([d], BELOW_HEIGHT));
  const ways = splits(all.filter((d) => !d.below)).map((groups) => {
    const views = groups.map((drawings, at) =>
      row(drawings, groups.length === 1 ? ALONE : at === 0 ? FIRST : ANOTHER),
    );
    return fitted([...views, ...below], heightMm);
  });
  const smallest = (rows: readonly Row[]) => Math.max(...rows.map(({ at }) => at));
  const together = (rows: readonly Row[]) =>
    rows.reduce((sum, { at, drawings }) => sum + at * drawings.length, 0);
  const better = (a: readonly Row[], b: readonly Row[]) =>
    smallest(b) - smallest(a) || together(b) - together(a);
  return ways.reduce((a, b) => (better(a, b) < 0 ? b : a));
}

/** The same rows, each as large as a space lets it be, but the first of views alone taller than another view is drawn. */
export function refitted(rows: readonly Row[], space: Required<DrawingSpace>): Row[] {
  const { widthMm, heightMm, tallestMm } = space;
  const tallest = (at: number) => (at === 0 ? tallestMm : Math.min(tallestMm, ANOTHER));
  return fitted(
    rows.map((row, at) => ({ ...row, at: largest(row.drawings, tallest(at), widthMm) })),
    heightMm,
  );
}

/** The smallest scale of some rows: one to so much; 0 where nothing is drawn. */
export function smallestScale(rows: readonly Row[]): number {
  return Math.max(0, ...rows.map(scaleOf));
}

/** True where every row keeps to a width: no drawing is ever made to fit but by its scale. */
export function keepsTo(rows: readonly Row[], widthMm: number): boolean {
  return rows.every((row) => rowSize(row.drawings, scaleOf(row)).width <= widthMm);
}

/** Rows on the first of two pages and on the second, divided where the smallest of all drawings is largest, then where the first holds most. */
export function dividedRows(
  all: readonly Row[],
  first: Required<DrawingSpace>,
  second: Required<DrawingSpace>,
): { readonly rows: Row[]; readonly others: Row[] } {
  const ways = all.slice(1).map((_, at) => ({
    rows: refitted(all.slice(0, at + 1), first),
    others: refitted(all.slice(at + 1), second),
  }));
  const smallest = ({ rows, others }: (typeof ways)[number]) => smallestScale([...rows, ...others]);
  const none = { rows: refitted(all, first), others: [] };
  return ways.reduce(
    (best, next) => (smallest(next) <= smallest(best) ? next : best),
    ways[0] ?? none,
  );
}
