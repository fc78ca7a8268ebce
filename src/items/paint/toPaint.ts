import Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { printLength } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext, WallRun } from "../itemKind.ts";
import { printArea } from "./printAmount.ts";
import type { PaintFields } from "./schema.ts";
import {
  type Area,
  areaOf,
  doorWords,
  openingWords,
  type WoodworkArea,
  wallArea,
  woodworkArea,
} from "./surface.ts";

/** What is painted, and how large it is. */
export interface ToPaint {
  /** In words: walls, ceiling, woodwork, or walls by name. */
  readonly where: string;
  readonly runs: readonly WallRun[];
  /** Square millimetres, exact; null where the room has no walls or floor. */
  readonly area: Area | null;
  readonly woodwork: WoodworkArea | null;
}

/** The ceiling as the floor, the woodwork as an estimate, or walls less their openings; with the lines of its working. */
export function toPaint(fields: PaintFields, context: ItemContext, notes: Notes): ToPaint {
  const where = Array.isArray(fields.on) ? fields.on.join(", ") : (fields.on as string);
  if (where === "ceiling")
    return { where, runs: [], area: ceilingArea(context, notes), woodwork: null };
  const runs = context.runs(fields.on);
  if (runs === null) {
    noRoom(
      "The room's walls or its height are not given, so there is nothing to reckon paint by.",
      context,
      notes,
    );
    return { where, runs: [], area: null, woodwork: null };
  }
  if (runs.length === 0)
    return { where, runs, area: noWall(fields, where, context, notes), woodwork: null };
  if (where === "woodwork") {
    const woodwork = woodworkOf(fields, runs, context, notes);
    return { where, runs, area: woodwork.total, woodwork };
  }
  return { where, runs, area: wallsArea(runs, context, notes), woodwork: null };
}

function ceilingArea(context: ItemContext, notes: Notes): Area | null {
  const { floor, units } = context;
  if (context.isCeilingPapered) {
    notes.questions.push("The ceiling is papered: nothing is left to paint.");
    return new Fraction(0);
  }
  if (!floor) {
    noRoom("The room has neither floor nor walls, so its ceiling has no size.", context, notes);
    return null;
  }
  const ceiling = areaOf(floor.length, floor.width);
  notes.working.push({
    what: "Ceiling",
    sum: `${printLength(floor.length, units)} × ${printLength(floor.width, units)}, as the floor`,
    result: printArea(ceiling, units),
    rounded: null,
  });
  return ceiling;
}

/** Nothing to paint: all is papered, or a wall is named that is not there. */
function noWall(
  fields: PaintFields,
  where: string,
  context: ItemContext,
  notes: Notes,
): Area | null {
  if (!Array.isArray(fields.on)) {
    notes.questions.push("Every wall is papered: nothing is left to paint.");
    return new Fraction(0);
  }
  notes.diagnostics.push(
    diagnostic(context.place(["on"]), "wall-not-found", `"${where}" is no wall of this room.`, {
      actual: where,
      expected: "walls that the room file lists",
      hint: "Write the walls' names as under walls, or on: walls for all of them.",
    }),
  );
  return null;
}

function woodworkOf(
  fields: PaintFields,
  runs: readonly WallRun[],
  context: ItemContext,
  notes: Notes,
): WoodworkArea {
  const { units } = context;
  const casing = context.length("casing");
  const skirting = fields.skirting ?? context.length("skirting");
  const wood = woodworkArea(runs, skirting, casing);
  if (!fields.skirting)
    notes.questions.push(
      `The skirting's height is not measured: ${printLength(skirting, units)} is taken.`,
    );
  if (runs.some((r) => r.openings.some((o) => o.what === "window")))
    notes.questions.push("Are the window sashes painted too? They are not counted.");
  notes.working.push(
    {
      what: "Skirting",
      sum: `${printLength(wood.skirtingLength, units)}, the walls' faces less the doors with their casings, × ${printLength(skirting, units)}`,
      result: printArea(wood.skirting, units),
      rounded: null,
    },
    {
      what: "Casings, an estimate",
      sum: `round ${openingWords(runs, units)}: three sides of a door, four of a window, × ${printLength(casing, units)}`,
      result: printArea(wood.casings, units),
      rounded: null,
    },
    {
      what: "Doors, room side, an estimate",
      sum: doorWords(runs, units),
      result: printArea(wood.doors, units),
      rounded: null,
    },
  );
  return wood;
}

function wallsArea(runs: readonly WallRun[], context: ItemContext, notes: Notes): Area {
  const { units } = context;
  const walls = wallArea(runs, context.length("small-opening"));
  const small = `${walls.keptIn} small ${walls.keptIn === 1 ? "one" : "ones"} not taken off`;
  notes.working.push(
    {
      what: "Wall faces",
      sum: runs
        .map((run) => `${printLength(run.width, units)} × ${printLength(run.height, units)}`)
        .join(" + "),
      result: printArea(walls.gross, units),
      rounded: null,
    },
    {
      what: "Walls",
      sum: `${printArea(walls.gross, units)} − ${printArea(walls.openings, units)} openings${walls.keptIn ? `; ${small}` : ""}`,
      result: printArea(walls.net, units),
      rounded: null,
    },
  );
  return walls.net;
}

function noRoom(message: string, context: ItemContext, notes: Notes): void {
  notes.diagnostics.push(
    diagnostic(context.place(["on"]), "room-without-walls", message, {
      expected: "floor or walls, and height, in the room file",
      hint: `Write for example floor: 16' 6" x 12' 4" and height: 8' 9", or 5 m x 3.8 m and 2.65 m.`,
    }),
  );
}
