import { expect, test } from "vitest";
import { roomOf } from "./roomOf.ts";

// What hangs at a height that nobody has said stands in no drawing, and the decorator is told (the project's own rule, no source).

const CLOTHS = { slub: "cloth: Slub\ntype: cloth\nwidth: 137 cm\nkind: plain" };
const OBJECTS = { oak: "object: Oak bed\nshape: bed\nsize: 150 cm x 200 cm x 110 cm" };
const WALLS = `height: 280 cm
walls:
  - wall: north
    length: 600 cm
    windows: [{ window: bay, from-left: 100 cm, size: 120 cm x 140 cm, sill: 80 cm }]
  - { wall: east, length: 500 cm }
  - { wall: south, length: 600 cm }
  - { wall: west, length: 500 cm }`;
const BED = "  - object: oak\n    at: { wall: south, from-left: 200 cm }\n";

function warned(items: string, walls = WALLS) {
  const room = roomOf(`room: A\n${walls}\nitems:\n${items}`, { cloths: CLOTHS, objects: OBJECTS });
  const drawn = room.items.map((i) => room.plan.placements.get(i.record.id)?.wallBox != null);
  const said = room.diagnostics
    .filter((d) => d.code === "hangs-at-no-height")
    .map((d) => `${d.keyPath} ${d.severity}: ${d.message} -> ${d.hint}`);
  return { said, drawn };
}

const board = (kind: string, at: string, more = "") =>
  `  - ${kind}: Top\n    at: ${at}\n    cloth: slub\n    board: 150 cm\n    depth: 30 cm\n${kind === "valance" ? "    heading: gathered\n" : ""}${more}`;
const blind = (kind: string, at: string) =>
  `  - ${kind}: Niche\n    at: ${at}\n    cloth: slub\n    mount: outside\n    width: 90 cm\n    drop: 120 cm\n`;

test.each(["valance", "pelmet"])(
  "a %s on a bed or on a bare wall says by its top-height where it is drawn",
  (kind) => {
    const bed = warned(BED + board(kind, "{ on: oak }"));
    expect(bed.said).toEqual([
      'items[1].at warning: Nothing says how high Top hangs, so no drawing of the room shows it. -> Write top-height, from the floor to its upper edge: top-height: 84" or top-height: 214 cm.',
    ]);
    expect(warned(BED + board(kind, "{ on: oak }", "    top-height: 214 cm\n")).said).toEqual([]);
    const wall = warned(board(kind, "{ wall: east, from-left: 100 cm }"));
    expect([wall.said.length, wall.drawn]).toEqual([1, [false]]);
    const high = warned(
      board(kind, "{ wall: east, from-left: 100 cm }", "    top-height: 214 cm\n"),
    );
    expect([high.said, high.drawn]).toEqual([[], [true]]);
  },
);

test.each(["blind", "roller-blind"])("a %s on a bare wall says it by its place", (kind) => {
  const bare = warned(blind(kind, "{ wall: east, from-left: 100 cm }"));
  expect(bare.said).toEqual([
    'items[0].at warning: Nothing says how high Niche hangs, so no drawing of the room shows it. -> Write the height of its foot above the floor into at: height: 30" or height: 76 cm.',
  ]);
  expect(bare.drawn).toEqual([false]);
  const said = warned(blind(kind, "{ wall: east, from-left: 100 cm, height: 76 cm }"));
  expect([said.said, said.drawn]).toEqual([[], [true]]);
});

test("at a window the opening says it; a room without walls has no drawing of them to stand in", () => {
  for (const item of [board("valance", "bay"), board("pelmet", "bay"), blind("blind", "bay")])
    expect(warned(item).said).toEqual([]);
  expect(
    warned(blind("blind", "{ wall: east, from-left: 100 cm }"), "height: 280 cm").said,
  ).toEqual([]);
});
