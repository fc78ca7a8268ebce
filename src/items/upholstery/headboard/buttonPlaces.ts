import type { Point } from "../../../drawing/paths.ts";

interface Frame {
  readonly width: number;
  readonly height: number;
  readonly rise: number;
  readonly inset: number;
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
  const rows = Math.max(1, Math.min(count, Math.round(Math.sqrt((count * h) / w))));
  const sizes = Array.from(
    { length: rows },
    (_, at) => Math.floor(((at + 1) * count) / rows) - Math.floor((at * count) / rows),
  );
  const top = s.rise * 0.6 + s.inset;
  const grid = sizes.map((n, row): Point[] =>
    Array.from({ length: n }, (_, at): Point => {
      const step = w / (Math.max(...sizes) + 0.5);
      const used = (n - 1) * step;
      const stagger =
        rows > 1 && n === Math.max(...sizes) ? (row % 2 === 0 ? -step / 4 : step / 4) : 0;
      return [s.inset + w / 2 - used / 2 + at * step + stagger, top + (h * (row + 0.5)) / rows];
    }),
  );
  const pleats = grid.slice(0, -1).flatMap((row, at) =>
    row.flatMap((from) => {
      const next = [...(grid[at + 1] as Point[])].sort(
        (a, b) => Math.abs(a[0] - from[0]) - Math.abs(b[0] - from[0]),
      );
      return next.slice(0, 2).map((to) => [from, to]);
    }),
  );
  return { buttons: grid.flat(), pleats };
}
