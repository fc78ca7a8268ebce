import { Length } from "../../units/length.ts";

/** One panel from the upper left corner of the panelled wall, outside its moulding. */
export interface Panel {
  /** 1, 2, 3 … from the left, upper row first. */
  readonly number: number;
  readonly row: number;
  readonly left: Length;
  readonly top: Length;
  readonly width: Length;
  readonly height: Length;
}

export interface LayoutAsk {
  readonly width: Length;
  readonly height: Length;
  readonly panels: number;
  readonly margin: Length;
  /** Height of the lower row's panels; null for one row. */
  readonly lower: Length | null;
}

/**
 * Equal panels with the same plain wall between and round them: width = (wall - (n + 1) margins) / n; one row is as high as the wall
 * less two margins, two rows share what three margins leave. Null where nothing is left for a panel. Exact lengths.
 */
export function layPanels(ask: LayoutAsk): readonly Panel[] | null {
  const { width, height, panels, margin, lower } = ask;
  const each = width.minus(margin.times(panels + 1)).dividedBy(panels);
  const upper = lower ? height.minus(margin.times(3)).minus(lower) : height.minus(margin.times(2));
  if (each.compare(Length.zero) <= 0 || upper.compare(Length.zero) <= 0) return null;
  const rows = lower
    ? [
        { top: margin, height: upper },
        { top: margin.times(2).plus(upper), height: lower },
      ]
    : [{ top: margin, height: upper }];
  return rows.flatMap((row, r) =>
    Array.from(
      { length: panels },
      (_, n): Panel => ({
        number: r * panels + n + 1,
        row: r,
        left: margin.plus(each.plus(margin).times(n)),
        top: row.top,
        width: each,
        height: row.height,
      }),
    ),
  );
}
