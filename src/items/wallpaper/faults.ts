import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printMeasured } from "../../units/printLength.ts";
import type { ItemContext, WallRun } from "../itemKind.ts";
import type { Paper } from "./paper.ts";
import type { WallpaperFields } from "./schema.ts";

/** A card without a roll size: no rolls can be counted. */
export function rollFaults(
  fields: WallpaperFields,
  { card, roll }: Paper,
  context: ItemContext,
): Diagnostic[] {
  if (!card || roll) return [];
  return [
    diagnostic(
      context.place(["cloth"]),
      "wallcovering-without-roll",
      `${card.name} has no roll size on its card, so no rolls can be counted.`,
      {
        actual: fields.cloth,
        expected: "a wallcovering's card with its roll",
        hint: `Write on the card, for example: roll: { width: 53 cm, length: 10.05 m }.`,
      },
    ),
  ];
}

/** A room without walls, or a wall that it does not have. */
export function wallFaults(
  fields: WallpaperFields,
  runs: readonly WallRun[] | null,
  context: ItemContext,
): Diagnostic[] {
  if (runs === null) {
    return [
      diagnostic(
        context.place(["on"]),
        "room-without-walls",
        "The room's walls or its height are not given, so there is nothing to reckon paper by.",
        {
          expected: "floor or walls, and height, in the room file",
          hint: `Write for example floor: 16' 6" x 12' 4" or 5 m x 3.8 m (or all walls with their lengths), and height: 8' 9" or 2.65 m.`,
        },
      ),
    ];
  }
  if (runs.length > 0) return [];
  return [
    diagnostic(
      context.place(["on"]),
      "wall-not-found",
      `"${wallsNamed(fields.on)}" is no wall of this room.`,
      {
        actual: wallsNamed(fields.on),
        expected: "a wall that the room file lists",
        hint: "Write the wall's name as under walls: north, east, south or west, or your own.",
      },
    ),
  ];
}

/** A roll that may not give one strip of this cut. */
export function shortRollFault(paper: Paper, cut: Length, context: ItemContext): Diagnostic[] {
  const { card, roll, repeat } = paper;
  if (!roll) return [];
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  return [
    diagnostic(
      context.place(["cloth"]),
      "roll-too-short",
      `A roll of ${card?.name} is ${printMeasured(roll.length, units)} long; one strip is ${p(cut)}${repeat ? `, and up to ${p(repeat.up)} may be lost before the first motif` : ""}.`,
      {
        expected: "a roll that gives at least one strip",
        hint: "Choose a paper with longer rolls, or write the height that is papered.",
      },
    ),
  ];
}

function wallsNamed(on: WallpaperFields["on"]): string {
  if (typeof on === "string") return on;
  return Array.isArray(on) ? on.join(", ") : (on as { wall: string }).wall;
}
