import { expect, test } from "vitest";
import { codesOf, roomOf } from "./roomOf.ts";

const OBJECTS = {
  objects: {
    stove: `object: Stove\nshape: stove\nsize: 80 cm x 50 cm x 180 cm`,
    rug: `object: Rug\nshape: rug\nsize: 3 m x 2 m`,
    picture: `object: Picture\nshape: picture\nsize: 60 cm x 80 cm`,
    table: `object: Table\nshape: table\nsize: 120 cm x 80 cm x 75 cm`,
    chair: `object: Chair\nshape: chair\nsize: 50 cm x 50 cm x 90 cm`,
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
  - wall: east
    length: 4 m
    windows: [{ window: bay, from-left: 1 m, size: 120 cm x 120 cm, sill: 80 cm }]
items:`;
const room = (items: string) => roomOf(`${ROOM}\n${items}`, OBJECTS);
const place = (items: string, id: string) => room(items).plan.placements.get(id);

test("on a wall: from its left end as seen from inside, with the floor that it takes", () => {
  const stove = place(`  - object: stove\n    at: { wall: east, from-left: 1 m }`, "object-stove");
  expect(stove).toMatchObject({ how: "wall", wall: "east", facing: "west" });
  const box = stove?.floorBox;
  // The east wall's left end is the north-east corner: 1 m from it, 50 cm into the room.
  expect([box?.west.toMm(), box?.north.toMm(), box?.toEast.toMm(), box?.toSouth.toMm()]).toEqual([
    4500, 1000, 500, 800,
  ]);
});

test("on the west wall left is the south end", () => {
  const stove = place(`  - object: stove\n    at: { wall: west, from-left: 0 }`, "object-stove");
  const box = stove?.floorBox;
  expect([box?.west.toMm(), box?.north.toMm()]).toEqual([0, 3200]);
});

test("on the floor: its middle from the west and north walls, turned by the way that it faces", () => {
  const south = place(
    `  - object: table\n    at: { floor: 2 m x 1 m, facing: south }`,
    "object-table",
  );
  expect([south?.floorBox?.west.toMm(), south?.floorBox?.north.toMm()]).toEqual([1400, 600]);
  const east = place(
    `  - object: table\n    at: { floor: 2 m x 1 m, facing: east }`,
    "object-table",
  );
  expect([east?.floorBox?.west.toMm(), east?.floorBox?.north.toMm()]).toEqual([1600, 400]);
});

test("curtains hang about the middle of their window, as wide as their pole and from head to hem", () => {
  const box = place(
    `  - curtains: Bay\n    at: bay\n    cloth: fern\n    pole: 180 cm\n    drop: 220 cm\n    pole-height: 230 cm\n    heading: pencil-pleat`,
    "curtains-bay",
  )?.wallBox;
  expect([box?.left.toMm(), box?.width.toMm(), box?.height.toMm()]).toEqual([700, 1800, 2200]);
});

test("what was taken for granted is said", () => {
  const picture = place(`  - object: picture\n    at: { wall: north }`, "object-picture");
  expect(picture?.assumed).toHaveLength(2);
  // Middle at 150 cm; 80 cm high.
  expect(picture?.wallBox?.foot.toMm()).toBe(1100);
  expect(picture?.wallBox?.left.toMm()).toBe(2200);
});

test.each([
  [
    "beyond its wall",
    `  - object: stove\n    at: { wall: north, from-left: 4.5 m }`,
    "item-beyond-wall",
    "30\u202fcm",
  ],
  [
    "above the ceiling",
    `  - object: picture\n    at: { wall: north, from-left: 1 m, height: 2 m }`,
    "item-above-ceiling",
    "30\u202fcm",
  ],
  [
    "outside the room",
    `  - object: table\n    at: { floor: 4.8 m x 1 m, facing: south }`,
    "item-outside-room",
    "inside the room",
  ],
  [
    "a pole wider than its wall",
    `  - curtains: Bay\n    at: bay\n    cloth: fern\n    pole: 3.5 m\n    drop: 2 m\n    heading: pencil-pleat`,
    "item-beyond-wall",
    "15\u202fcm",
  ],
])("%s is an error at the item's place", (_, items, code, words) => {
  const found = room(items).diagnostics.filter((d) => d.severity === "error");
  expect(found).toHaveLength(1);
  expect(found[0]).toMatchObject({ code, keyPath: "items[0].at" });
  expect(found[0]?.message).toContain(words);
});

test("two items in one place are a warning; a chair under a table, a rug, and touches are not", () => {
  const stove = `  - object: stove\n    at: { floor: 2 m x 2 m, facing: south }\n`;
  expect(
    codesOf(room(`${stove}  - object: chair\n    at: { floor: 2.2 m x 2 m, facing: south }`)),
  ).toEqual(["same-place"]);
  expect(
    codesOf(
      room(
        `${stove}  - object: chair\n    at: { floor: 2.2 m x 2 m, facing: south }\n    touches: [stove]`,
      ),
    ),
  ).toEqual([]);
  expect(
    codesOf(
      room(
        `  - object: table\n    at: { floor: 2 m x 2 m, facing: south }\n  - object: chair\n    at: { floor: 2 m x 1.7 m, facing: south }`,
      ),
    ),
  ).toEqual([]);
  expect(codesOf(room(`${stove}  - object: rug\n    at: { floor: 2 m x 2 m }`))).toEqual([]);
});

test("curtains and a blind share a window; two pairs of curtains do not", () => {
  const curtains = (title: string, more = "") =>
    `  - curtains: ${title}\n    at: bay\n    cloth: fern\n    pole: 180 cm\n    drop: 200 cm\n    heading: pencil-pleat\n${more}`;
  const blind = `  - blind: Bay\n    at: bay\n    cloth: fern\n`;
  expect(codesOf(room(curtains("Bay") + blind))).not.toContain("same-place");
  expect(codesOf(room(curtains("Bay") + curtains("Sheers")))).toContain("same-place");
  expect(
    codesOf(
      room(curtains("Bay", "    mount: outside\n") + curtains("Sheers", "    mount: inside\n")),
    ),
  ).not.toContain("same-place");
});

test("two papers on the same wall are a warning", () => {
  expect(
    codesOf(
      room(
        `  - wallpaper: One\n    on: [north]\n    cloth: fine\n  - wallpaper: Two\n    on: { wall: north, from-left: 1 m, width: 1 m }\n    cloth: fine`,
      ),
    ),
  ).toContain("same-place");
});

test("curtains that lie on the floor may be longer than the room is high", () => {
  const long = `  - curtains: Bay\n    at: bay\n    cloth: fern\n    pole: 180 cm\n    drop: 260 cm\n    pole-height: 245 cm\n    heading: pencil-pleat`;
  expect(codesOf(room(long))).not.toContain("item-above-ceiling");
});

test("a coverlet that is called as its bed lies on the bed; two others of one title are both named", () => {
  const bed = `  - object: table\n    at: { floor: 2 m x 2 m }\n`;
  const cover = `  - { tablecloth: Table, cloth: fern, drop: 10 cm, at: { on: table } }`;
  expect(place(`${bed}${cover}`, "tablecloth-table")).toMatchObject({
    how: "on",
    on: "object-table",
  });
  const stool = `  - { ottoman: Stool, cloth: fern, size: 50 cm x 50 cm x 40 cm }\n`;
  const pad = `  - { cushion: Stool, cloth: fern, size: 40 cm x 40 cm, at: { on: stool } }\n`;
  expect(place(`${stool}${pad}`, "cushion-stool")).toMatchObject({
    how: "on",
    on: "ottoman-stool",
  });
  const third = `  - { seat-pad: Stool, cloth: fern, size: 40 cm x 40 cm }`;
  expect(() => room(`${stool}${pad}${third}`)).toThrow(/Several items are called “stool”/);
});

test("what hangs on a wall without a window takes the place that it is worked out to, so that it is drawn and hides what is behind it", () => {
  const canopy = place(
    `  - curtains: Bed\n    at: { wall: north, from-left: 90 cm }\n    cloth: fern\n    pole: 80 cm\n    pole-height: 210 cm\n    drop: 190 cm\n    heading: pencil-pleat\n`,
    "curtains-bed",
  );
  expect(canopy?.how).toBe("wall");
  const box = canopy?.wallBox;
  // With rings the heading hangs 4 cm below the pole's middle: 206 cm; the hem 190 cm lower.
  expect([box?.wall, box?.left.toMm(), box?.width.toMm()]).toEqual(["north", 900, 800]);
  expect([box?.foot.toMm(), box?.height.toMm()]).toEqual([160, 1900]);
  const valance = place(
    `  - valance: Bed\n    at: { wall: north, height: 2 m }\n    cloth: fern\n    board: 80 cm\n    depth: 25 cm\n    heading: gathered\n`,
    "valance-bed",
  );
  // Without from-left it hangs at the middle of the wall of 5 m.
  expect(valance?.wallBox?.left.toMm()).toBe(2100);
  expect([valance?.wallBox?.foot.toMm(), valance?.wallBox?.height.toMm()]).toEqual([2000, 250]);
});
