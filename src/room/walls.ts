import type { Place } from "../diagnostics/diagnostic.ts";
import { COMPASS } from "../fields/placementField.ts";
import type { Length } from "../units/length.ts";

export type Compass = (typeof COMPASS)[number];

/** A window or door in a wall; lengths from the wall's left end as seen from inside, and from the floor. */
export interface Opening {
  readonly what: "window" | "door";
  readonly name: string | null;
  readonly fromLeft: Length;
  readonly width: Length;
  readonly foot: Length;
  readonly height: Length;
  readonly recess: Length | null;
  readonly place: Place;
}

/** A chimney breast: a part of a wall that stands forward into the room. */
export interface Breast {
  readonly fromLeft: Length;
  readonly width: Length;
  readonly depth: Length;
}

/**
 * One wall. Walls follow each other clockwise as seen from above, so each runs from its left to its right end as one looks at it
 * from inside. `side` is the compass point that one looks towards; `start` is its left end, from the room's west and north edges.
 */
export interface Wall {
  readonly name: string;
  readonly side: Compass;
  readonly length: Length;
  readonly start: { readonly x: Length; readonly y: Length };
  readonly openings: readonly Opening[];
  readonly breast: Breast | null;
  readonly place: Place;
}

/** Way of each wall from its left to its right end: x to the east, y to the south. */
export const DIRECTION: Readonly<Record<Compass, { readonly x: number; readonly y: number }>> = {
  north: { x: 1, y: 0 },
  east: { x: 0, y: 1 },
  south: { x: -1, y: 0 },
  west: { x: 0, y: -1 },
};

/** The side that a wall's name tells (`north`, `east 2`, `bay-south`), or null. */
export function sideByName(name: string): Compass | null {
  const words = name.toLowerCase().split(/[^a-z]+/);
  return COMPASS.find((side) => words.includes(side)) ?? null;
}

/** The next side clockwise: from the north wall on to the east wall. */
export function turnRight(side: Compass): Compass {
  return COMPASS[(COMPASS.indexOf(side) + 1) % 4] as Compass;
}
