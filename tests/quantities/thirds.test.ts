// A repeat in thirds of an inch is no whole number of the planner's grains (1/160 mm): 55 in of cloth with three columns of 18 1/3 in. The
// widest piece with a motif in its middle reaches the selvedge exactly, and what rounding adds to it must not push it off the cloth.
// Geometry: motifs stand at 12 3/8, 30 17/24 and 49 1/24 in; from the middle one it is 24 7/24 in to the right selvedge.
import { expect, test } from "vitest";
import { quantitiesOf, STUDIO_INCHES } from "./studioOf.ts";

const planned = (from: string, item: string, match = "straight") =>
  quantitiesOf({
    studio: STUDIO_INCHES,
    cloths: {
      fern: `cloth: Fern\nwidth: 55"\nkind: large-print\nruns: one-way\nrepeat: { up: 25 1/4", across: 18 1/3", match: ${match}, from-selvedge: ${from} }`,
    },
    rooms: { a: `room: A\nitems:\n  - { ${item}, cloth: fern }` },
  });

const WIDE = [
  'cushion: One, size: 75" x 16", join: both-sides, edge: knife, closure: sewn',
  'cushion: One, size: 75" x 16", join: one-side, edge: knife, closure: sewn',
  'blind: One, width: 70", drop: 40"',
  'tablecloth: One, form: round, table: 40" x 40" x 30", drop: 20"',
  'runner: One, bed: 72" x 80" x 25", drop: 12", depth: 20"',
];

test.each(WIDE)("is cut with its motif in the middle: %s", (item) => {
  for (const from of ['12 3/8"', '5 1/3"', '9 1/6"', '18"', '1/8"', '7"'])
    for (const match of ["straight", "half-drop"]) {
      const found = planned(from, item, match);
      expect(found.diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
      const [cloth] = found.cloths;
      for (const piece of cloth?.plan.pieces ?? []) {
        expect(piece.x.plus(piece.width).toMm()).toBeLessThanOrEqual(55 * 25.4 + 1e-9);
        expect(piece.x.toMm()).toBeGreaterThanOrEqual(0);
      }
    }
});

test("the middle is the widest that the geometry gives, within a fortieth of a millimetre", () => {
  const [cloth] = planned('12 3/8"', WIDE[4] as string).cloths;
  const middle = cloth?.plan.pieces.find(({ piece }) => piece.includes("middle"));
  expect(Math.abs((middle?.width.toMm() ?? 0) - 2 * (24 + 7 / 24) * 25.4)).toBeLessThan(0.025);
});
