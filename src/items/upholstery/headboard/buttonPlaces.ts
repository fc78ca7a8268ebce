import type { Point } from "../../../drawing/paths.ts";

interface Frame {
  readonly width: number;
  readonly height: number;
  readonly rise: number;
  readonly inset: number;
}

/**
 * How many buttons stand in each row, from the top, in about so many rows: by turns one more and one less where that comes out, as for
 * diamonds; else as even as can be.
 */
function rowSizes(count: number, about: number): number[] {
  const usual = Math.max(1, Math.min(count, Math.round(about)));
  for (const rows of [usual, usual + 1, usual - 1].filter((n) => n > 1 && n <= count)) {
    for (const first of [0, 1]) {
      // Rows of n and of n - 1 by turns, the first of the one or the other.
      const fewer = first === 0 ? Math.floor(rows / 2) : Math.ceil(rows / 2);
      const n = (count + fewer) / rows;
      if (Number.isInteger(n) && n > 1)
        return Array.from({ length: rows }, (_, at) => (at % 2 === first ? n : n - 1));
    }
  }
  return Array.from(
    { length: usual },
    (_, at) => Math.floor(((at + 1) * count) / usual) - Math.floor((at * count) / usual),
  );
}

/** Buttons in each row from the top, and how far they stand apart: from one to the next, and from row to row; 0 where there is one. */
export interface ButtonSpacing {
  readonly rows: readonly number[];
  readonly across: number;
  readonly down: number;
}

/** How so many buttons are set out in staggered rows that fill the face evenly; lengths in those of the frame. */
export function buttonSpacing(count: number, s: Frame): ButtonSpacing {
  const [w, h] = [s.width - 2 * s.inset, s.height - s.rise * 0.6 - s.inset];
  const rows = rowSizes(count, Math.sqrt((count * h) / w));
  const most = Math.max(...rows);
  return {
    rows,
    across: most > 1 ? w / (most + 0.5) : 0,
    down: rows.length > 1 ? h / rows.length : 0,
  };
}

/**
 * Where so many buttons stand on the face: staggered rows that fill it evenly, for the drawing; the upholsterer sets them out. Pleats
 * run from each button to its neighbours in the next row.
 */
export function buttonPlaces(
  count: number,
  s: Frame,
): { readonly buttons: readonly Point[]; readonly pleats: readonly (readonly Point[])[] } {
  if (count === 0) return { buttons: [], pleats: [] };
  const [w, h] = [s.width - 2 * s.inset, s.height - s.rise * 0.6 - s.inset];
  const { rows: sizes } = buttonSpacing(count, s);
  const rows = sizes.length;
  const top = s.rise * 0.6 + s.inset;
  const grid = sizes.map((n, row): Point[] =>
    Array.from({ length: n }, (_, at): Point => {
      const step = w / (Math.max(...sizes) + 0.5);
      const used = (n - 1) * step;
      // Rows that differ by one stand between each other of themselves; equal ones are moved apart.
      const next = sizes[row + 1] ?? sizes[row - 1];
      const stagger = n === next ? (row % 2 === 0 ? -step / 4 : step / 4) : 0;
      return [s.inset + w / 2 - used / 2 + at * step + stagger, top + (h * (row + 0.5)) / rows];
    }),
  );
  const pleats = grid.slice(0, -1).flatMap((row, at) =>
    row.flatMap((from) => {
      const reach = (w / (Math.max(...sizes) + 0.5)) * 0.8;
      const next = (grid[at + 1] as Point[]).filter((to) => Math.abs(to[0] - from[0]) < reach);
      return next.map((to) => [from, to]);
    }),
  );
  return { buttons: grid.flat(), pleats };
}
