import type { Drawing } from "../../drawing/shape.ts";
import type { DrawingContext, ItemDrawing } from "../itemDrawing.ts";
import type { WallRun } from "../itemKind.ts";
import type { WallpaperMade } from "./pieces.ts";
import type { WallpaperFields } from "./schema.ts";
import { wallpaperSheet } from "./sheet.ts";
import { wallDrawing } from "./wallDrawing.ts";

/** Faces that follow one another on the same wall, so that a chimney breast is drawn with what is beside it. */
function byWall(runs: readonly WallRun[]): WallRun[][] {
  const walls: WallRun[][] = [];
  for (const run of runs) {
    const last = walls.at(-1);
    if (last?.[0]?.wall === run.wall) last.push(run);
    else walls.push([run]);
  }
  return walls;
}

/** Each wall from inside the room, opened out flat. */
function workshop(_: WallpaperFields, made: WallpaperMade, context: DrawingContext): Drawing[] {
  const drawings: Drawing[] = [];
  let first = 0;
  for (const stretch of made.stretches) {
    let beforeMm = 0;
    for (const runs of byWall(stretch.runs)) {
      const leads = drawings.length === 0 || made.stretches.length > 1;
      drawings.push(wallDrawing({ runs, beforeMm, first, leads }, made, context));
      beforeMm += runs.reduce((sum, run) => sum + run.width.toMm(), 0);
    }
    first += Math.ceil(Math.round((beforeMm / (made.rollWidth?.toMm() ?? beforeMm)) * 1e6) / 1e6);
  }
  return drawings;
}

export const wallpaperDrawing: ItemDrawing<WallpaperFields, WallpaperMade> = {
  kind: "wallpaper",
  // Paper is the wall's own ground, which the elevation of the room lays behind everything.
  elevation: () => null,
  plan: () => null,
  workshop,
  sheet: wallpaperSheet,
};
