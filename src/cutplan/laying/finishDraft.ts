import type { Grains } from "../piece.ts";
import type { Place, Plan, PlanInput } from "../plan.ts";
import type { Band } from "./bands.ts";
import type { Draft } from "./draft.ts";
import type { Kind } from "./kinds.ts";
import { mod } from "./modes.ts";
import { crossCuts, registerOf } from "./places.ts";

/**
 * A draft as a plan: its pieces named in cutting order, its lengths measured. `bound` is the bound on one length; `plain` the
 * length item by item.
 */
export function finishDraft(draft: Draft, input: PlanInput, bound: Grains, plain: Grains): Plan {
  const vertical = input.pattern?.vertical ?? 0;
  const { bands, firsts } = draft;
  const feet = firsts.map((first) => (bands[first] as Band).foot);
  const lengths = firsts.map((first, i) => {
    const last = (firsts[i + 1] ?? bands.length) - 1;
    return (bands[last] as Band).top - (bands[first] as Band).foot;
  });
  const starts = feet.map((foot) => (vertical > 0 ? mod(draft.start + foot, vertical) : 0));
  const laid = [...draft.pieces].sort((a, b) => a.y - b.y || a.x - b.x);
  const named = new Map<Kind, number>();
  const places = laid.map(({ kind, mode, x, y }): Place => {
    const copy = named.get(kind) ?? 0;
    named.set(kind, copy + 1);
    const length = feet.findLastIndex((foot) => foot <= y);
    return {
      pieceId: kind.ids[copy] as string,
      x,
      y: y - (feet[length] as number),
      width: mode.width,
      height: mode.height,
      turned: mode.turned,
      length,
      register: registerOf(mode, starts[length] as number, input.pattern),
    };
  });
  // Lengths laid end to end in register lose less than a repeat at each join.
  const split = bound - (lengths.length - 1) * vertical;
  const area = input.pieces.reduce((sum, piece) => sum + piece.width * piece.height, 0);
  return {
    ok: true,
    length: lengths.reduce((sum, length) => sum + length, 0),
    lowerBound: Math.max(split, Math.ceil(area / input.usableWidth)),
    start: starts[0] ?? 0,
    starts,
    lengths,
    places,
    bands: crossCuts(places, lengths.length),
    itemByItem: plain,
  };
}
