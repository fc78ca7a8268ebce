import { expect, test } from "vitest";
import { roomOfCopy } from "../../src/documents/room/copyOf.ts";
import { filledParts } from "../../src/documents/room/filledParts.ts";
import { floorPlanShapes } from "../../src/documents/room/floorPlan.ts";
import { itemsByWall } from "../../src/documents/room/placeItems.ts";
import { roomOf } from "../room/roomOf.ts";

// What lies on several like pieces is dealt out over them: the house's own rule, as a room is set out (common practice, no source).

const context = {
  units: "inches",
  language: "en-US",
  cloth: () => null,
  object: () => null,
} as const;

const WALLS = `walls:
  - { wall: north, length: 240" }
  - { wall: east, length: 200" }
  - { wall: south, length: 240" }
  - { wall: west, length: 200" }`;

const cushion = (
  title: string,
  cloth: string,
  on: string,
  count: number,
): string => `  - cushion: ${title}
    at: { on: ${on} }
    cloth: ${cloth}
    count: ${count}
    size: 16" x 16"
    edge: knife`;

const OBJECTS = {
  tub: 'object: Tub chair\nshape: seat\nsize: 28" x 28" x 32"',
  chest: 'object: Chest\nshape: chest\nsize: 24" x 18" x 28"',
  lamp: 'object: Lamp\nshape: lamp\nsize: 10" x 10" x 22"',
};

function made(items: string) {
  return roomOf(`room: R\nheight: 100"\nfloor: 240" x 200"\n${WALLS}\nitems:\n${items}\n`, {
    objects: OBJECTS,
    cloths: { rose: 'cloth: Rose\nwidth: 54"', moss: 'cloth: Moss\nwidth: 54"' },
  }) as never as Parameters<typeof floorPlanShapes>[0];
}

const CHAIRS = `  - object: tub
    at: { wall: north, from-left: 40" }
    count: 2`;

/** Middles of what is drawn in an item's cloth on the plan, from west to east. */
function onPlan(room: ReturnType<typeof made>, item: string): number[] {
  const plan = floorPlanShapes(room, context);
  return filledParts(plan?.shapes ?? [])
    .filter((f) => f.surface?.startsWith(`${item}/`))
    .map((f) => (f.left + f.right) / 2 / 25.4)
    .sort((a, b) => a - b);
}

/** Which of the two chairs, 40 to 68 in from the left and beside it, a middle lies on. */
const chairOf = (inches: number): number => (inches < 70 ? 0 : 1);

test("two cushions of one item lie one on each of two like chairs, on the plan and on the wall", () => {
  const room = made(`${CHAIRS}\n${cushion("Tub", "rose", "tub", 2)}`);
  expect(onPlan(room, "cushion-tub").map(chairOf)).toEqual([0, 1]);
  const north = itemsByWall(room, 2540, context).walls.get("north") ?? [];
  const chairs = north.filter((i) => i.item.kind.kind === "object");
  const cushions = north.filter((i) => i.item.kind.kind === "cushion");
  expect([chairs.length, cushions.length]).toEqual([2, 2]);
  for (const c of cushions) {
    const under = chairs.filter(
      (chair) => c.x >= chair.x && c.x + c.width <= chair.x + chair.width,
    );
    expect(under).toHaveLength(1);
  }
  expect(new Set(cushions.map((c) => c.x)).size).toBe(2);
});

test("two cushions in two cloths, one of each, lie on two chairs, each on its own", () => {
  const room = made(
    `${CHAIRS}\n${cushion("First", "rose", "tub", 1)}\n${cushion("Second", "moss", "tub", 1)}`,
  );
  expect(onPlan(room, "cushion-first").map(chairOf)).toEqual([0]);
  expect(onPlan(room, "cushion-second").map(chairOf)).toEqual([1]);
});

test("a cushion that is said to lie on one of two chairs, written as two items, lies on that one", () => {
  const room = made(`  - object: tub
    at: { wall: north, from-left: 40" }
  - armchair: Reading chair
    at: { wall: north, from-left: 120" }
    cloth: moss
    size: 28" x 28" x 32"
${cushion("Own", "rose", "reading-chair", 1)}`);
  expect(onPlan(room, "cushion-own").map((x) => (x < 100 ? 0 : 1))).toEqual([1]);
});

test("four cushions lie two on each of two chairs, three lie two and one, and two lamps stand on two chests", () => {
  for (const [count, dealt] of [
    [4, [2, 2]],
    [3, [2, 1]],
  ] as const) {
    const room = made(`${CHAIRS}\n${cushion("Tub", "rose", "tub", count)}`);
    const host = room.items.find((i) => i.kind.kind === "object") as (typeof room.items)[number];
    const counts = [0, 1].map((copy) => {
      const own = roomOfCopy(room, host, copy, 2).items.find((i) => i.kind.kind === "cushion");
      return (own?.record.fields as { count?: number })?.count ?? 0;
    });
    expect(counts).toEqual(dealt);
  }
  const lamps = made(`  - object: chest
    at: { wall: north, from-left: 40" }
    count: 2
  - object: lamp
    at: { on: chest }
    count: 2`);
  const north = itemsByWall(lamps, 2540, context).walls.get("north") ?? [];
  expect(north.filter((i) => i.standsOn)).toHaveLength(2);
});

test("a single chair keeps all that lies on it, and the room itself", () => {
  const room = made(
    `  - object: tub\n    at: { wall: north, from-left: 40" }\n${cushion("Tub", "rose", "tub", 2)}`,
  );
  const host = room.items[0] as (typeof room.items)[number];
  expect(roomOfCopy(room, host, 0, 1)).toBe(room);
  expect(onPlan(room, "cushion-tub")).toHaveLength(2);
});
