import { expect, test } from "vitest";
import { codesOf, roomOf } from "./roomOf.ts";

const walls = (text: string) => roomOf(text).plan.walls ?? [];

test("a floor gives four walls, the north wall first, clockwise, with the first measure north", () => {
  const { plan } = roomOf(`room: A\nheight: 2.5 m\nfloor: 5 m x 4 m`);
  expect(
    plan.walls?.map((w) => [w.name, w.length.toMm(), w.start.x.toMm(), w.start.y.toMm()]),
  ).toEqual([
    ["north", 5000, 0, 0],
    ["east", 4000, 5000, 0],
    ["south", 5000, 5000, 4000],
    ["west", 4000, 0, 4000],
  ]);
  expect(plan.floor?.perimeter.toMm()).toBe(18_000);
  expect(plan.diagnostics).toEqual([]);
});

test("with floor and walls, the floor gives the lengths and the walls their openings", () => {
  const room = roomOf(`
room: A
floor: 16' 6" x 12' 4"
walls:
  - wall: east
    length: 12' 4"
    doors: [{ from-left: 1', size: 32" x 80" }]`);
  const east = room.plan.walls?.find((w) => w.name === "east");
  expect(east?.openings.map((o) => o.what)).toEqual(["door"]);
  expect(room.plan.walls).toHaveLength(4);
  expect(codesOf(room)).toEqual([]);
});

test("a wall that differs from the floor is a warning at its length", () => {
  const room = roomOf(`room: A\nfloor: 5 m x 4 m\nwalls:\n  - { wall: north, length: 5.2 m }`);
  const [found] = room.diagnostics;
  expect(found).toMatchObject({
    code: "wall-differs-from-floor",
    severity: "warning",
    keyPath: "walls[0].length",
  });
  expect(room.plan.walls?.[0]?.length.toMm()).toBe(5000);
});

test("four walls that do not close are a warning with the gap, and the longer one counts", () => {
  const room = roomOf(`
room: A
walls:
  - { wall: north, length: 5 m }
  - { wall: east, length: 4 m }
  - { wall: south, length: 4.9 m }
  - { wall: west, length: 4 m }`);
  expect(room.diagnostics[0]).toMatchObject({ code: "walls-do-not-close", severity: "warning" });
  expect(room.diagnostics[0]?.message).toContain("10\u202fcm");
  expect(room.plan.floor?.length.toMm()).toBe(5000);
});

test("walls that do not go round give walls without a floor, and it is said", () => {
  const room = roomOf(
    `room: A\nheight: 2.5 m\nwalls:\n  - { wall: north, length: 5 m }\n  - { wall: east, length: 4 m }`,
  );
  expect(codesOf(room)).toEqual(["walls-do-not-close"]);
  expect(room.plan.walls).toHaveLength(2);
  expect(room.plan.floor).toBeNull();
});

test("an L-shaped room closes by the compass words in its walls' names", () => {
  const room = roomOf(`
room: A
height: 2.5 m
walls:
  - { wall: north, length: 5 m }
  - { wall: east 1, length: 2 m }
  - { wall: south 1, length: 2 m }
  - { wall: east 2, length: 2 m }
  - { wall: south 2, length: 3 m }
  - { wall: west, length: 4 m }`);
  expect(codesOf(room)).toEqual([]);
  expect(room.plan.floor).toMatchObject({});
  expect(room.plan.floor?.perimeter.toMm()).toBe(18_000);
  expect(room.plan.walls?.map((w) => [w.start.x.toMm(), w.start.y.toMm()])).toEqual([
    [0, 0],
    [5000, 0],
    [5000, 2000],
    [3000, 2000],
    [3000, 4000],
    [0, 4000],
  ]);
});

test("walls without compass words turn right, one after the other", () => {
  const all = walls(
    `room: A\nwalls:\n  - { wall: window wall, length: 5 m }\n  - { wall: stove wall, length: 4 m }\n  - { wall: door wall, length: 5 m }\n  - { wall: book wall, length: 4 m }`,
  );
  expect(all.map((w) => w.side)).toEqual(["north", "east", "south", "west"]);
});

test("neither floor nor walls: said once, as a warning", () => {
  const room = roomOf(
    `room: A\nheight: 2.5 m\nitems:\n  - paint: Walls\n    on: walls\n    colour: "#efe3c8"\n  - wallpaper: All\n    on: walls\n    cloth: fern`,
    { cloths: { fern: `cloth: Fern\nroll: { width: 53 cm, length: 10.05 m }` } },
  );
  expect(codesOf(room)).toEqual(["no-plan"]);
  expect(room.diagnostics[0]?.message).toContain("no plan, no elevation and no paint quantity");
  expect(room.diagnostics[0]?.severity).toBe("warning");
});

test.each([
  [
    "beyond its wall",
    `{ window: bay, from-left: 4 m, size: 1.2 m x 1 m, sill: 80 cm }`,
    "opening-beyond-wall",
  ],
  [
    "above the ceiling",
    `{ window: bay, from-left: 1 m, size: 1.2 m x 2 m, sill: 80 cm }`,
    "opening-above-ceiling",
  ],
])("a window %s is an error at its line", (_, window, code) => {
  const room = roomOf(
    `room: A\nheight: 2.5 m\nfloor: 5 m x 4 m\nwalls:\n  - wall: north\n    length: 5 m\n    windows: [${window}]`,
  );
  expect(room.diagnostics).toHaveLength(1);
  expect(room.diagnostics[0]).toMatchObject({
    code,
    severity: "error",
    line: 8,
    keyPath: "walls[0].windows[0]",
  });
});

test("two openings that overlap, and a breast beyond the wall", () => {
  const room = roomOf(`
room: A
floor: 5 m x 4 m
walls:
  - wall: north
    length: 5 m
    windows: [{ window: left, from-left: 1 m, size: 1 m x 1 m, sill: 80 cm }, { window: right, from-left: 1.9 m, size: 1 m x 1 m, sill: 80 cm }]
    breast: { from-left: 4 m, width: 1.2 m, depth: 30 cm }`);
  expect(codesOf(room)).toEqual(["openings-overlap", "breast-beyond-wall"]);
});

// An L: 5 m to the east, 4 m south, 3 m west, 1 m north, 2 m west, 3 m north. 5 = 3 + 2, 4 = 1 + 3.
const L_SHAPE = (fifth: string) => `
room: A
height: 2.5 m
walls:
  - { wall: north, length: 5 m }
  - { wall: east, length: 4 m }
  - { wall: south, length: 3 m }
  - { wall: nook, length: 1 m }
  - { wall: ${fifth}, length: 2 m }
  - { wall: west, length: 3 m }
items:
  - object: rug
    at: { floor: 3.5 m x 2 m }`;

const RUG = { objects: { rug: "object: Rug\nshape: rug\nsize: 3 m x 2 m" } };

test("a room that turns left: the wall's name says so; without it, how it was read and how to mend it", () => {
  expect(roomOf(L_SHAPE("nook south"), RUG).diagnostics).toEqual([]);
  const wrong = roomOf(L_SHAPE("nook back"), RUG);
  expect(codesOf(wrong)).toEqual(["walls-do-not-close"]);
  expect(wrong.diagnostics[0]?.hint).toContain(
    "nook as west, nook back as north. Where the room turns left, write a compass word into the wall's name, as in south 2.",
  );
});
