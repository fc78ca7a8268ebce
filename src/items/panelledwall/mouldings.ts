import Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { asNeeded } from "../common/boughtLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext, MaterialNeed } from "../itemKind.ts";
import type { Panel } from "./layout.ts";
import { type MouldingNeed, mouldingNeed } from "./moulding.ts";
import type { PanelledWallFields } from "./schema.ts";

/** The mouldings round all panels in lengths as sold; null where there are none, or, with a diagnostic, where a side is too long for one. */
export function mouldingsOf(
  fields: PanelledWallFields,
  good: readonly Panel[],
  moulding: Length,
  stock: Length,
  context: ItemContext,
  notes: Notes,
): { readonly need: MouldingNeed | null; readonly materials: readonly MaterialNeed[] } {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const materials: MaterialNeed[] = [];
  if (good.length === 0 || moulding.isZero()) return { need: null, materials };
  const pieces = good.flatMap((q) => [
    { length: q.width, count: 2 },
    { length: q.height, count: 2 },
  ]);
  const need = mouldingNeed(pieces, stock, context.length("saw-cut"));
  const longest = Length.max(...pieces.map((x) => x.length));
  if (need === null) {
    notes.diagnostics.push(
      diagnostic(
        context.place([fields["moulding-length"] ? "moulding-length" : "panels"]),
        "moulding-too-short",
        `A side of a panel is ${p(longest)} long, and the moulding is sold in lengths of ${p(stock)}: it would have to be joined.`,
        {
          actual: p(stock),
          expected: `${p(longest)} or more`,
          hint: `Write the longer length that it is sold in, moulding-length: ${p(longest.upTo(units === "inches" ? Length.inches(12) : Length.cm(10)))}, or panels of two rows.`,
        },
      ),
    );
  } else {
    notes.working.push({
      what: "Moulding",
      sum: need.pieces.map((x) => `${x.count} × ${p(x.length)}`).join(" + "),
      result: p(need.total),
      rounded: null,
    });
    notes.working.push({
      what: `Lengths of ${p(stock)}`,
      sum: `longest first, no piece joined, ${p(context.length("saw-cut"))} lost at a cut; none can need less than ${need.atLeast}`,
      result: String(need.lengths),
      rounded: "up to whole lengths",
    });
    materials.push({
      what: "panel moulding",
      cloth: null,
      amount: new Fraction(need.lengths),
      unit: "piece",
      text: `${need.lengths} ${need.lengths === 1 ? "length" : "lengths"} of ${p(stock)} of panel moulding, ${p(moulding)} wide`,
      by: "maker",
    });
    materials.push(asNeeded("pins, adhesive, filler and caulk as the wall needs"));
  }
  return { need, materials };
}
