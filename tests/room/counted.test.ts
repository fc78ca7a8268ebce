import { expect, test } from "vitest";
import { roomOf } from "./roomOf.ts";

// "Every kind may say count: how many alike" (the format page). A wall is there once: were a count passed over there, cloth, moulding or
// rolls for one would be bought where two are meant.

const CARDS = {
  cloths: {
    rose: "cloth: Rose\nwidth: 137 cm\nkind: plain",
    trellis:
      "cloth: Trellis\ntype: wallcovering\nroll: { width: 53 cm, length: 10.05 m }\nkind: plain",
  },
};

function said(item: string) {
  const room = roomOf(
    `room: R\nheight: 260 cm\nfloor: 500 cm x 400 cm\nitems:\n  - { ${item} }\n`,
    CARDS,
  );
  return room.diagnostics.filter(({ code }) => code === "wall-counted");
}

const WALLS = [
  "panelled-wall: Field, at: { wall: south }, size: 300 cm x 200 cm, panels: 3, cloth: rose",
  "wallpaper: Field, on: south, cloth: trellis",
  'paint: Field, on: south, colour: "#ffeedd"',
];

test.each(WALLS)("two of one wall cannot be asked for: %s", (item) => {
  expect(said(`${item}, count: 2`)).toMatchObject([
    { severity: "error", keyPath: "items[0].count", actual: "2" },
  ]);
});

test.each(WALLS)("one is one: %s", (item) => {
  expect(said(`${item}, count: 1`)).toEqual([]);
  expect(said(item)).toEqual([]);
});

test("what is made can be counted", () => {
  expect(said("cushion: Field, cloth: rose, size: 40 cm x 40 cm, count: 2")).toEqual([]);
});
