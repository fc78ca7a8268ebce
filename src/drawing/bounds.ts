import { pathCommands } from "./pathCommands.ts";
import type { PathData } from "./shape.ts";

export interface Box {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/**
 * A box that holds a path of absolute commands. Curves count with their handles and arcs with their radii, so the box may be
 * larger than the ink, never smaller. Throws on relative commands, which our own helpers never write.
 */
export function boundsOf(d: PathData): Box {
  let x = 0;
  let y = 0;
  let box: Box | null = null;
  const take = (px: number, py: number, rx = 0, ry = 0) => {
    const seen = { x1: px - rx, y1: py - ry, x2: px + rx, y2: py + ry };
    box = box === null ? seen : joinBoxes(box, seen);
  };
  for (const { command, values } of pathCommands(d)) {
    if (command === "H") x = values[0] as number;
    else if (command === "V") y = values[0] as number;
    else if (command === "A") {
      const [rx, ry] = values as [number, number];
      // The arc's middle lies within one diameter of both ends.
      take(x, y, 2 * rx, 2 * ry);
      [x, y] = values.slice(5) as [number, number];
      take(x, y, 2 * rx, 2 * ry);
      continue;
    } else {
      for (let i = 0; i < values.length; i += 2) {
        [x, y] = [values[i] as number, values[i + 1] as number];
        take(x, y);
      }
    }
    if (command !== "Z") take(x, y);
  }
  return box ?? { x1: 0, y1: 0, x2: 0, y2: 0 };
}

export function joinBoxes(a: Box, b: Box): Box {
  return {
    x1: Math.min(a.x1, b.x1),
    y1: Math.min(a.y1, b.y1),
    x2: Math.max(a.x2, b.x2),
    y2: Math.max(a.y2, b.y2),
  };
}
