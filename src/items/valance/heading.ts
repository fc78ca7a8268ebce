import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";

/** A valance's heading over its whole span. */
export type ValanceHeading =
  | { readonly heading: "gathered" | "pencil-pleat"; readonly depth: Length; readonly tape: Length }
  | {
      readonly heading: "pinch-pleat";
      readonly depth: Length;
      readonly pleats: number;
      readonly space: Length;
      readonly takeUp: Length;
    }
  | {
      readonly heading: "box-pleat";
      readonly depth: Length;
      /** Boxes on the front: an odd number, so that one stands in the middle. */
      readonly boxes: number;
      readonly box: Length;
      /** Pleats: one at each edge of each box, so one more than the boxes; the outer two at the corners. */
      readonly pleats: number;
      readonly takeUp: Length;
    };

/**
 * Pinch pleats: spaces = up(front / widest space), pleats = spaces + 1. Box pleats: the least odd number of boxes no wider than
 * asked, a pleat at both ends of each. Take-up = (flat - span) / pleats (common practice, no source).
 */
export function valanceHeading(
  heading: ValanceHeading["heading"],
  front: Length,
  span: Length,
  flat: Length,
  context: ItemContext,
  notes: Notes,
): ValanceHeading {
  const p = (length: Length) => printLength(length, context.units);
  const depth = context.length("heading-depth");
  if (heading === "gathered" || heading === "pencil-pleat") {
    const turn = context.length("tape-turn");
    const tape = flat.plus(turn.times(2));
    notes.working.push({
      what: "Heading tape",
      sum: `${p(flat)} flat + 2 × ${p(turn)} turned in`,
      result: p(tape),
      rounded: null,
    });
    return { heading, depth, tape };
  }
  const box = heading === "box-pleat";
  const most = context.length(box ? "box-width" : "pleat-space");
  const least = Math.max(1, front.over(most).ceil().valueOf());
  const spaces = box && least % 2 === 0 ? least + 1 : least;
  const pleats = spaces + 1;
  const space = front.dividedBy(spaces);
  const takeUp = flat.minus(span).dividedBy(pleats);
  notes.working.push(
    {
      what: box ? "Boxes on the front" : "Spaces on the front",
      sum: `${p(front)} ÷ ${p(most)}`,
      result: `${spaces} of ${p(space)}`,
      rounded: box ? "up to an odd number, one in the middle" : "up to whole spaces",
    },
    {
      what: "Take-up a pleat",
      sum: `(${p(flat)} flat − ${p(span)} span) ÷ ${pleats} pleats`,
      result: p(takeUp),
      rounded: null,
    },
  );
  if (!box) return { heading, depth, pleats, space, takeUp };
  if (takeUp.isMoreThan(space.times(2))) {
    notes.questions.push(
      `Each box pleat takes up ${p(takeUp)}, more than twice its box of ${p(space)}: the pleats would lap behind. Are fewer pleats or less fullness wanted?`,
    );
  }
  return { heading, depth, boxes: spaces, box: space, pleats, takeUp };
}
