import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import { COMPASS } from "../fields/placementField.ts";
import type { RoomRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { printLike } from "../units/printLike.ts";
import { openingsOf } from "./readOpenings.ts";
import { type Compass, DIRECTION, sideByName, turnRight, type Wall } from "./walls.ts";

/** The floor as a whole: of a room that is no rectangle, the rectangle round it. */
export interface FloorFacts {
  readonly length: Length;
  readonly width: Length;
  readonly perimeter: Length;
}

export interface ReadWalls {
  /** Null where neither `floor` nor `walls` is written. */
  readonly walls: readonly Wall[] | null;
  /** Null too where the walls do not go round the room. */
  readonly floor: FloorFacts | null;
  readonly diagnostics: readonly Diagnostic[];
}

type WallFields = NonNullable<RoomRecord["fields"]["walls"]>[number];

interface Side {
  readonly name: string;
  readonly side: Compass;
  readonly length: Length;
  readonly index: number | null;
}

/**
 * The walls of a room in their order, clockwise as seen from above, from `floor` (a rectangle, the north wall's length first),
 * from `walls`, or from both: then `floor` gives the lengths and `walls` the openings. Without `floor` a wall runs the way its
 * name says (north, `east 2`); one without a compass word turns right from the wall before it.
 */
export function readWalls(room: RoomRecord): ReadWalls {
  const found: Diagnostic[] = [];
  const given = room.fields.walls ?? [];
  const sides = room.fields.floor ? rectangle(room, given, found) : asGiven(given);
  if (sides.length === 0) return { walls: null, floor: null, diagnostics: found };
  const walls = place(sides).map((at): Wall => {
    const fields = at.index === null ? null : (given[at.index] as WallFields);
    const openings = fields ? openingsOf(room, fields, at.index as number, at.length, found) : null;
    return {
      name: at.name,
      side: at.side,
      length: at.length,
      start: at.start,
      openings: openings?.openings ?? [],
      breast: openings?.breast ?? null,
      place: at.index === null ? room.place(["floor"]) : room.place(["walls", at.index]),
    };
  });
  return { walls, floor: floorOf(room, walls, found), diagnostics: found };
}

/** The four sides of a rectangle, with what `walls` says of each. */
function rectangle(room: RoomRecord, given: readonly WallFields[], found: Diagnostic[]): Side[] {
  const [length, width] = room.fields.floor as [Length, Length];
  given.forEach((wall, at) => {
    if ((COMPASS as readonly string[]).includes(wall.wall)) return;
    found.push(
      diagnostic(
        room.place(["walls", at, "wall"]),
        "wall-not-of-rectangle",
        `A room with a rectangular floor has no wall called ${wall.wall}.`,
        {
          actual: wall.wall,
          expected: COMPASS.join(", "),
          hint: "Name the wall by its compass point, or take `floor` out and write all the walls.",
        },
      ),
    );
  });
  return COMPASS.map((side) => {
    const own = side === "north" || side === "south" ? length : width;
    const index = given.findIndex((wall) => wall.wall === side);
    const said = given[index];
    if (said && !said.length.equals(own)) {
      found.push(
        diagnostic(
          room.place(["walls", index, "length"]),
          "wall-differs-from-floor",
          `The ${side} wall is ${said.length.typed ?? printLike(said.length, own)} here, but ${own.typed ?? printLike(own, said.length)} by the floor.`,
          {
            severity: "warning",
            actual: said.length.typed,
            expected: own.typed,
            hint: "Measure again and correct one of them. Until then the floor's measure counts.",
          },
        ),
      );
    }
    return { name: side, side, length: own, index: index < 0 ? null : index };
  });
}

function asGiven(given: readonly WallFields[]): Side[] {
  const sides: Side[] = [];
  given.forEach((wall, index) => {
    const before = sides.at(-1);
    const side = sideByName(wall.wall) ?? (before ? turnRight(before.side) : "north");
    sides.push({ name: wall.wall, side, length: wall.length, index });
  });
  return sides;
}

/** Each side's left end, counted from the west and north edges of the rectangle round the room. */
function place(sides: readonly Side[]): (Side & { readonly start: Wall["start"] })[] {
  let x = Length.zero;
  let y = Length.zero;
  const corners = sides.map((side) => {
    const corner = { x, y };
    x = x.plus(side.length.times(DIRECTION[side.side].x));
    y = y.plus(side.length.times(DIRECTION[side.side].y));
    return corner;
  });
  const west = Length.min(x, ...corners.map((corner) => corner.x));
  const north = Length.min(y, ...corners.map((corner) => corner.y));
  return sides.map((side, at) => {
    const corner = corners[at] as { x: Length; y: Length };
    return { ...side, start: { x: corner.x.minus(west), y: corner.y.minus(north) } };
  });
}

/** The floor, if the walls go round it; a ring that does not close is reported with its gap. */
function floorOf(room: RoomRecord, walls: readonly Wall[], found: Diagnostic[]): FloorFacts | null {
  const sum = (side: Compass) =>
    Length.sum(walls.filter((wall) => wall.side === side).map((wall) => wall.length));
  const north = sum("north");
  const south = sum("south");
  const east = sum("east");
  const west = sum("west");
  const perimeter = Length.sum(walls.map((wall) => wall.length));
  const round = ![north, south, east, west].some((side) => side.isZero());
  const gaps = [
    { name: "north and south", a: north, b: south },
    { name: "east and west", a: east, b: west },
  ].filter((pair) => !pair.a.equals(pair.b));
  if (!round) {
    found.push(
      diagnostic(
        room.place(["walls"]),
        "walls-do-not-close",
        "The walls given do not go round the room.",
        {
          severity: "warning",
          expected: "all walls, clockwise as seen from above",
          hint: `Write the missing walls, or add for example floor: 16' 6" x 12' 4" or 5 m x 3.8 m. Until then there is no plan.`,
        },
      ),
    );
    return null;
  }
  for (const gap of gaps) {
    const by = gap.a.isMoreThan(gap.b) ? gap.a.minus(gap.b) : gap.b.minus(gap.a);
    found.push(
      diagnostic(
        room.place(["walls"]),
        "walls-do-not-close",
        `The walls do not close: those to the ${gap.name} differ by ${printLike(by, gap.a, gap.b)}.`,
        {
          severity: "warning",
          hint: `${ofOwnNames(walls)}Measure both again. Until then the longer one counts for the floor.`,
        },
      ),
    );
  }
  const extent = extentOf(walls);
  return { length: extent.x, width: extent.y, perimeter };
}

/** How the walls were read whose names have no compass word: a corner that turns left is told by such a word alone. */
function ofOwnNames(walls: readonly Wall[]): string {
  const own = walls.filter((wall) => sideByName(wall.name) === null);
  if (own.length === 0) return "";
  const read = own.map((wall) => `${wall.name} as ${wall.side}`).join(", ");
  return `Taken to turn right from the wall before: ${read}. Where the room turns left, write a compass word into the wall's name, as in south 2. `;
}

/** The rectangle round all walls: of a pair that differs, the longer one counts. */
function extentOf(walls: readonly Wall[]): { x: Length; y: Length } {
  const ends = walls.flatMap((wall) => [
    wall.start,
    {
      x: wall.start.x.plus(wall.length.times(DIRECTION[wall.side].x)),
      y: wall.start.y.plus(wall.length.times(DIRECTION[wall.side].y)),
    },
  ]);
  return {
    x: Length.max(...ends.map((end) => end.x)),
    y: Length.max(...ends.map((end) => end.y)),
  };
}
