import { expect, test } from "vitest";
import { filledParts } from "../../src/documents/room/filledParts.ts";
import { lyingInPlan, standingInPlan } from "../../src/documents/room/lyingInPlan.ts";
import { roomOf } from "../room/roomOf.ts";

// How cushions lie on a seat is common practice, no source; that all of them are there, in their cloths and within the seat, is checked.

const room = roomOf(
  `room: R
height: 100"
floor: 240" x 200"
items:
  - object: settle
    at: { floor: 100" x 40", facing: south }
  - object: board
    at: { floor: 100" x 140", facing: south }
  - object: lamp
    at: { on: board }
    count: 2
  - cushion: Seat
    at: { on: settle }
    cloth: rose
    size: 52" x 18"
    edge: knife
  - cushion: Back
    at: { on: settle }
    cloth: rose
    count: 3
    size: 18" x 18"
    edge: knife
`,
  {
    objects: {
      settle: 'object: Settle\nshape: seat\nsize: 62" x 20" x 38"',
      board: 'object: Board\nshape: chest\nsize: 72" x 19" x 32"',
      lamp: 'object: Lamp\nshape: lamp\nsize: 12" x 12" x 22"',
    },
    cloths: { rose: 'cloth: Rose\nwidth: 54"' },
  },
) as never as Parameters<typeof lyingInPlan>[0];
const context = {
  units: "inches",
  language: "en-US",
  cloth: () => null,
  object: () => null,
} as const;
const host = (id: string) =>
  room.items.find((i) => i.record.id === id) as (typeof room.items)[number];
const SETTLE = { width: 62 * 25.4, depth: 20 * 25.4 };

test("a kept piece shows every cushion that lies on it, in its own cloth, within the seat, the pad before the others", () => {
  const parts = filledParts(lyingInPlan(room, host("object-settle"), SETTLE, context));
  expect(parts.map((p) => p.surface)).toEqual([
    "cushion-seat/face",
    "cushion-back/face",
    "cushion-back/face",
    "cushion-back/face",
  ]);
  for (const p of parts) {
    expect(p.left).toBeGreaterThan(0);
    expect(p.right).toBeLessThan(SETTLE.width);
    expect(p.foot).toBeLessThanOrEqual(SETTLE.depth);
  }
  const [pad, ...leaning] = parts;
  for (const c of leaning) expect(c.foot).toBeLessThan(pad?.foot ?? 0);
  // Side by side, since there is room.
  for (const [at, c] of leaning.entries())
    expect(c.left).toBeGreaterThanOrEqual(leaning[at - 1]?.right ?? 0);
});

test("two lamps stand near the ends of their chest", () => {
  const parts = filledParts(
    standingInPlan(room, host("object-board"), { width: 72 * 25.4, depth: 19 * 25.4 }, context),
  );
  expect(parts).toHaveLength(2);
  expect(parts[0]?.left).toBeCloseTo(72 * 25.4 - (parts[1]?.right ?? 0), 6);
});
