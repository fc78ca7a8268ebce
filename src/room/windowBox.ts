import type { WindowFacts } from "../items/itemKind.ts";
import { Length } from "../units/length.ts";
import type { CommonFields } from "./commonFields.ts";
import type { WallBox } from "./placements.ts";

/** How far a curtain stands before its wall: for what hides what, not for cutting. */
export const CURTAIN_FRONT = Length.mm(100);

/** Where a curtain "below the sill" ends: about 15 cm below it (common practice, no source). */
const BELOW_SILL = Length.mm(150);

/**
 * The rectangle that a curtain or blind takes at its window, middle over middle. The width is the pole's, else the item's own, else
 * the opening's. The hem is where `to` says; else a drop that reaches below the sill from the window's head is taken to the floor.
 */
export function windowBox(fields: CommonFields, window: WindowFacts): WallBox {
  const head = window.sill.plus(window.height);
  const width = fields.pole ?? fields.width ?? window.width;
  const left = window.fromLeft.plus(window.width.minus(width).dividedBy(2));
  const inside = fields.mount === "inside";
  const depth = inside
    ? { back: (window.recess ?? Length.mm(50)).times(-1), front: Length.zero }
    : { back: Length.zero, front: CURTAIN_FRONT };
  const hem = hemOf(fields, window, head);
  const top = fields.drop ? hem.plus(fields.drop) : Length.max(fields["pole-height"] ?? head, head);
  return { wall: window.wall, left, foot: hem, width, height: top.minus(hem), ...depth };
}

function hemOf(fields: CommonFields, window: WindowFacts, head: Length): Length {
  if (fields.to === "floor" || window.isDoor) return Length.zero;
  if (fields.to === "sill") return window.sill;
  if (fields.to === "below-sill") return Length.max(Length.zero, window.sill.minus(BELOW_SILL));
  if (fields.drop === undefined) return window.sill;
  const top = fields["pole-height"] ?? head;
  const hem = top.minus(fields.drop);
  // A drop longer than the pole stands high hangs from higher up than the window's head: it ends at the floor.
  return hem.isNegative() ||
    (fields["pole-height"] === undefined && hem.isLessThan(window.sill.dividedBy(2)))
    ? Length.zero
    : hem;
}
