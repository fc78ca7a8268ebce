import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { finestStep } from "../common/finestStep.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import type { Panel } from "./panel.ts";

export interface GobletHeading {
  readonly heading: "goblet";
  readonly pleats: number;
  readonly space: Length;
  /** From the front's end to the first goblet's middle: half a space, and half of what rounding left over. */
  readonly end: Length;
  /** What rounding the spaces leaves over. */
  readonly left: Length;
  readonly takeUp: Length;
  readonly hooks: number;
  readonly depth: Length;
}

/**
 * As many spaces as goblets, half a space at each end: space = face ÷ goblets, down to what can be marked (Goblet pleats,
 * curtain-making notes); what that leaves goes to the two ends. Take-up = (flat − finished) ÷ goblets.
 */
export function planGoblets(
  panel: Panel,
  wanted: number | undefined,
  context: ItemContext,
  notes: Notes,
): GobletHeading {
  const p = (length: Length) => printLength(length, context.units);
  const most = context.length("goblet-space");
  const pleats = wanted ?? Math.max(2, panel.face.over(most).ceil().valueOf());
  const space = panel.face.dividedBy(pleats).downTo(finestStep(context.units));
  const left = panel.face.minus(space.times(pleats));
  const takeUp = panel.flat.minus(panel.finished).dividedBy(pleats);
  if (wanted === undefined) {
    notes.working.push({
      what: "Goblets a curtain",
      sum: `${p(panel.face)} face ÷ ${p(most)}`,
      result: `${pleats}`,
      rounded: "up to whole goblets",
    });
  }
  notes.working.push(
    {
      what: "Space between goblets",
      sum: `${p(panel.face)} face ÷ ${pleats} goblets, half a space at each end`,
      result: left.isZero() ? p(space) : `${p(space)}; ${p(left)} left over goes to the two ends`,
      rounded: `down to ${context.units === "inches" ? "1/8″" : "1 mm"}`,
    },
    {
      what: "Take-up a goblet",
      sum: `(${p(panel.flat)} flat − ${p(panel.finished)} finished) ÷ ${pleats}`,
      result: p(takeUp),
      rounded: null,
    },
  );
  return {
    heading: "goblet",
    pleats,
    space,
    end: space.plus(left).dividedBy(2),
    left,
    takeUp,
    hooks: pleats + 2,
    depth: context.length("heading-depth"),
  };
}
