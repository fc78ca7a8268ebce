import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import type { ItemContext, WallRun } from "../itemKind.ts";
import type { WallpaperFields } from "./schema.ts";

/** Which way the strips of a ceiling run. */
export type CeilingWay = "north-south" | "east-west";

/** The ceiling as it is papered: as wide as its strips lie side by side, as high as one of them is long. */
export interface PaperedCeiling {
  readonly run: WallRun;
  readonly way: CeilingWay;
  /** True where the room's file does not say which way they run. */
  readonly isWayAssumed: boolean;
}

/**
 * The ceiling of a room as one run of paper, as large as the floor (the rectangle round a room that is none). Where nothing is said the
 * strips run the shorter way, since a short strip is easier to hang overhead (common practice, no source). Null where the paper is not on
 * the ceiling, or the room has no floor.
 */
export function paperedCeiling(
  { on, "strips-run": said }: WallpaperFields,
  { floor }: ItemContext,
): PaperedCeiling | null {
  if (on !== "ceiling" || floor === null) return null;
  // The floor's length is its north wall's.
  const shorter = floor.width.isMoreThan(floor.length) ? "east-west" : "north-south";
  const way = said ?? shorter;
  const [width, height] =
    way === "north-south" ? [floor.length, floor.width] : [floor.width, floor.length];
  const run = { wall: "ceiling", fromLeft: Length.zero, width, height, openings: [] };
  return { run, way, isWayAssumed: said === undefined };
}

/** The wall from which strips are numbered. */
export function firstWall(way: CeilingWay): string {
  return way === "north-south" ? "west" : "north";
}

/** The wall at the head of a drawing of the ceiling, as it is seen on the floor's plan turned so that `firstWall` is at its left. */
export function headWall(way: CeilingWay): string {
  return way === "north-south" ? "north" : "east";
}

/** `from north to south` */
export function wayWords(way: CeilingWay): string {
  return way === "north-south" ? "from north to south" : "from east to west";
}

/** A ceiling without a floor to take its size from, and keys that speak of walls alone, or of a ceiling alone. */
export function ceilingFaults(fields: WallpaperFields, context: ItemContext): Diagnostic[] {
  const fault = (key: string, code: string, message: string, hint: string) =>
    diagnostic(context.place([key]), code, message, { hint });
  if (fields.on !== "ceiling")
    return fields["strips-run"] === undefined
      ? []
      : [
          fault(
            "strips-run",
            "strips-run-on-walls",
            "strips-run is for paper on a ceiling: on walls the strips run upright.",
            "Take strips-run out, or write on: ceiling.",
          ),
        ];
  const found: Diagnostic[] = [];
  if (context.floor === null)
    found.push(
      fault(
        "on",
        "room-without-walls",
        "The room has neither floor nor walls, so its ceiling has no size.",
        `Write for example floor: 16' 6" x 12' 4" or 5 m x 3.8 m.`,
      ),
    );
  if (fields.height !== undefined)
    found.push(
      fault(
        "height",
        "ceiling-with-height",
        "A ceiling has no height: its strips are as long as the floor.",
        "Take height out; strips-run says which way they run.",
      ),
    );
  if (fields.borders !== undefined)
    found.push(
      fault(
        "borders",
        "ceiling-with-border",
        "A border is hung on a wall, and this paper is on the ceiling.",
        "Take borders out here, and write them at the paper on the walls.",
      ),
    );
  return found;
}

/** What a hanger must be told of a ceiling that the room's file cannot say. */
export function ceilingQuestions({ way, isWayAssumed }: PaperedCeiling): string[] {
  return [
    ...(isWayAssumed
      ? [`Which way do the strips run? They are reckoned ${wayWords(way)}, the shorter way.`]
      : []),
    "At which wall is the pattern's top, and along which does the first strip hang?",
  ];
}
