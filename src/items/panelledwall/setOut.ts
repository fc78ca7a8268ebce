import { diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import { layPanels, type Panel } from "./layout.ts";
import type { PanelledWallFields } from "./schema.ts";

/** The measures from which panels are set out, as written or as is usual. */
export interface PanelMeasures {
  readonly width: Length;
  readonly height: Length;
  readonly margin: Length;
  readonly moulding: Length;
  readonly rows: number;
}

/** Reads them: two rows where a height of the lower ones is written. */
export function panelMeasures(fields: PanelledWallFields, context: ItemContext): PanelMeasures {
  const [width, height] = fields.size as [Length, Length];
  return {
    width,
    height,
    margin: fields.margin ?? context.length("margin"),
    moulding: fields.moulding ?? context.length("moulding"),
    rows: fields.rows ?? (fields.lower ? 2 : 1),
  };
}

/** The panels, evenly over the wall; none, with a diagnostic at its key, where they leave nothing within their mouldings. */
export function setOut(
  fields: PanelledWallFields,
  measures: PanelMeasures,
  context: ItemContext,
  notes: Notes,
): readonly Panel[] {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const { width, height, margin, moulding, rows } = measures;
  if (rows === 2 && !fields.lower)
    notes.diagnostics.push(
      diagnostic(
        context.place(["rows"]),
        "panels-not-measured",
        "Two rows of panels need the height of the lower ones, and none is written.",
        {
          expected: "lower",
          hint: `Write lower: ${units === "inches" ? '26"' : "65 cm"}, or rows: 1.`,
        },
      ),
    );
  if (rows === 1 && fields.lower)
    notes.diagnostics.push(
      diagnostic(
        context.place(["lower"]),
        "not-of-one-row",
        "There is one row of panels, so lower says nothing.",
        { severity: "warning", hint: "Take it out, or write rows: 2." },
      ),
    );
  const panels =
    rows === 2 && !fields.lower
      ? null
      : layPanels({
          width,
          height,
          panels: fields.panels,
          margin,
          lower: rows === 2 ? (fields.lower as Length) : null,
        });
  const tooNarrow = panels?.find(
    (q) => q.width.compare(moulding.times(2)) <= 0 || q.height.compare(moulding.times(2)) <= 0,
  );
  if ((panels === null && (rows === 1 || fields.lower)) || tooNarrow)
    notes.diagnostics.push(
      diagnostic(
        context.place(["panels"]),
        "panels-do-not-fit",
        `${fields.panels} ${fields.panels === 1 ? "panel" : "panels"} with ${p(margin)} of wall round each and mouldings of ${p(moulding)} leave nothing within on ${printSize([width, height], units)}.`,
        {
          actual: String(fields.panels),
          hint: "Write fewer panels, a smaller margin, or check size: width x height.",
        },
      ),
    );
  return tooNarrow ? [] : (panels ?? []);
}

/** How the width and the heights of the panels are worked out. */
export function setOutWorking(
  fields: PanelledWallFields,
  measures: PanelMeasures,
  good: readonly Panel[],
  context: ItemContext,
  notes: Notes,
): void {
  const p = (l: Length) => printLength(l, context.units);
  const { width, height, margin, rows } = measures;
  const first = good[0];
  if (first) {
    notes.working.push({
      what: "Width of a panel",
      sum: `(${p(width)} − ${fields.panels + 1} × ${p(margin)}) ÷ ${fields.panels}`,
      result: p(first.width),
      rounded: null,
    });
    for (const row of [...new Set(good.map((q) => q.row))]) {
      const one = good.find((q) => q.row === row) as Panel;
      notes.working.push({
        what:
          rows === 2
            ? row === 0
              ? "Height of an upper panel"
              : "Height of a lower panel"
            : "Height of a panel",
        sum:
          rows === 2
            ? row === 0
              ? `${p(height)} − 3 × ${p(margin)} − ${p(fields.lower as Length)}`
              : "as written"
            : `${p(height)} − 2 × ${p(margin)}`,
        result: p(one.height),
        rounded: null,
      });
    }
  }
}
