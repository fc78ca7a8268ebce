import { circle, line, type Point, rect } from "../../drawing/paths.ts";
import type { Drawing, Shape } from "../../drawing/shape.ts";
import { stroke } from "../../items/common/clothFace.ts";
import type { Opening, Wall } from "../../room/walls.ts";
import { capital } from "../../units/capital.ts";
import type { Length } from "../../units/length.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import type { NumberedItem } from "./fittingItems.ts";
import { alongFloor, upright } from "./wallMeasures.ts";

/** What stands above the highest thing where the room has no height, and how far the line of hooks runs on at each side; millimetres. */
const ABOVE = 200;
const HOOK = 40;
/** Radius of a pole's end as it is drawn. */
const END = 28;
/** Parts of a rail's or a board's length at which its number may stand. */
const RAIL_PLACES = [1, 0, 0.75, 0.25, 0.5] as const;
const BOARD_PLACES = [0, 1, 0.25, 0.75, 0.5] as const;
/** A number's circle on paper, and about how wide and high a wall is drawn there, millimetres. */
const RADIUS = 2.6;
const USUAL_PAPER = [90, 48] as const;

/** How high the wall is drawn. */
function wallHeight(height: Length | null, items: readonly NumberedItem[], wall: Wall): number {
  if (height) return height.toMm();
  const tops = [
    ...items.flatMap(({ box, line: { mark } }) => [
      mark?.height.toMm() ?? 0,
      box?.foot.plus(box.height).toMm() ?? 0,
    ]),
    ...wall.openings.map((o) => o.foot.plus(o.height).toMm()),
  ];
  return Math.max(...tops) + ABOVE;
}

function openingShapes(opening: Opening, high: number): Shape[] {
  const [x, w, h] = [opening.fromLeft.toMm(), opening.width.toMm(), opening.height.toMm()];
  const y = high - opening.foot.toMm() - h;
  return [
    stroke(rect(x, y, w, h), "edge"),
    ...(opening.name
      ? [
          {
            shape: "words",
            x: x + w / 2,
            y: y + h * 0.55,
            text: opening.name,
            anchor: "middle",
          } as const,
        ]
      : []),
  ];
}

/** A thing as it is on the wall, closed or let down. */
function itemShapes({ box, line: { mark } }: NumberedItem, high: number): Shape[] {
  if (!box || !mark) return [];
  const at = high - mark.height.toMm();
  const [x, w] = [box.left.toMm(), box.width.toMm()];
  const [foot, head] = [high - box.foot.toMm(), high - box.foot.toMm() - box.height.toMm()];
  if (mark.as === "hooks") return [stroke(line(x - HOOK, at, x + w + HOOK, at), "level")];
  if (mark.as === "frame") return [stroke(rect(x, head, w, foot - head), "outline")];
  const from = mark.across?.left.toMm() ?? x;
  const to = from + (mark.across?.width.toMm() ?? w);
  const ends = mark.as === "pole" ? [circle(from, at, END), circle(to, at, END)] : [];
  return [
    stroke(rect(x, Math.min(at, head), w, foot - Math.min(at, head)), "hidden"),
    stroke(line(from, at, to, at), "cut"),
    ...ends.map((d) => stroke(d, "outline")),
  ];
}

/** Where a thing's number may stand, the best place first: a picture's in its middle, a rail's on its line. */
function numberPlaces({ box, line: { mark } }: NumberedItem, high: number): Point[] {
  if (!box || !mark) return [];
  const at = high - mark.height.toMm();
  if (mark.as === "frame") {
    const [x, w] = [box.left.toMm(), box.width.toMm()];
    return [[x + w / 2, high - box.foot.toMm() - box.height.toMm() / 2]];
  }
  const from = mark.across?.left.toMm() ?? box.left.toMm();
  const wide = mark.across?.width.toMm() ?? box.width.toMm();
  const parts = mark.as === "board" ? BOARD_PLACES : RAIL_PLACES;
  return parts.map((part) => [from + wide * part, at]);
}

/** The things' numbers, each in a white circle over the lines, apart from each other where there is a place for that. */
function numberShapes(items: readonly NumberedItem[], wide: number, high: number): Shape[] {
  const radius = RADIUS * Math.max(wide / USUAL_PAPER[0], high / USUAL_PAPER[1]);
  const taken: Point[] = [];
  return items.flatMap((item) => {
    const places = numberPlaces(item, high);
    const free = places.find(([x, y]) =>
      taken.every(([tx, ty]) => Math.hypot(tx - x, ty - y) > radius * 2),
    );
    const place = free ?? places[0];
    if (!place) return [];
    taken.push(place);
    const [x, y] = place;
    return [
      { shape: "path", d: circle(x, y, radius), fill: { tone: "paper" }, pen: "edge" } as const,
      {
        shape: "words",
        x,
        y,
        dyPaper: 1.2,
        text: String(item.number),
        anchor: "middle",
        weight: "bold",
      } as const,
    ];
  });
}

/**
 * A wall as one looks at it from inside, with its openings and all that goes up on it, measured from its left end and from the floor.
 * What hangs is drawn closed or let down, dashed.
 */
export function wallDrawing(
  wall: Wall,
  items: readonly NumberedItem[],
  room: Length | null,
  units: UnitSystem,
): Drawing {
  const high = wallHeight(room, items, wall);
  const wide = wall.length.toMm();
  return {
    widthMm: wide,
    heightMm: high,
    title: `${capital(wall.name)} wall, from inside`,
    description: `The ${wall.name} wall with ${items.length === 1 ? "one thing" : `${items.length} things`} to fix.`,
    shapes: [
      stroke(rect(0, 0, wide, high), "outline"),
      stroke(line(0, high, wide, high), "cut"),
      ...wall.openings.flatMap((each) => openingShapes(each, high)),
      ...items.flatMap((each) => itemShapes(each, high)),
      ...numberShapes(items, wide, high),
    ],
    dimensions: [...alongFloor(items, wall, units), ...upright(items, high, room, units)],
  };
}
