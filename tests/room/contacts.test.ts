import { expect, test } from "vitest";
import { roomOf } from "./roomOf.ts";

const SMALL = {
  objects: {
    seat: `object: Seat\nshape: seat\nsize: 120 cm x 45 cm x 45 cm`,
    rug: `object: Rug\nshape: rug\nsize: 2 m x 2 m`,
    chest: `object: Chest\nshape: chest\nsize: 80 cm x 40 cm x 80 cm`,
  },
  cloths: {
    fern: `cloth: Fern\nwidth: 137 cm`,
    fine: `cloth: Fine\nroll: { width: 53 cm, length: 10.05 m }`,
  },
};
const contacts = (items: string) =>
  roomOf(
    `room: A\nheight: 2.5 m\nfloor: 5 m x 4 m\nwalls:\n  - wall: north\n    length: 5 m\n    windows: [{ window: bay, from-left: 2 m, size: 120 cm x 120 cm, sill: 60 cm }]\nitems:\n${items}`,
    SMALL,
  ).plan.contacts.map((c) => `${c.one} ${c.how} ${c.other}`);

const CHEST = `  - object: chest\n    at: { floor: 1 m x 2 m, facing: south }\n`;

test("said by touches, and only once", () => {
  expect(
    contacts(
      `${CHEST}  - object: seat\n    at: { floor: 4 m x 3 m, facing: south }\n    touches: [chest]\n`,
    ),
  ).toEqual(["object-seat said object-chest"]);
});

test("5 cm apart touches, 6 cm does not", () => {
  // The chest ends at 1.4 m; the seat is 1.2 m wide.
  expect(
    contacts(`${CHEST}  - object: seat\n    at: { floor: 2.05 m x 2 m, facing: south }\n`),
  ).toEqual(["object-chest beside object-seat"]);
  expect(
    contacts(`${CHEST}  - object: seat\n    at: { floor: 2.06 m x 2 m, facing: south }\n`),
  ).toEqual([]);
});

test("what stands on a rug, and a cushion on a seat", () => {
  expect(contacts(`${CHEST}  - object: rug\n    at: { floor: 1 m x 2 m }\n`)).toEqual([
    "object-chest on object-rug",
  ]);
  expect(
    contacts(
      `  - object: seat\n    at: { floor: 4 m x 3 m, facing: south }\n  - cushion: Pad\n    at: { on: seat }\n    cloth: fern\n    size: 50 cm x 50 cm\n`,
    ),
  ).toEqual(["cushion-pad on object-seat"]);
});

test("curtains touch the paper behind them and the seat before them, and not the paper on another wall", () => {
  const curtains = `  - curtains: Bay\n    at: bay\n    cloth: fern\n    pole: 180 cm\n    drop: 230 cm\n    to: floor\n    heading: pencil-pleat\n`;
  expect(contacts(`${curtains}  - wallpaper: North\n    on: [north]\n    cloth: fine\n`)).toEqual([
    "curtains-bay before wallpaper-north",
  ]);
  expect(contacts(`${curtains}  - wallpaper: South\n    on: [south]\n    cloth: fine\n`)).toEqual(
    [],
  );
  expect(
    contacts(`${curtains}  - object: seat\n    at: { floor: 2.6 m x 24 cm, facing: south }\n`),
  ).toEqual(["curtains-bay beside object-seat"]);
});
