import { type Diagnostic, diagnostic, type Place } from "../diagnostics/diagnostic.ts";
import type { RoomRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { printLike } from "../units/printLike.ts";
import type { Breast, Opening } from "./walls.ts";

type WallFields = NonNullable<RoomRecord["fields"]["walls"]>[number];

const say = (length: Length) => length.typed ?? printLike(length);

/**
 * The windows, doors and breast of one wall. One that reaches beyond its wall or the ceiling, and two that overlap, are errors at
 * their own lines.
 */
export function openingsOf(
  room: RoomRecord,
  wall: WallFields,
  index: number,
  length: Length,
  found: Diagnostic[],
): { readonly openings: readonly Opening[]; readonly breast: Breast | null } {
  const at = (...keys: (string | number)[]): Place => room.place(["walls", index, ...keys]);
  const windows = (wall.windows ?? []).map(
    (fields, n): Opening => ({
      what: "window",
      name: fields.window,
      fromLeft: fields["from-left"],
      width: fields.size[0] as Length,
      foot: fields.sill,
      height: fields.size[1] as Length,
      recess: fields.recess ?? null,
      place: at("windows", n),
    }),
  );
  const doors = (wall.doors ?? []).map(
    (fields, n): Opening => ({
      what: "door",
      name: fields.door ?? null,
      fromLeft: fields["from-left"],
      width: fields.size[0] as Length,
      foot: Length.zero,
      height: fields.size[1] as Length,
      recess: null,
      place: at("doors", n),
    }),
  );
  const openings = [...windows, ...doors];
  for (const opening of openings)
    within(opening, wall.wall, length, room.fields.height ?? null, found);
  overlaps(openings, wall.wall, found);
  return { openings, breast: breastOf(wall, length, at("breast"), found) };
}

function nameOf(opening: Opening): string {
  return opening.name ? `The ${opening.what} ${opening.name}` : `The ${opening.what}`;
}

function within(
  opening: Opening,
  wall: string,
  length: Length,
  ceiling: Length | null,
  found: Diagnostic[],
): void {
  const right = opening.fromLeft.plus(opening.width);
  if (right.isMoreThan(length)) {
    found.push(
      diagnostic(
        opening.place,
        "opening-beyond-wall",
        `${nameOf(opening)} reaches ${printLike(right.minus(length), length, opening.width)} beyond the right end of the ${wall} wall.`,
        {
          expected: `at most ${say(length)} for from-left and width together`,
          hint: "Check from-left (from the wall's left end, seen from inside) and the size (width first).",
        },
      ),
    );
  }
  const head = opening.foot.plus(opening.height);
  if (ceiling && head.isMoreThan(ceiling)) {
    found.push(
      diagnostic(
        opening.place,
        "opening-above-ceiling",
        `${nameOf(opening)} reaches ${printLike(head.minus(ceiling), ceiling)} above the ceiling.`,
        {
          expected: `at most ${say(ceiling)} for the sill and the opening's height together`,
          hint: "Check the sill, the size (width first) and the room's height.",
        },
      ),
    );
  }
}

function overlaps(openings: readonly Opening[], wall: string, found: Diagnostic[]): void {
  openings.forEach((one, n) => {
    const other = openings.slice(0, n).find((each) => overlapping(one, each));
    if (!other) return;
    found.push(
      diagnostic(
        one.place,
        "openings-overlap",
        `${nameOf(one)} and ${nameOf(other).toLowerCase()} overlap on the ${wall} wall.`,
        { hint: "Check from-left and the size of both." },
      ),
    );
  });
}

function overlapping(a: Opening, b: Opening): boolean {
  const meets = (from: Length, size: Length, otherFrom: Length, otherSize: Length) =>
    from.isLessThan(otherFrom.plus(otherSize)) && otherFrom.isLessThan(from.plus(size));
  return (
    meets(a.fromLeft, a.width, b.fromLeft, b.width) && meets(a.foot, a.height, b.foot, b.height)
  );
}

function breastOf(
  wall: WallFields,
  length: Length,
  place: Place,
  found: Diagnostic[],
): Breast | null {
  const breast = wall.breast;
  if (!breast) return null;
  const fromLeft = breast["from-left"];
  const right = fromLeft.plus(breast.width);
  if (right.isMoreThan(length)) {
    found.push(
      diagnostic(
        place,
        "breast-beyond-wall",
        `The chimney breast reaches ${printLike(right.minus(length), length, breast.width)} beyond the right end of the ${wall.wall} wall.`,
        {
          expected: `at most ${say(length)} for from-left and width together`,
          hint: "Check its from-left and width. Until then it is left out.",
        },
      ),
    );
    return null;
  }
  return { fromLeft, width: breast.width, depth: breast.depth };
}
