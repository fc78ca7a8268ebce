import type { Made } from "../items/itemKind.ts";
import { Length } from "../units/length.ts";
import type { ItemPlacement } from "./placements.ts";

/**
 * The rectangle of what hangs at a window once it is worked out: its figures `poleMm` or `widthMm`, `hemAboveFloorMm` and
 * `headAboveFloorMm` (and `projectionMm`, how far it stands out) are what it really is, where its fields alone only let it be guessed. For drawing and for what hides what.
 */
export function hungBox(placement: ItemPlacement, made: Made): ItemPlacement {
  const { wallBox, window } = placement;
  if (placement.how !== "window" || !wallBox || !window) return placement;
  const { figures } = made;
  const width = figures.poleMm ?? figures.widthMm;
  const hem = figures.hemAboveFloorMm;
  const head = figures.headAboveFloorMm;
  const across = width === undefined ? wallBox.width : tenths(width);
  const middle = window.fromLeft.plus(window.width.dividedBy(2));
  const upright =
    hem === undefined || head === undefined
      ? { foot: wallBox.foot, height: wallBox.height }
      : { foot: tenths(hem), height: tenths(head).minus(tenths(hem)) };
  // A board stands out further than what hangs beneath it, which it hides.
  const { projectionMm } = figures;
  const out = projectionMm ? { front: Length.max(wallBox.front, tenths(projectionMm)) } : {};
  return {
    ...placement,
    wallBox: {
      ...wallBox,
      ...upright,
      ...out,
      width: across,
      left: middle.minus(across.dividedBy(2)),
    },
  };
}

function tenths(mm: number): Length {
  return Length.mm(String(Math.round(mm * 10) / 10));
}
