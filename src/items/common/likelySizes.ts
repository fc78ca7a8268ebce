import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import type { ItemContext } from "../itemKind.ts";

/** Written lengths by the keys that they stand at. */
type Written = Readonly<Record<string, Length | undefined>>;

/** Curtains that lie on the floor take up to about 30 cm (12 in) more than their height (common practice, no source). */
const POOLED = Length.cm(30);

/**
 * Warnings where a written length is more than the room is high, or its floor long: millimetres typed as centimetres, or a point that
 * was lost. Nothing is said in a room whose height or floor is not known. The floor is the rectangle round the room.
 */
export function largerThanRoom(
  { upright, along }: { readonly upright: Written; readonly along: Written },
  context: ItemContext,
): Diagnostic[] {
  const { roomHeight, floor, hangsOn, units } = context;
  const told = (written: Written, most: Length | null, room: (most: Length) => string) =>
    Object.entries(written).flatMap(([key, length]) =>
      length && most && length.isMoreThan(most)
        ? [
            diagnostic(
              context.place([key]),
              "larger-than-room",
              `${key} is ${printMeasured(length, units)}, and ${room(most)}.`,
              {
                severity: "warning",
                actual: printMeasured(length, units),
                hint: "Look at its unit and its point, and at the room's measures: cloth is bought by it.",
              },
            ),
          ]
        : [],
    );
  // What hangs on a bed goes round three of its sides.
  const longest = floor && hangsOn === null ? Length.max(floor.length, floor.width) : null;
  return [
    ...told(
      upright,
      roomHeight?.plus(POOLED) ?? null,
      (most) => `the room is ${printMeasured(roomHeight ?? most, units)} high`,
    ),
    ...told(along, longest, (most) => `no wall is longer than ${printLength(most, units)}`),
  ];
}

/**
 * A warning for each turning, by its key, that takes more than half of the finished drop: its size and the drop have changed places, or
 * a unit is wrong. It stands at the turning where the item says it, else at the drop, for an allowance.
 */
export function turningsTooDeep(
  turnings: Readonly<Record<string, { readonly turned: Length; readonly isItems: boolean }>>,
  drop: Length,
  context: ItemContext,
): Diagnostic[] {
  const p = (length: Length) => printLength(length, context.units);
  return Object.entries(turnings).flatMap(([key, { turned, isItems }]) =>
    turned.times(2).isMoreThan(drop)
      ? [
          diagnostic(
            context.place(isItems ? [key] : ["drop"]),
            "turning-past-half",
            `The finished drop is ${p(drop)}, and ${key} takes ${p(turned)} more.`,
            {
              severity: "warning",
              actual: p(turned),
              hint: `Look at drop, and at ${key}${isItems ? "" : " under allowances in studio.md"}: it is the whole turning, and seldom half as long as what it finishes.`,
            },
          ),
        ]
      : [],
  );
}

/** A warning where a board's length and the depth of what hangs from it have changed places. */
export function deeperThanLong(
  what: string,
  board: Length,
  depth: Length | undefined,
  { units, place }: ItemContext,
): Diagnostic[] {
  if (!depth?.isMoreThan(board)) return [];
  return [
    diagnostic(
      place(["depth"]),
      `${what}-deeper-than-long`,
      `This ${what} is ${printMeasured(board, units)} long and ${printMeasured(depth, units)} deep.`,
      {
        severity: "warning",
        actual: printMeasured(depth, units),
        hint: "board is its length from end to end, depth how far it hangs down.",
      },
    ),
  ];
}

/** A warning for each of `parts`, by its key, that is more than half as long as the pole whose ends or middle it stands at. */
export function longBesidePole(parts: Written, pole: Length, context: ItemContext): Diagnostic[] {
  const { units, place } = context;
  return Object.entries(parts).flatMap(([key, length]) =>
    length?.times(2).isMoreThan(pole)
      ? [
          diagnostic(
            place([key]),
            "long-beside-pole",
            `${key} is ${printMeasured(length, units)}, and the pole ${printLength(pole, units)}.`,
            {
              severity: "warning",
              actual: printMeasured(length, units),
              hint: "Look at its unit and its point: it is covered with cloth as the pole is.",
            },
          ),
        ]
      : [],
  );
}
