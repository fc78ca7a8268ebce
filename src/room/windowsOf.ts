import type { WindowFacts } from "../items/itemKind.ts";
import type { Wall } from "./walls.ts";

/** The room's windows and named doors by name: a curtain hangs at either. Windows stand on their walls, so without walls there are none; of two of one name the first counts. */
export function windowsOf(walls: readonly Wall[]): ReadonlyMap<string, WindowFacts> {
  const windows = new Map<string, WindowFacts>();
  for (const wall of walls) {
    for (const opening of wall.openings) {
      const { what, name } = opening;
      if (name === null || windows.has(name)) continue;
      windows.set(name, {
        name,
        wall: wall.name,
        width: opening.width,
        height: opening.height,
        sill: opening.foot,
        recess: opening.recess,
        fromLeft: opening.fromLeft,
        ...(what === "door" ? { isDoor: true } : {}),
      });
    }
  }
  return windows;
}
