import { expect, test } from "vitest";
import { roomOf } from "./roomOf.ts";

const CLOTHS = {
  pile: "cloth: Pile\ntype: cloth\nwidth: 137 cm\nkind: plain\nnap: yes",
  slub: "cloth: Slub\ntype: cloth\nwidth: 137 cm\nkind: plain",
};

/** The only item of a room, with spaces as a reader sees them. */
function itemOf(lines: string, way = "    cloth: pile\n    railroad: yes") {
  const room = roomOf(`room: A\nheight: 280 cm\nfloor: 600 cm x 500 cm\nitems:\n${lines}${way}`, {
    cloths: CLOTHS,
  });
  const [item] = room.items;
  if (!item) throw new Error(JSON.stringify(room.diagnostics));
  const plain = (text: string) => text.replace(/\s/g, " ");
  const unturned = item.made.working.filter(({ what }) => what.includes("unturned"));
  return {
    item,
    working: unturned.map(({ sum, result }) => plain(`${sum}: ${result}`)),
    asked: item.made.questions.map(plain).filter((words) => words.includes("unturned")),
  };
}

test("a headboard that fits across its cloth is asked whether it is to run sideways, with the cloth of both ways", () => {
  // By hand: 120 cm and 60 cm, each with 2 x (8 cm edge + 4 cm tack-off): 144 cm along the cloth turned is too wide unturned;
  // 100 cm wide is 124 cm, and 60 cm high is 84 cm: 1.24 m turned, 0.84 m unturned.
  const { working, asked } = itemOf("  - headboard: H\n    size: 100 cm x 8 cm x 60 cm\n");
  expect(working).toEqual(["1.24 m as it is run sideways; without railroad: yes: 0.84 m"]);
  expect(asked).toEqual([
    "Run sideways it takes 1.24 m of Pile by the handbook; unturned it would take 0.84 m, with no more joins: is it to run sideways all the same?",
  ]);
});

test("one wider than its cloth is run sideways to save its joins: both lengths are said, nothing is asked", () => {
  const { working, asked, item } = itemOf("  - headboard: H\n    size: 160 cm x 8 cm x 110 cm\n");
  expect(working).toHaveLength(1);
  expect(working[0]).toContain("in 2 more pieces");
  expect(asked).toEqual([]);
  // The other way's allowance for joins is none of this item's.
  expect(item.allowances.map(({ allowance }) => allowance)).not.toContain("join-turning");
});

test("a plain runner that is run sideways of itself says what its joins would save, and one that saves nothing says nothing", () => {
  const runner = (depth: number) =>
    `  - runner: R\n    bed: 150 cm x 200 cm x 60 cm\n    drop: 50 cm\n    depth: ${depth} cm\n`;
  // By hand: 150 + 2 x 50 + 2 hems of 3 cm = 256 cm along the cloth; of 65 + 6 = 71 cm with joins two rows, 142 cm.
  const { working, asked } = itemOf(runner(65), "    cloth: slub");
  expect(working).toEqual([
    "2.56 m as it is run sideways to save joins; with railroad: no, in 2 more pieces: 1.42 m",
  ]);
  expect(asked).toEqual([]);
  // Two rows of 128 + 6 cm are 268 cm: the joins would save nothing.
  expect(itemOf(runner(128), "    cloth: slub").working).toEqual([]);
  // As she says, no is no.
  expect(itemOf(runner(65), "    cloth: slub\n    railroad: no").working).toEqual([]);
});
