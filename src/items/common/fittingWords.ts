import { capital } from "../../units/capital.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printMeasured, printSize, type UnitSystem } from "../../units/printLength.ts";
import type { FittingContext, FittingMark, SheetCheck } from "../itemDrawing.ts";
import { FRAME_CHECKS } from "./hangsOnWords.ts";
import { blankUnit, hardwareLines, linesOf } from "./sheetWords.ts";

type Hardware = Parameters<typeof hardwareLines>[0];

/** A rail, board or blind across its opening, from the wall's left end. */
export interface Across {
  readonly left: Length;
  readonly width: Length;
  /** Beyond the opening at each side; negative inside it. Null away from any opening. */
  readonly beyond: Length | null;
}

/**
 * Where something `width` wide is across its wall: its middle over its opening's, which is how all that hangs at a window is placed;
 * else where the room has it. Null where neither is known.
 */
export function acrossOf(width: Length, { window, box }: FittingContext): Across | null {
  if (window) {
    const beyond = width.minus(window.width).dividedBy(2);
    return { left: window.fromLeft.minus(beyond), width, beyond };
  }
  return box ? { left: box.left, width, beyond: null } : null;
}

/** The opening: its place on the wall, its size, its sill and head over the floor. Nothing away from an opening. */
export function openingLines({ window, units }: FittingContext): string[] {
  if (!window) return [];
  const m = (length: Length) => printMeasured(length, units);
  const p = (length: Length) => printLength(length, units);
  const head = window.sill.plus(window.height);
  return [
    `${capital(window.name)}: ${printSize([window.width, window.height], units)}, ${p(window.fromLeft)} from the left end.`,
    window.isDoor
      ? `A door; its head ${p(head)} above the floor.`
      : `Sill ${m(window.sill)}, head ${p(head)} above the floor.`,
  ];
}

/** Inside or outside the opening, with the recess. */
export function mountLine(inside: boolean, { window, units }: FittingContext): string | null {
  if (!window) return null;
  if (!inside) return window.isDoor ? null : "Outside the recess, on the wall.";
  return window.recess
    ? `Inside the recess, ${printMeasured(window.recess, units)} deep.`
    : "Inside the recess, whose depth is not known.";
}

/** From where to where something runs along its wall. */
export function alongWall(left: Length, width: Length, units: UnitSystem): string {
  return `From ${printLength(left, units)} to ${printLength(left.plus(width), units)} along the wall.`;
}

/** From where to where it runs along the wall, and how far it stands beyond the opening or clear of the recess. */
export function acrossLines(across: Across | null, context: FittingContext): string[] {
  if (!across) return [];
  const p = (length: Length) => printLength(length, context.units);
  const { left, width, beyond } = across;
  return linesOf([
    left.isNegative()
      ? `It would reach ${p(left.times(-1))} past the wall's left end.`
      : alongWall(left, width, context.units),
    beyond &&
      (beyond.isNegative()
        ? `${p(beyond.times(-1))} clear at each side.`
        : beyond.isZero()
          ? "As wide as the opening."
          : `${p(beyond)} beyond the opening at each side.`),
  ]);
}

/** How far above or below the opening's head a height is: `9″ above the opening`. */
export function overOpening(height: Length, { window, units }: FittingContext): string {
  if (!window) return "";
  const over = height.minus(window.sill.plus(window.height));
  if (over.isZero()) return ", level with the opening's head";
  const by = printLength(over.isNegative() ? over.times(-1) : over, units);
  return `, ${by} ${over.isNegative() ? "below" : "above"} the opening`;
}

/** What is bought ready with an item; the studio brings it. Nothing of what it costs, or whence. */
export function comesLines(hardware: Hardware, none: string): string[] {
  const lines = hardwareLines(hardware);
  return lines.length > 0 ? [...lines, "Bought by the studio."] : [none];
}

/** Where a blind's foot is over the floor: by its window, else by its place on the wall; null where neither says. */
export function footOf(hemHeight: Length | null, { box }: FittingContext): Length | null {
  return hemHeight ?? (box && !box.foot.isZero() ? box.foot : null);
}

/** Where a hem ends over the floor, and over or below the sill of its window. */
export function hemLine(hem: Length, { window, units }: FittingContext): string {
  const p = (length: Length) => printLength(length, units);
  if (hem.isZero()) return "Its hem at the floor.";
  const sill =
    window && !window.isDoor && hem.compare(window.sill.dividedBy(2)) > 0
      ? hem.minus(window.sill)
      : null;
  if (!sill) return `Its hem ${p(hem)} above the floor.`;
  if (sill.isZero()) return `Its hem ${p(hem)} above the floor, level with the sill.`;
  const by = p(sill.isNegative() ? sill.times(-1) : sill);
  return `Its hem ${p(hem)} above the floor, ${by} ${sill.isNegative() ? "below" : "above"} the sill.`;
}

/** What is looked at of all that is fixed to a wall, or to a piece that carries it; the height is written in. */
export function fixingChecks(what: string, context: FittingContext): SheetCheck[] {
  const first = context.hangsOn
    ? FRAME_CHECKS
    : ["Wall looked at, fixings chosen and rated by the fitter"];
  return [
    ...first.map((text) => ({ text, blank: null })),
    { text: "Fixed and level", blank: null },
    { text: `${capital(what)} above the floor; measured`, blank: blankUnit(context.units) },
  ];
}

/** The mark on the wall's drawing; null where its height or its place is not known. */
export function markOf(
  as: FittingMark["as"],
  height: Length | null,
  across: Across | null,
): FittingMark | null {
  return height && { as, height, across };
}
