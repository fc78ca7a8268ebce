import { expect, test } from "vitest";
import { roomOf } from "./roomOf.ts";

// Who is taken where no maker is named is the house's own rule: common practice, no source.
const CLOTHS = { leaf: "cloth: Leaf\ntype: cloth\nwidth: 137 cm\nkind: plain" };
const makerOf = (makers: readonly string[]) => {
  const studio = [
    "studio: Test",
    "language: en-GB",
    "units: centimetres",
    "currency: EUR",
    "paper: a3",
    "makers:",
    ...makers,
  ].join("\n");
  const room = roomOf(
    "room: A\nheight: 280 cm\nfloor: 600 cm x 500 cm\nitems:\n  - bed-skirt: B\n    cloth: leaf\n    bed: 150 cm x 200 cm x 60 cm\n    drop: 35 cm",
    { cloths: CLOTHS, studio },
  );
  return room.items[0]?.maker;
};

const CUSHIONS = "  down: { name: Down, makes: [cushion] }";
const CURTAINS = "  bench: { name: Bench, makes: [curtains, bed-skirt] }";
const BEDDING = "  linen: { name: Linen, makes: [bedding] }";

test("who makes just this goes before who makes what is made alike, wherever the two stand", () => {
  expect(makerOf([CUSHIONS, CURTAINS])).toBe("bench");
  expect(makerOf([CURTAINS, CUSHIONS])).toBe("bench");
  expect(makerOf([CUSHIONS, BEDDING])).toBe("linen");
  expect(makerOf([CUSHIONS])).toBe("down");
});
