import { type AllowanceTable, PRACTICE } from "../../../fields/allowance.ts";
import type { Length } from "../../../units/length.ts";
import { printLength, type UnitSystem } from "../../../units/printLength.ts";
import type { ItemCut } from "../../itemKind.ts";

/** What cloth a covered button takes. */
export const buttonAllowance = {
  "button-square": {
    is: "length",
    description: "side of the square of cloth for one covered button",
    usual: { inches: '2"', centimetres: "5 cm" },
    source: PRACTICE,
  },
} as const satisfies AllowanceTable;

export interface ButtonAsk {
  readonly count: number;
  /** Side of the square for one. */
  readonly square: Length;
  readonly cloth: string;
  readonly surface: string;
  readonly usableWidth: Length | null;
  readonly nap: boolean;
  readonly units: UnitSystem;
}

/**
 * Cloth for covered buttons as one piece, whole squares in rows: about square, or in fewer or more rows, whichever the plan finds room
 * for. A button shows no pattern, so that it lies anywhere.
 */
export function buttonCovers(ask: ButtonAsk): ItemCut {
  const { count, square, usableWidth } = ask;
  const most = usableWidth
    ? Math.max(1, Number(usableWidth.over(square).floor().valueOf()))
    : count;
  const inRows = (across: number) => ({
    width: square.times(across),
    height: square.times(Math.ceil(count / across)),
  });
  const usual = Math.min(most, Math.ceil(Math.sqrt(count)));
  const others = [1, 2, Math.ceil(count / 2), count].filter(
    (across, at, all) => across <= most && across !== usual && all.indexOf(across) === at,
  );
  return {
    piece: count === 1 ? "button cover" : `${count} button covers`,
    surface: ask.surface,
    cloth: ask.cloth,
    ...inRows(usual),
    count: 1,
    mayTurn: !ask.nap,
    across: { how: "free" },
    along: { how: "free" },
    instead: others.map(inRows),
    because: `${count} squares of ${printLength(square, ask.units)}`,
  };
}
