import fc from "fast-check";
import { expect, test } from "vitest";
import { alongOf, placesOf, type StandingPlace } from "../../src/room/copies.ts";
import { gapOf } from "../../src/room/rectangles.ts";
import { roomOf } from "./roomOf.ts";

// Where chairs usually stand is common practice, no source; the rules below are the project's own.

const TABLE = { table: 'object: Table\nshape: table\nsize: 84" x 38" x 30"' };

function places(at: string, count: number): readonly StandingPlace[] {
  const room = roomOf(
    `room: R\nheight: 100"\nfloor: 240" x 200"\nitems:\n  - object: table\n    at: { floor: 120" x 100", facing: south }\n  - armchair: Chair\n    cloth: rose\n    size: 20" x 22" x 38"\n    type: occasional\n    count: ${count}\n    at: ${at}\n`,
    { objects: TABLE, cloths: { rose: 'cloth: Rose\nwidth: 54"' } },
  );
  const chair = room.items.find((i) => i.record.kind === "armchair");
  const table = room.items.find((i) => i.record.kind === "object");
  if (!chair || !table) throw new Error("no chair");
  return placesOf(chair.record, room.plan.placements, new Set([table.record.id])).places;
}

const TABLE_RECT = { left: 78 * 25.4, right: 162 * 25.4, low: 81 * 25.4, high: 119 * 25.4 };

/** How far a place's middle stands from the table's, along its own look: always before it. */
function looksAtTable({ rect, facing }: StandingPlace): boolean {
  const [x, y] = [(rect.left + rect.right) / 2, (rect.low + rect.high) / 2];
  const to = { north: y > 2540, south: y < 2540, east: x < 3048, west: x > 3048 };
  return facing !== null && to[facing];
}

test("two chairs at the end of a table stand at both ends, opposite each other", () => {
  const [one, other] = places('{ floor: 174" x 100", facing: west }', 2);
  expect([one?.facing, other?.facing]).toEqual(["west", "east"]);
  expect((one?.rect.left ?? 0) - TABLE_RECT.right).toBeCloseTo(
    TABLE_RECT.left - (other?.rect.right ?? 0),
    6,
  );
});

test("however many chairs stand at a table, each looks at it, none stands in another, and the written one keeps its place", () => {
  const ats = ['{ floor: 174" x 100", facing: west }', '{ floor: 99" x 68", facing: south }'];
  fc.assert(
    fc.property(fc.constantFrom(...ats), fc.integer({ min: 1, max: 8 }), (at, count) => {
      const all = places(at, count);
      expect(all).toHaveLength(count);
      expect(all[0]).toEqual(places(at, 1)[0]);
      for (const place of all) {
        expect(looksAtTable(place)).toBe(true);
        for (const other of all)
          if (other !== place) expect(gapOf(place.rect, other.rect)).toBeGreaterThan(-1);
      }
    }),
    { numRuns: 40, seed: 20261125 },
  );
});

test("away from a table they stand side by side about the written place", () => {
  const all = places('{ floor: 30" x 30", facing: south }', 3);
  const middles = all.map(({ rect }) => (rect.left + rect.right) / 2 / 25.4);
  expect(middles.reduce((a, b) => a + b, 0) / 3).toBeCloseTo(30, 6);
  expect(new Set(all.map(({ rect }) => rect.low)).size).toBe(1);
});

test("against a wall the written place is the first one's, the others stand to its right, and to its left where the wall ends", () => {
  const room = roomOf(
    'room: R\nheight: 100"\nfloor: 240" x 200"\nitems:\n  - armchair: Chair\n    cloth: rose\n    size: 20" x 22" x 38"\n    type: occasional\n    count: 3\n    at: { wall: south, from-left: 190" }\n',
    { cloths: { rose: 'cloth: Rose\nwidth: 54"' } },
  );
  const chair = room.items[0];
  const wall = room.plan.walls?.find((w) => w.name === "south");
  if (!chair || !wall) throw new Error("no chair");
  const { places, how } = placesOf(chair.record, room.plan.placements, new Set(), [wall]);
  expect(how).toBe("wall");
  const step = 20 * 25.4 + 60;
  const along = places.map((p) => alongOf(p, wall));
  expect(along[0]).toBeCloseTo(190 * 25.4, 6);
  expect((along[1] ?? 0) - (along[0] ?? 0)).toBeCloseTo(step, 6);
  // A third would pass the wall's end at 240.
  expect((along[2] ?? 0) - (along[0] ?? 0)).toBeCloseTo(-step, 6);
  for (const p of places) expect(p.rect.high).toBeCloseTo(200 * 25.4, 6);
});
