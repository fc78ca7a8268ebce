import { expect, test } from "vitest";
import { blindKind } from "../../src/items/blind/kind.ts";
import { curtainsKind } from "../../src/items/curtains/kind.ts";
import { cushionKind } from "../../src/items/cushion/kind.ts";
import type { ItemContext, ItemKind } from "../../src/items/itemKind.ts";
import { paintKind } from "../../src/items/paint/kind.ts";
import { pelmetKind } from "../../src/items/pelmet/kind.ts";
import { valanceKind } from "../../src/items/valance/kind.ts";
import { clothFacts, contextFor, fieldsOf, length } from "./tradeContext.ts";

// Slips of the unit and the point, as a decorator makes them; how large a room is bounds what hangs in it (common practice, no source).

/** A room 5 m by 4 m and 2.6 m high. */
function told(kind: ItemKind, raw: Record<string, unknown>, room: Partial<ItemContext> = {}) {
  const fields = fieldsOf(kind.schema, "paint" in raw ? raw : { cloth: "print", ...raw }) as never;
  const print = clothFacts({ id: "print", usableWidth: length("137 cm") });
  const side = { length: length("500 cm"), width: length("400 cm"), perimeter: length("1800 cm") };
  const context = {
    ...contextFor(kind.allowances, {
      cloths: [print],
      units: "centimetres",
      floor: side,
      allowances: { shrinkage: "0" },
    }),
    roomHeight: length("260 cm"),
    ...room,
  };
  return kind
    .make(fields, context)
    .diagnostics.map((d) =>
      [d.severity, d.code, (d.keyPath ?? "").replace("items[0].", ""), d.message]
        .join(" | ")
        .replace(/[\u00a0\u202f]/g, " "),
    );
}
const CURTAINS = {
  curtains: "Bay",
  heading: "pencil-pleat",
  pole: "220 cm",
  drop: "230 cm",
};

test("a drop that is higher than the room, and a pole longer than its walls, are asked about", () => {
  const curtains = curtainsKind as never;
  expect(told(curtains, CURTAINS)).toEqual([]);
  expect(told(curtains, { ...CURTAINS, drop: "2300 cm" })).toEqual([
    "warning | larger-than-room | drop | drop is 2300 cm, and the room is 260 cm high.",
  ]);
  expect(told(curtains, { ...CURTAINS, pole: "2200 cm" })).toEqual([
    "warning | larger-than-room | pole | pole is 2200 cm, and no wall is longer than 500 cm.",
  ]);
  // What lies on the floor is longer than the room is high.
  expect(told(curtains, { ...CURTAINS, drop: "285 cm" })).toEqual([]);
  const bare = { roomHeight: null, floor: null };
  expect(told(curtains, { ...CURTAINS, drop: "2300 cm" }, bare)).toEqual([]);
});

test("so are a blind, a pelmet and a valance; and a board and a depth that have changed places", () => {
  const blind = { blind: "Kit", width: "1400 cm", drop: "1800 cm" };
  expect(told(blindKind as never, blind).map((d) => d.split(" | ")[2])).toEqual(["drop", "width"]);
  expect(told(blindKind as never, { ...blind, width: "140 cm", drop: "180 cm" })).toEqual([]);
  for (const [kind, raw] of [
    [pelmetKind, { pelmet: "Bay" }],
    [valanceKind, { valance: "Bay", heading: "gathered" }],
  ] as [ItemKind, Record<string, string>][]) {
    const [name = ""] = Object.keys(raw);
    expect(told(kind, { ...raw, board: "200 cm", depth: "30 cm" })).toEqual([]);
    expect(told(kind, { ...raw, board: "30 cm", depth: "200 cm" })).toEqual([
      `warning | ${name}-deeper-than-long | depth | This ${name} is 30 cm long and 200 cm deep.`,
    ]);
    expect(told(kind, { ...raw, board: "2000 cm", depth: "30 cm" })[0]).toContain("no wall");
  }
});

test("a return or an overlap that is longer than half the pole is asked about", () => {
  const curtains = curtainsKind as never;
  expect(told(curtains, { ...CURTAINS, overlap: "300 cm" })).toEqual([
    "warning | long-beside-pole | overlap | overlap is 300 cm, and the pole 220 cm.",
  ]);
  expect(told(curtains, { ...CURTAINS, return: "120 cm" })[0]).toContain("| return |");
  expect(told(curtains, { ...CURTAINS, return: "25 cm", overlap: "15 cm" })).toEqual([]);
});

test("a hem or a heading that takes more than half the drop is asked about where it is written", () => {
  const curtains = curtainsKind as never;
  expect(told(curtains, { ...CURTAINS, hem: "240 cm" })).toEqual([
    "warning | turning-past-half | hem | The finished drop is 230 cm, and hem takes 240 cm more.",
  ]);
  expect(told(curtains, { ...CURTAINS, "heading-turn": "120 cm" })[0]).toContain(
    "| heading-turn |",
  );
  // 23 cm for 230: the usual hem of 20 cm is then nearly as long as what it finishes.
  expect(told(curtains, { ...CURTAINS, drop: "23 cm" })[0]).toContain("past-half | drop |");
  expect(told(curtains, { ...CURTAINS, drop: "60 cm" })).toEqual([]);
});

test("a box cushion that is thicker than it is wide is asked about at its thickness", () => {
  const pad = { cushion: "Seat", size: "50 cm x 45 cm" };
  expect(told(cushionKind as never, { ...pad, thickness: "80 cm" })).toEqual([
    "warning | cushion-thicker-than-wide | thickness | This cushion is 50 cm wide, 45 cm deep and 80 cm thick.",
  ]);
  expect(told(cushionKind as never, { ...pad, thickness: "50 cm" })).toEqual([]);
});

test("an edge that is called welt is told how a welt is written", () => {
  const read = cushionKind.schema.safeParse({
    cushion: "Seat",
    cloth: "print",
    size: "50 cm x 45 cm",
    edge: "welt",
  });
  expect(JSON.stringify(read.error?.issues)).toContain(
    "Write { welt: … } with the name of the cloth",
  );
});

// TM 43-0139 and handbooks of the building trades: 250 to 500 sq ft a gallon; 350 m2/l are 14,000.
test("a coverage that no paint has is refused, at the item and in studio.md", () => {
  const walls = { paint: "W", on: "walls", colour: "#ffffff" };
  const read = (coverage: string) => paintKind.schema.safeParse({ ...walls, coverage });
  expect(JSON.stringify(read("350 m2/l").error?.issues)).toContain("coverage-unlikely");
  expect(JSON.stringify(read("12 sq ft/gal").error?.issues)).toContain("coverage-unlikely");
  expect(read("250 sq ft/gal").success && read("16 m2/l").success).toBe(true);
  const studio = { paint: { coverage: "350 m2/l", tins: null, price: null }, runs: () => [] };
  expect(told(paintKind as never, walls, studio).join()).toContain("studio-paint-unreadable");
});
