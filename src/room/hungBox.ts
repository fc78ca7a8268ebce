import type { Made } from "../items/itemKind.ts";
import type { ItemRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { commonFields } from "./commonFields.ts";
import type { ItemPlacement } from "./placements.ts";
import type { Wall } from "./walls.ts";
import { CURTAIN_FRONT } from "./windowBox.ts";

/**
 * The rectangle of what hangs at a window, or on a bare wall, once it is worked out: its figures `poleMm` or `widthMm`, `hemAboveFloorMm` and
 * `headAboveFloorMm` (and `projectionMm`, how far it stands out) are what it really is, where its fields alone only let it be guessed. For drawing and for what hides what.
 */
export function hungBox(
  item: ItemRecord,
  placement: ItemPlacement,
  made: Made,
  walls: readonly Wall[] | null,
): ItemPlacement {
  const wall = walls?.find((each) => each.name === placement.wall);
  if (placement.how === "wall" && wall && !placement.wallBox)
    return hungOnWall(item, placement, made, wall);
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

/**
 * What hangs on a wall where no window is, as a curtain behind a bed does: its fields have no size, so its place is only known when it
 * is worked out. Its foot is at its hem, or at the height that `at` gives. It stays where it was where its width or height is not known.
 */
function hungOnWall(
  item: ItemRecord,
  placement: ItemPlacement,
  { figures }: Made,
  wall: Wall,
): ItemPlacement {
  const { at } = commonFields(item);
  const placed = typeof at === "object" && "wall" in at ? at : null;
  const width = figures.poleMm ?? figures.widthMm;
  const { hemAboveFloorMm: hem, headAboveFloorMm: head } = figures;
  const down = figures.finishedDropMm ?? figures.dropMm ?? figures.depthMm;
  const upright =
    hem !== undefined && head !== undefined
      ? { foot: tenths(hem), height: tenths(head).minus(tenths(hem)) }
      : placed && "height" in placed && placed.height && down !== undefined
        ? { foot: placed.height, height: tenths(down) }
        : null;
  if (width === undefined || !upright || !placed) return placement;
  const across = tenths(width);
  const left =
    ("from-left" in placed ? placed["from-left"] : undefined) ??
    wall.length.minus(across).dividedBy(2);
  const { projectionMm } = figures;
  const front = projectionMm ? Length.max(CURTAIN_FRONT, tenths(projectionMm)) : CURTAIN_FRONT;
  const box = { wall: wall.name, left, width: across, back: Length.zero, front, ...upright };
  return { ...placement, wallBox: box };
}

function tenths(mm: number): Length {
  return Length.mm(String(Math.round(mm * 10) / 10));
}
