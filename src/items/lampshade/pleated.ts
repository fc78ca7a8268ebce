import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import { girth } from "../common/skirt/girth.ts";
import { skirtOf } from "../common/skirt/skirtOf.ts";
import type { Skirt } from "../common/skirt/skirtRun.ts";
import type { ItemContext } from "../itemKind.ts";
import type { LampshadeFields } from "./schema.ts";

/** A soft shade: one strip round a frame, pleated or gathered into both rings. */
export interface Pleated {
  readonly style: "knife-pleat" | "box-pleat" | "gathered";
  /** The strip: widths, joins and its cut length, the slant its drop. */
  readonly strip: Skirt;
  /** Round the rings, finished. */
  readonly roundFoot: Length;
  readonly roundTop: Length;
  /** Null of a gathered one. */
  readonly pleats: {
    readonly count: number;
    /** From pleat to pleat at the foot and at the top ring. */
    readonly foot: Length;
    readonly top: Length;
    /** Cloth that each takes up behind itself at the foot. */
    readonly takeUp: Length;
  } | null;
}

/**
 * The strip of a pleated or gathered shade: way round the foot ring times fullness and a closing seam, by the slant and what is turned
 * over each ring. Both rings take the same cloth, so that pleats lie closer at the smaller one (common practice, no source). Pleats go
 * UP to a whole number round the foot. Null, with a diagnostic, where the strip cannot be cut.
 */
export function planPleated(
  fields: LampshadeFields,
  shade: { readonly foot: Length; readonly top: Length; readonly slant: Length },
  context: ItemContext,
  notes: Notes,
): Pleated | null {
  const p = (length: Length) => printLength(length, context.units);
  const style = fields.style as Pleated["style"];
  const [roundFoot, roundTop] = [girth(shade.foot), girth(shade.top)];
  const join = context.length("join");
  const turn = context.length("turn");
  notes.working.push({
    what: "Round the foot ring",
    sum: `${p(shade.foot)} × 355/113, a little more than π`,
    result: p(roundFoot),
    rounded: null,
  });
  const strip = skirtOf(
    {
      cloth: fields.cloth,
      runs: [{ name: "round the shade", length: roundFoot, sides: [], corners: 0 }],
      style: style === "gathered" ? "gathered" : "box-pleat",
      fullness: context.ratio(style === "gathered" ? "gather-fullness" : "pleat-fullness"),
      cornerPleat: Length.zero,
      ends: join.times(2),
      endsWord: "closing seam",
      drop: shade.slant,
      hem: turn,
      top: turn,
      words: { piece: "shade", drop: "slant", hem: "turned at the foot", top: "at the top" },
      join,
      count: fields.count ?? 1,
      railroad: fields.railroad,
      keyPath: ["cloth"],
    },
    context,
    notes,
  );
  if (strip === null) return null;
  if (style === "gathered") return { style, strip, roundFoot, roundTop, pleats: null };
  const count = Number(roundFoot.over(context.length("pleat-width")).ceil().valueOf());
  const clear = (strip.runs[0]?.joined ?? strip.flat).minus(join.times(2));
  const pleats = {
    count,
    foot: roundFoot.dividedBy(count),
    top: roundTop.dividedBy(count),
    takeUp: clear.minus(roundFoot).dividedBy(count),
  };
  notes.working.push(
    {
      what: "Pleats",
      sum: `${p(roundFoot)} round the foot ÷ ${p(context.length("pleat-width"))}`,
      result: `${count}, ${p(pleats.foot)} apart at the foot${roundTop.equals(roundFoot) ? "" : `, ${p(pleats.top)} at the top`}`,
      rounded: "up to whole pleats",
    },
    {
      what: "Take-up a pleat",
      sum: `(${p(clear)} joined, without its closing seam − ${p(roundFoot)}) ÷ ${count}`,
      result: p(pleats.takeUp),
      rounded: null,
    },
  );
  return { style, strip, roundFoot, roundTop, pleats };
}
