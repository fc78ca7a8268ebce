import { expect, test } from "vitest";
import { runsFor } from "../../src/room/roomPlan.ts";
import { codesOf, roomOf } from "./roomOf.ts";

const PAPER = { cloths: { fern: `cloth: Fern\nroll: { width: 53 cm, length: 10.05 m }` } };
const WALLS = `
room: A
height: 2.5 m
floor: 5 m x 4 m
walls:
  - wall: north
    length: 5 m
    windows: [{ window: bay, from-left: 0.5 m, size: 1 m x 1 m, sill: 80 cm }]
    breast: { from-left: 2 m, width: 1.2 m, depth: 0.4 m }
items:
  - paint: Walls
    on: walls
    colour: "#efe3c8"
`;

/** Area of the runs less openings, in square metres. */
function area(text: string, on: unknown = "walls", item = 0): number {
  const { plan, items } = roomOf(text, PAPER);
  const record = items[item]?.record;
  if (!record) throw new Error("no such item");
  return (runsFor(plan, record, on) ?? []).reduce(
    (sum, run) =>
      sum +
      (run.width.toMm() * run.height.toMm() -
        run.openings.reduce((o, each) => o + each.width.toMm() * each.height.toMm(), 0)) /
        1e6,
    0,
  );
}

test("walls with a breast: its face and both sides are wall, and a paperhanger goes round it", () => {
  const { plan, items } = roomOf(WALLS, PAPER);
  const runs = runsFor(plan, items[0]?.record as never, ["north"]) ?? [];
  expect(runs.map((r) => [r.fromLeft.toMm(), r.width.toMm()])).toEqual([
    [0, 2000],
    [2000, 400],
    [2000, 1200],
    [3200, 400],
    [3200, 1800],
  ]);
  // 18 m round, two breast sides of 0.4 m, 2.5 m high, less a window of 1 m2.
  expect(area(WALLS)).toBeCloseTo((18 + 0.8) * 2.5 - 1, 6);
});

test("what is papered is left out of the paint: the breast's face, and its sides when they are papered too", () => {
  const face = `${WALLS}  - wallpaper: Breast\n    on: { wall: north, breast: face }\n    cloth: fern\n`;
  const sides = `${WALLS}  - wallpaper: Breast\n    on: { wall: north, breast: face-and-sides }\n    cloth: fern\n`;
  const typed = `${WALLS}  - wallpaper: Breast\n    on: { wall: north, from-left: 2 m, width: 1.2 m }\n    cloth: fern\n`;
  expect(area(face)).toBeCloseTo(46 - 3, 6);
  expect(area(typed)).toBeCloseTo(46 - 3, 6);
  expect(area(sides)).toBeCloseTo(46 - 5, 6);
});

test("paper over a window takes the window out once, and a low paper leaves the wall above it", () => {
  const whole = `${WALLS}  - wallpaper: North\n    on: [north]\n    cloth: fern\n`;
  expect(area(whole)).toBeCloseTo(13 * 2.5, 6);
  // To 1 m: above it 1.5 m of wall remain, less the 0.8 m of the window that stand higher than the paper.
  const low = `${WALLS}  - wallpaper: Dado\n    on: [north]\n    height: 1 m\n    cloth: fern\n`;
  expect(area(low)).toBeCloseTo(13 * 2.5 + 5.8 * 1.5 - 0.8, 6);
});

test("the paper itself, woodwork and ceiling look at the whole walls", () => {
  const both = `${WALLS}  - wallpaper: North\n    on: [north]\n    cloth: fern\n  - paint: Wood\n    on: woodwork\n    colour: "#ffffff"\n`;
  expect(area(both, ["north"], 1)).toBeCloseTo(5.8 * 2.5 - 1, 6);
  expect(area(both, "woodwork", 2)).toBeCloseTo(46, 6);
});

test("a wall that is not there is an empty list; a room without walls or height is null", () => {
  const { plan, items } = roomOf(WALLS, PAPER);
  const record = items[0]?.record as never;
  expect(runsFor(plan, record, ["attic"])).toEqual([]);
  expect(runsFor({ ...plan, walls: null }, record, "walls")).toBeNull();
  expect(runsFor({ ...plan, height: null }, record, "walls")).toBeNull();
});

test("a part beyond its wall, and a breast that is not there, are errors at the item", () => {
  const beyond = roomOf(
    `${WALLS}  - wallpaper: Part\n    on: { wall: east, from-left: 3 m, width: 1.2 m }\n    cloth: fern\n`,
    PAPER,
  );
  expect(beyond.diagnostics[0]).toMatchObject({
    code: "part-beyond-wall",
    keyPath: "items[1].on",
    severity: "error",
  });
  const breast = roomOf(
    `${WALLS}  - wallpaper: Part\n    on: { wall: east, breast: face }\n    cloth: fern\n`,
    PAPER,
  );
  expect(breast.diagnostics[0]).toMatchObject({
    code: "breast-unknown",
    keyPath: "items[1].on.breast",
  });
});

test("a papered ceiling is left out of the paint, and two papers on one ceiling are told", () => {
  const ceiling = `${WALLS}  - paint: Ceiling\n    on: ceiling\n    colour: "#ffffff"\n`;
  const stars = "  - wallpaper: Stars\n    on: ceiling\n    cloth: fern\n";
  const painted = (text: string) => {
    const room = roomOf(text, PAPER);
    const made = room.items[1]?.made;
    return { room, area: room.items[1]?.seen[0]?.areaMm2, asked: made?.questions.join(" ") ?? "" };
  };
  const bare = painted(ceiling);
  expect(bare.area).toBe(20e6);
  expect(bare.asked).not.toContain("papered");
  const covered = painted(ceiling + stars);
  expect(covered.area ?? 0).toBe(0);
  expect(covered.asked).toContain("The ceiling is papered: nothing is left to paint.");
  expect(codesOf(covered.room)).not.toContain("same-place");
  expect(codesOf(painted(ceiling + stars + stars.replace("Stars", "Moons")).room)).toContain(
    "same-place",
  );
});
