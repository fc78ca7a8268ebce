// What a card says that its cloth shrinks: curtains and linings are cut so much longer, of all else it is told.
import { expect, test } from "vitest";
import { quantitiesOf } from "./studioOf.ts";

const STUDIO = `studio: Test
language: en-GB
units: centimetres
currency: EUR
paper: a3
makers: { anna: { name: Anna, makes: [curtains, cushion] } }`;
const PROJECT = "project: Test\nclient: { name: Nobody }\nstatus: enquiry";
const ROOM = `room: A
items:
  - curtains: Bay
    cloth: print
    lining: back
    pole: 100 cm
    drop: 230 cm
    heading: pinch-pleat
    maker: anna
  - cushion: One
    cloth: print
    size: 50 cm x 50 cm
    maker: anna
`;

const RAILROADED = ROOM.replace("drop: 230 cm", "drop: 90 cm\n    railroad: yes");

function of(print: string, back: string, room = ROOM, studio = STUDIO) {
  return quantitiesOf({
    studio,
    project: PROJECT,
    cloths: {
      print: `cloth: Print\nwidth: 137 cm\nkind: plain\n${print}`,
      back: `cloth: Back\ntype: lining\nwidth: 137 cm\n${back}`,
    },
    rooms: { a: room },
  });
}

/** Lengths in mm of the curtains' cuts from one cloth. */
function cuts(found: ReturnType<typeof of>, cloth: string) {
  const pieces = found.cloths.find((each) => each.cloth === cloth)?.plan.pieces ?? [];
  return new Set(
    pieces.flatMap((p) =>
      p.item === "curtains-bay" ? [Math.round(p.height.toMm() * 10) / 10] : [],
    ),
  );
}

const told = (found: ReturnType<typeof of>, cloth: string) =>
  found.cloths
    .find((each) => each.cloth === cloth)
    ?.working.filter((line) => line.what === "Shrinkage");

// Divide by what is left of one (trade note, "washable cotton or linen shrinkage 3-5 %: divide by 1 - s"; common practice, no source).
test("a cut of cloth that shrinks still measures its drop, heading and hem when it has shrunk", () => {
  const found = of("shrinkage: 5 %", "shrinkage: 3 %");
  const [face] = cuts(found, "print");
  const [lining] = cuts(found, "back");
  // 230 + 8 + 20 = 258 cm; 230 - 3 + 10 + 2 = 239 cm.
  expect((face as number) * 0.95).toBeGreaterThanOrEqual(2580);
  expect(((face as number) - 1) * 0.95).toBeLessThan(2580);
  expect((lining as number) * 0.97).toBeGreaterThanOrEqual(2390);
  expect(((lining as number) - 1) * 0.97).toBeLessThan(2390);
  expect(told(found, "back")).toEqual([]);
});

test("a card that says nothing leaves the cuts as they were, or as the studio's allowance has them", () => {
  expect(cuts(of("", ""), "print")).toEqual(new Set([2580]));
  const studio = `${STUDIO}\nallowances: { curtains: { shrinkage: 2 % } }`;
  expect(cuts(of("", "", ROOM, studio), "print")).toEqual(new Set([2633]));
  expect(cuts(of("shrinkage: 5 %", "", ROOM, studio), "print")).toEqual(new Set([2716]));
});

test("where something is not cut longer it is told, with what washing before cutting takes; so for cloth run sideways", () => {
  const found = of("shrinkage: 5 %", "");
  const print = found.cloths.find((each) => each.cloth === "print");
  const washed = (print?.plan.length.toMm() as number) / 0.95 / 1000;
  // Printed up to the centimetre.
  expect(told(found, "print")).toMatchObject([
    { result: `${(Math.ceil(washed * 100) / 100).toFixed(2)}\u202fm` },
  ]);
  // 90 + 8 + 20 = 118 cm lie across the cloth and lose nothing; along it lies the flat width, (126 × 2.25 + 16) ÷ 2 = 149.75 cm.
  const turned = of("shrinkage: 5 %", "", RAILROADED);
  expect(cuts(turned, "print")).toEqual(new Set([1497.5]));
  expect(told(turned, "print")).toHaveLength(1);
});

test("a loss of half or more is asked about, at the card and in the studio's allowances", () => {
  const refused = /loses 100 % of its length/;
  expect(() => of("shrinkage: 100 %", "")).toThrow(refused);
  const studio = `${STUDIO}\nallowances: { curtains: { shrinkage: 100 % } }`;
  expect(() => of("", "", ROOM, studio)).toThrow(refused);
});
