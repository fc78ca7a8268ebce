import { expect, test } from "vitest";
import { piecesBefore, type SeenBox } from "../../src/documents/room/freePieces.ts";
import { seenFrom } from "../../src/documents/room/itemView.ts";
import { roomOf } from "../room/roomOf.ts";

// Which wall shows a piece is the project's own rule; that it stands at its measured place is checked against the room's file.

const HEIGHT = 2540;
const small = {
  objects: { table: 'object: Table\nshape: table\nsize: 84" x 38" x 30"' },
  cloths: { rose: 'cloth: Rose\nwidth: 54"' },
};

function pieces(items: string, boxes: Record<string, SeenBox[]> = {}) {
  const room = roomOf(`room: R\nheight: 100"\nfloor: 240" x 200"\nitems:\n${items}`, small);
  const context = {
    units: "inches",
    language: "en-US",
    cloth: () => null,
    object: () => null,
  } as const;
  return piecesBefore(room as never, context, HEIGHT, new Map(Object.entries(boxes)));
}
const TABLE = '  - object: table\n    at: { floor: 120" x 140", facing: south }\n';
const chair = (more: string) =>
  `  - armchair: Chair\n    cloth: rose\n    type: club\n    size: 30" x 32" x 38"\n    ${more}\n`;

test("what one sees of a piece turns with the eye", () => {
  expect(seenFrom("south", "north")).toBe("front");
  expect(seenFrom("south", "south")).toBe("back");
  expect(seenFrom("east", "north")).toBe("front-right");
  expect(seenFrom("east", "south")).toBe("front-left");
  expect(seenFrom("west", "north")).toBe("front-left");
});

test("a chair stands before the wall at its back, at its place along it", () => {
  const [one] = pieces(chair('at: { floor: 60" x 20", facing: south }'));
  expect(one?.wall).toBe("north");
  expect(((one?.left ?? 0) + (one?.drawing.widthMm ?? 0) / 2) / 25.4).toBeCloseTo(60, 6);
  expect((one?.front ?? 0) / 25.4).toBeCloseTo(36, 6);
  // Looking south, the east end is at the left.
  const [other] = pieces(chair('at: { floor: 60" x 180", facing: north }'));
  expect(other?.wall).toBe("south");
  expect(((other?.left ?? 0) + (other?.drawing.widthMm ?? 0) / 2) / 25.4).toBeCloseTo(180, 6);
});

test("where it would hide too much of a cloth it goes to another wall, unless the file names one", () => {
  const cloth = { left: 1200, right: 1900, top: 1600, foot: HEIGHT, weight: 1 };
  const at = 'at: { floor: 60" x 20", facing: south }';
  expect(pieces(chair(at), { north: [cloth] })[0]?.wall).not.toBe("north");
  const said = 'at: { floor: 60" x 20", facing: south, wall: north }';
  expect(pieces(chair(said), { north: [cloth] })[0]?.wall).toBe("north");
});

test("chairs at the ends of a table are seen from their sides, with it, on one wall", () => {
  const all = pieces(`${TABLE}${chair('at: { floor: 180" x 140", facing: west }\n    count: 2')}`);
  expect(all).toHaveLength(3);
  expect(new Set(all.map((p) => p.wall)).size).toBe(1);
  const widths = all.filter((p) => p.item.record.kind === "armchair").map((p) => p.drawing.widthMm);
  for (const w of widths) expect(w / 25.4).toBeCloseTo(32, 6);
});

test("a chair that carries a cushion shows its front", () => {
  const cushion =
    '  - cushion: Chair\n    at: { on: armchair-chair }\n    cloth: rose\n    size: 16" x 16"\n    edge: knife\n';
  const all = pieces(`${TABLE}${chair('at: { floor: 180" x 140", facing: west }')}${cushion}`);
  expect(all.find((p) => p.item.record.kind === "armchair")?.wall).toBe("east");
});
