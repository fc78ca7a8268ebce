import type { Length } from "../../../units/length.ts";
import type { Board } from "./boardAtWindow.ts";

/** How a board's front ends, behind its length on a sheet: `, returns 4″`, `, between the walls`; nothing for a front alone on a bed. */
export function boardEnds(
  { returnEach, hangsOn }: Pick<Board, "returnEach" | "hangsOn">,
  p: (length: Length) => string,
): string {
  if (!returnEach.isZero()) return `, returns ${p(returnEach)}`;
  return hangsOn ? "" : ", between the walls";
}

/** What is measured again before a board's front is cut; of a front alone on a bed there are no returns. */
export function measuredCheck({
  returnEach,
  hangsOn,
}: Pick<Board, "returnEach" | "hangsOn">): string {
  if (!hangsOn) return "Board measured, front and both returns";
  return returnEach.isZero() ? "Tester measured" : "Tester measured, front and both returns";
}
