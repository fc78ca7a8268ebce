import { expect, test } from "vitest";
import { quantitiesJson } from "../../src/quantities/text/toJson.ts";
import { type ClothJson, checkPlan } from "./checkPlan.ts";
import { quantitiesOf, STUDIO_INCHES } from "./studioOf.ts";

type Json = {
  cloths: ClothJson[];
  items: { item: string; figures: Record<string, number> }[];
  materials: { item: string; what: string; buy: { amount: number; unit: string } }[];
};
const json = (small: Parameters<typeof quantitiesOf>[0]) =>
  quantitiesJson(quantitiesOf(small)) as unknown as Json;
const first = <T>(list: readonly T[]): T => {
  expect(list.length).toBeGreaterThan(0);
  return list[0] as T;
};

// Reference case curt-17, "common practice, no source": pinch-pleated pair, 137 cm cloth, repeat 64 cm.
const CURT_17 = {
  studio: `studio: Test
language: en-GB
units: centimetres
currency: EUR
paper: a3
allowances: { curtains: { hem: 20 cm, heading: 8 cm, side-hem: 4 cm, join: 1.5 cm } }`,
  cloths: {
    fern: `cloth: Fern\nwidth: 137 cm\nrepeat: { up: 64 cm, match: straight }\nprice: { trade: 20, per: metre }`,
  },
  rooms: {
    dining: `
room: Dining
height: 2.6 m
floor: 5 m x 4 m
items:
  - curtains: Bay
    cloth: fern
    pole: 240 cm
    drop: 230 cm
    heading: pinch-pleat
    fullness: 2.25
    return: 8 cm
    overlap: 10 cm
    lowest-motif: 12 cm`,
  },
};

test("curt-17: from the room file to what is bought", () => {
  const all = json(CURT_17);
  expect(first(all.items).figures).toMatchObject({
    flatWidthMm: 6145,
    widths: 5,
    widthsPerCurtain: 2.5,
    cutLengthMm: 3200,
  });
  const cloth = first(all.cloths);
  checkPlan(cloth);
  // The handbook's 16.0 m; the last drop need not be a whole number of repeats: 4 x 3.20 + 2.58 = 15.38 m, proved least.
  expect(cloth.handbookMm).toBe(16_000);
  expect(cloth.plan.lengthMm).toBe(15_380);
  expect(cloth.plan.lowerBoundMm).toBe(15_380);
  // One repeat for the chosen start ("+ one repeat for a chosen start, if wanted"): 16.02 m, up to a tenth.
  expect(cloth.spareMm).toBe(640);
  expect(cloth.buy).toMatchObject({
    amount: 16.1,
    unit: "metre",
    text: "16.1\u202fm",
    lengthMm: 16_100,
  });
});

test("curt-17: each drop has the motif 12 cm above the hem, 32 cm above the cut's foot", () => {
  const { plan } = first(json(CURT_17).cloths);
  const start = quantitiesOf(CURT_17).cloths[0]?.plan.start.toMm() ?? 0;
  for (const piece of plan.pieces) expect((piece.yMm + start + 320) % 640).toBeCloseTo(0, 6);
});

// Verified case curt-05: "How to determine fabric needed for pinch pleated drapes", homesteady.com: 65 in track, 2.25, 54 in cloth,
// 80 in drop, 16 in for hem and heading: 3 widths of 96 in, 8 yd. No returns, overlap, side hems or joins in the source.
test("curt-05: eight yards, with the source's settings", () => {
  const all = json({
    studio: `${STUDIO_INCHES}\nallowances: { curtains: { hem: 8", heading: 8", side-hem: 0, join: 0, return: 0, overlap: 0 } }`,
    cloths: { plain: `cloth: Plain\nwidth: 54"\nkind: plain` },
    rooms: {
      room: `room: A\nitems:\n  - curtains: Pair\n    cloth: plain\n    pole: 65"\n    drop: 80"\n    heading: pinch-pleat\n    fullness: 2.25`,
    },
  });
  expect(first(all.items).figures).toMatchObject({
    flatWidthMm: 146.25 * 25.4,
    widths: 3,
    cutLengthMm: 2438.4,
  });
  const cloth = first(all.cloths);
  checkPlan(cloth);
  expect(cloth.spareMm).toBe(0);
  expect(cloth.handbookMm).toBeCloseTo(8 * 914.4, 6);
  expect(cloth.buy).toMatchObject({ amount: 8, unit: "yard", text: "8\u202fyd" });
  expect(cloth.handbook).toContain("as the plan does");
});

// Verified case wp-04: "Wallpaper measuring and planning", davesdiytips.com, 2009: 18.9 m round, 2.76 m high, 15 cm trim, rolls of
// 0.535 x 10 m: 36 strips, 3 a roll, 12 rolls, 13 with one spare.
test("wp-04: strips and rolls from a room's floor", () => {
  const all = json({
    studio: `studio: Test\nlanguage: en-GB\nunits: centimetres\ncurrency: EUR\npaper: a3\nallowances: { wallpaper: { trim: 15 cm } }`,
    cloths: {
      fern: `cloth: Fern\nroll: { width: 53.5 cm, length: 10 m }\nrepeat: { up: 1 cm, match: free }`,
    },
    rooms: {
      room: `room: A\nheight: 2.76 m\nfloor: 5 m x 4.45 m\nitems:\n  - wallpaper: All\n    on: walls\n    cloth: fern\n    spare-rolls: 1`,
    },
  });
  expect(first(all.items).figures).toMatchObject({
    strips: 36,
    stripsPerRoll: 3,
    rollsHung: 12,
    rolls: 13,
  });
  expect(all.materials.find((m) => m.item === "wallpaper-all")?.buy).toMatchObject({
    amount: 13,
    unit: "roll",
  });
});

// Verified case pt-01, The Old Farmer's Almanac: 10 x 15 ft, 8 ft high, two doors of 21 sq ft, two windows of 15 sq ft: 328 sq ft net.
test("pt-01: the walls' area for paint, from a room file", () => {
  const all = json({
    studio: STUDIO_INCHES,
    rooms: {
      room: `room: A
height: 8'
floor: 15' x 10'
walls:
  - wall: north
    length: 15'
    windows: [{ window: one, from-left: 1', size: 36" x 60", sill: 24" }, { window: two, from-left: 8', size: 36" x 60", sill: 24" }]
  - wall: south
    length: 15'
    doors: [{ from-left: 1', size: 36" x 84" }, { from-left: 8', size: 36" x 84" }]
items:
  - paint: Walls
    on: walls
    colour: "#efe3c8"
    coats: 1
    coverage: 400 sq ft/gal`,
    },
  });
  expect(first(all.items).figures.areaM2).toBeCloseTo(328 * 0.09290304, 4);
});

// curt-18, "common practice, no source": five cuts of 258 cm, repeat 64 cm, half-drop at the selvedge. The simple rule buys 1664 cm;
// a careful layout spaces the cuts by an odd number of half repeats: 1440 cm, less what the last cut need not have.
test("curt-18: the joint plan finds the careful layout", () => {
  const all = json({
    ...CURT_17,
    cloths: { fern: `cloth: Fern\nwidth: 137 cm\nrepeat: { up: 64 cm, match: half-drop }` },
    rooms: {
      dining: CURT_17.rooms.dining.replace(
        "fullness: 2.25",
        "fullness: 2.25\n    panels: single\n    half-widths: no",
      ),
    },
  });
  const cloth = first(all.cloths);
  checkPlan(cloth);
  expect(cloth.plan.pieces).toHaveLength(5);
  expect(cloth.handbookMm).toBe(16_640);
  // Drops 1, 3 and 5 at one parity, 2 and 4 at the other, in turn: 4 x 2.88 + 2.58.
  expect(cloth.plan.lengthMm).toBe(14_100);
  expect(cloth.plan.lengthMm).toBeLessThanOrEqual(14_400);
});
