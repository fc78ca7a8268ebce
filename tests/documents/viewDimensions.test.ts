import fc from "fast-check";
import { expect, test } from "vitest";
import type { StandingItem } from "../../src/documents/room/standingItem.ts";
import { dimensionsOf, stepOf } from "../../src/documents/room/viewDimensions.ts";
import type { Wall } from "../../src/room/walls.ts";
import { Length } from "../../src/units/length.ts";

const inch = 25.4;
/** Parts of these inches, one after another. */
const chain = (inches: readonly number[]) => {
  let at = 0;
  return inches.map((each) => {
    const from = at;
    at += each * inch;
    return { from, to: at };
  });
};
const stepInches = (inches: readonly number[], whole: number): number =>
  Number(
    stepOf(chain(inches), whole * inch, "inches")
      .over(Length.inches(1))
      .valueOf(),
  );

test("a chain above a wall is printed to half an inch where it adds up so, else finer", () => {
  expect(stepInches([53, 62, 59], 174)).toBe(0.5);
  // 31 + 132 1/2 + 31 would be 194 1/2: a pole of 132 1/2 in the middle of 194 in.
  expect(stepInches([30.75, 132.5, 30.75], 194)).toBe(0.25);
  // A shade of 41 7/8 in on 256 in.
  expect(stepInches([66.25, 41.875, 17.875, 84, 46], 256)).toBe(0.125);
  expect(stepInches([], 174)).toBe(0.5);
});

test("a chain with a gap that is left out keeps to the usual step", () => {
  const parts = [
    { from: 0, to: 30.75 * inch },
    { from: 32 * inch, to: 60.25 * inch },
  ];
  expect(stepOf(parts, 60.25 * inch, "inches").equals(Length.inches("0.5"))).toBe(true);
});

test("whatever its parts in eighths, what is printed of it adds up", () => {
  const eighths = fc.array(fc.integer({ min: 24, max: 900 }), { minLength: 1, maxLength: 7 });
  fc.assert(
    fc.property(eighths, (all) => {
      const inches = all.map((n) => n / 8);
      const whole = inches.reduce((a, b) => a + b, 0);
      const step = Length.inches(String(stepInches(inches, whole)));
      // As it is drawn: in whole tenths of a millimetre.
      const drawn = (mm: number) => Length.mm((Math.round(mm * 10) / 10).toString()).nearest(step);
      const printed = Length.sum(chain(inches).map(({ from, to }) => drawn(to - from)));
      expect(printed.equals(drawn(whole * inch))).toBe(true);
    }),
    { numRuns: 300, seed: 20261126 },
  );
});

const wall = {
  length: Length.mm(5200),
  side: "north",
  openings: [],
  breast: null,
} as unknown as Wall;

// A pole of 320 cm in the middle of a wall of 520 cm, as its room's file and the fitter's sheet have it; finials of 5.5 cm are only drawn.
test("a pole is measured between its finials, as it is ordered", () => {
  const pair = {
    item: { kind: { kind: "curtains" }, made: { figures: {} }, record: { fields: {} } },
    x: 945,
    y: 0,
    width: 3310,
    height: 2400,
    beyond: 55,
    front: 80,
    shapes: [],
  } as unknown as StandingItem;
  const texts = (items: readonly StandingItem[]) =>
    dimensionsOf(wall, 2700, items, "centimetres", false).map((d) => d.text);
  expect(texts([pair])).toEqual(["100", "320", "100", "520"]);
  const { beyond: _, ...drawn } = pair;
  expect(texts([drawn])).toEqual(["94.5", "331", "94.5", "520"]);
});

// The bed of 160 cm at 100 cm from the left; a pole of 152 cm with finials over it would make a chain of 163 cm.
test("what hangs on a bed adds nothing to the chain: the bed is measured", () => {
  const one = (kind: string, x: number, width: number, more = {}) =>
    ({
      item: { kind: { kind }, made: { figures: {} }, record: { fields: {} } },
      ...{ x, y: 0, width, height: 2000, front: 80, shapes: [] },
      ...more,
    }) as unknown as StandingItem;
  const texts = (items: readonly StandingItem[]) =>
    dimensionsOf(wall, 2700, items, "centimetres", false).map((d) => d.text);
  const bed = one("object", 1000, 1600);
  const foot = one("curtains", 985, 1630, { isOnBed: true });
  expect(texts([bed, foot])).toEqual(texts([bed]));
  expect(texts([bed])).toEqual(["100", "160", "260", "520"]);
});

test("what hangs from a track is measured to the track, not to a pole that is not there", () => {
  const heights = (figures: Record<string, number>) =>
    dimensionsOf(
      wall,
      2700,
      [
        {
          item: { kind: { kind: "curtains" }, made: { figures }, record: { fields: {} } },
          x: 945,
          y: 0,
          width: 3310,
          height: 2400,
          front: 80,
          shapes: [],
        } as unknown as StandingItem,
      ],
      "centimetres",
    ).flatMap((d) => (d.side === "left" ? [d.text] : []));
  expect(heights({ poleAboveFloorMm: 2450 })).toEqual(["245 to the pole"]);
  expect(heights({ poleAboveFloorMm: 2450, trackAboveFloorMm: 2450 })).toEqual([
    "245 to the track",
  ]);
});

// Drawn from 700 mm below the ceiling of 2700 mm: by hand 200 cm. A pole of which nothing is known is not the top of its curtains.
test("a blind or a board without a height of its own is measured where it is drawn; its own height wins", () => {
  const heights = (kind: string, figures: Record<string, number> = {}) => {
    const record = { fields: {} };
    const item = {
      item: { kind: { kind }, made: { figures }, record },
      x: 945,
      y: 700,
      width: 900,
    };
    const drawn = { ...item, height: 1200, front: 80, shapes: [] } as unknown as StandingItem;
    return dimensionsOf(wall, 2700, [drawn], "centimetres").flatMap((d) =>
      d.side === "left" ? [d.text] : [],
    );
  };
  for (const kind of ["blind", "roller-blind"])
    expect(heights(kind), kind).toEqual(["200 to the head"]);
  for (const kind of ["valance", "pelmet"])
    expect(heights(kind), kind).toEqual(["200 to the board"]);
  expect(heights("blind", { headAboveFloorMm: 2050 })).toEqual(["205 to the head"]);
  expect(heights("curtains")).toEqual([]);
});
