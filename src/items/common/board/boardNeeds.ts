import type { Length } from "../../../units/length.ts";
import type { UnitSystem } from "../../../units/printLength.ts";
import type { ItemContext, MaterialNeed } from "../../itemKind.ts";
import { boughtLength } from "../boughtLength.ts";
import { trimNeed } from "../trim.ts";
import type { Board } from "./boardAtWindow.ts";

/** Hook-and-loop tape along the front and both ends of every board. */
export function hookTapeNeed(board: Board, count: number, units: UnitSystem): MaterialNeed {
  return boughtLength(
    `hook-and-loop tape, loop sewn on, hook stapled to the ${board.hangsOn ? "tester" : "board"}`,
    board.span.times(count),
    units,
  );
}

/** The trim that is asked for, along `run` of every item; nothing where none is. */
export function lowerTrimNeeds(
  trim: string | undefined,
  run: Length,
  count: number,
  context: ItemContext,
): MaterialNeed[] {
  return trim ? [trimNeed(trim, run, count, context)] : [];
}

/** Where what hangs from a board begins and ends over the floor, in mm; nothing where the board's height is not known. */
export function heightFigures(board: Board, deepest: Length): Record<string, number> {
  const top = board.topHeight;
  return top ? { hemAboveFloorMm: top.minus(deepest).toMm(), headAboveFloorMm: top.toMm() } : {};
}
