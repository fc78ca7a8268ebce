import { expect, test } from "vitest";
import { ceilingAreas, visibleAreas } from "../../src/room/visibleAreas.ts";
import { roomOf } from "./roomOf.ts";

const SMALL = {
  objects: {
    rug: `object: Rug\nshape: rug\nsize: 2 m x 2 m`,
    chest: `object: Chest\nshape: chest\nsize: 1 m x 50 cm x 1 m`,
    picture: `object: Picture\nshape: picture\nsize: 1 m x 50 cm`,
  },
  cloths: {
    fern: `cloth: Fern\nwidth: 137 cm`,
    fine: `cloth: Fine\nroll: { width: 53 cm, length: 10.05 m }`,
  },
};
const ROOM = `
room: A
height: 2.5 m
floor: 5 m x 4 m
walls:
  - wall: north
    length: 5 m
    windows: [{ window: bay, from-left: 2 m, size: 1 m x 1 m, sill: 1 m }]
    breast: { from-left: 3.5 m, width: 1 m, depth: 0.5 m }
items:`;
const PAINT = `  - paint: Walls\n    on: walls\n    colour: "#efe3c8"\n`;
const seen = (items: string) => visibleAreas(roomOf(`${ROOM}\n${items}`, SMALL));
/** Square metres seen of an item (or of bare wall or floor), on one wall or in all. */
const area = (all: ReturnType<typeof seen>, item: string, wall?: string) =>
  all
    .filter(
      (each) => (each.item ?? each.surface) === item && (wall === undefined || each.wall === wall),
    )
    .reduce((sum, each) => sum + each.areaMm2 / 1e6, 0);

test("bare walls less openings, with the breast's sides, and the floor; the ceiling is left out", () => {
  const all = roomOf(ROOM.replace(/items:$/, ""), SMALL);
  const bare = visibleAreas(all);
  expect(area(bare, "wall")).toBeCloseTo((18 + 1) * 2.5 - 1, 6);
  expect(area(bare, "floor")).toBeCloseTo(20, 6);
  expect(bare.every((each) => each.zone === "wall" || each.zone === "floor")).toBe(true);
});

test("what the ceiling is painted with is known apart, since it carries a colour", () => {
  const made = roomOf(
    `${ROOM}\n${PAINT}  - paint: Ceiling\n    on: ceiling\n    colour: "#ffffff"\n`,
    SMALL,
  );
  expect(ceilingAreas(made)).toMatchObject([
    { item: "paint-ceiling", zone: "overhead", wall: null, colour: "#ffffff" },
  ]);
});

test("paint on the walls takes the bare walls' place, wall by wall; paint on the ceiling is not seen", () => {
  const all = seen(`${PAINT}  - paint: Ceiling\n    on: ceiling\n    colour: "#ffffff"\n`);
  expect(area(all, "paint-walls")).toBeCloseTo(46.5, 6);
  expect(area(all, "paint-walls", "east")).toBeCloseTo(10, 6);
  expect(area(all, "wall")).toBe(0);
  expect(area(all, "paint-ceiling")).toBe(0);
});

test("paper lies over paint", () => {
  const all = seen(
    `${PAINT}  - wallpaper: Breast\n    on: { wall: north, breast: face-and-sides }\n    cloth: fine\n`,
  );
  expect(area(all, "wallpaper-breast")).toBeCloseTo(2 * 2.5, 6);
  expect(area(all, "paint-walls")).toBeCloseTo(46.5 - 5, 6);
});

test("a picture and a chest at a wall hide it; the floor loses the chest and the rug, the rug what stands on it", () => {
  const all =
    seen(`${PAINT}  - object: picture\n    at: { wall: south, from-left: 1 m, height: 1.2 m }
  - object: chest\n    at: { floor: 2.5 m x 3.75 m, facing: north }
  - object: rug\n    at: { floor: 2.5 m x 3 m }\n`);
  expect(area(all, "paint-walls", "south")).toBeCloseTo(12.5 - 0.5 - 1, 6);
  expect(area(all, "object-picture")).toBeCloseTo(0.5, 6);
  // The chest stands at 3.5 to 4 m from the north wall, the rug lies from 2 to 4 m.
  expect(area(all, "object-rug")).toBeCloseTo(4 - 0.5, 6);
  expect(area(all, "floor")).toBeCloseTo(20 - 4, 6);
});

test("curtains hide their wall and their window, and a chest hides its part of the curtains", () => {
  const curtains = `  - curtains: Bay\n    at: bay\n    cloth: fern\n    pole: 2 m\n    drop: 2 m\n    pole-height: 2.04 m\n    heading: pencil-pleat\n`;
  const alone = seen(PAINT + curtains);
  const before = area(seen(PAINT), "paint-walls", "north");
  // They hang from 2 m to the floor, 2 m wide, a square metre of it over the window.
  expect(before - area(alone, "paint-walls", "north")).toBeCloseTo(4 - 1, 6);
  const hidden = seen(
    `${PAINT}${curtains}  - object: chest\n    at: { floor: 2.5 m x 30 cm, facing: south }\n`,
  );
  expect(area(hidden, "curtains-bay") / area(alone, "curtains-bay")).toBeCloseTo(0.75, 6);
});

test("walls, openings, floor and what hides them add up to the whole room", () => {
  const all = seen(
    `${PAINT}  - wallpaper: Breast\n    on: { wall: north, breast: face }\n    cloth: fine\n  - object: picture\n    at: { wall: south, from-left: 1 m, height: 1.2 m }\n`,
  );
  const sum = all.reduce((total, each) => total + each.areaMm2 / 1e6, 0);
  expect(sum).toBeCloseTo(19 * 2.5 - 1 + 20, 6);
});

test("without walls only the items' own surfaces are known", () => {
  const all = visibleAreas(
    roomOf(
      `room: A\nitems:\n  - cushion: Seat\n    cloth: fern\n    size: 50 cm x 50 cm\n    count: 2`,
      SMALL,
    ),
  );
  expect(all.map((each) => [each.item, each.cloth, each.areaMm2])).toEqual([
    ["cushion-seat", "fern", 500_000],
  ]);
});
