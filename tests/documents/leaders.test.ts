import fc from "fast-check";
import { expect, test } from "vitest";
import { placeLeaders } from "../../src/documents/room/leaders.ts";

// The rules are the project's own: labels clear of each other, no leader through another's name.

const thing = (id: string, left: number, right: number) => ({
  id,
  name: id,
  words: "two pillows",
  left,
  right,
  isFree: () => true,
  spotAt: (x: number) => (x > left && x < right ? 1200 : null),
});

test("a leader stands on its own thing, and its label on its leader", () => {
  const things = fc.array(
    fc.tuple(fc.integer({ min: 0, max: 4500 }), fc.integer({ min: 300, max: 2000 })),
    { minLength: 1, maxLength: 5 },
  );
  fc.assert(
    fc.property(things, (all) => {
      const labels = all.map(([left, width], at) => thing(`Cloth${at}`, left, left + width));
      const placed = placeLeaders(labels, 1 / 16, 20, 60, 200, 420);
      expect(placed.labels).toHaveLength(labels.length);
      for (const label of placed.labels) {
        const own = labels.find((l) => l.name === label.name);
        const px = label.x - 1.2;
        expect(px).toBeGreaterThanOrEqual(20 + (own?.left ?? 0) / 16);
        expect(px).toBeLessThanOrEqual(20 + (own?.right ?? 0) / 16);
      }
    }),
    { numRuns: 200, seed: 20261125 },
  );
});

test("a picture above a sofa with cushions on it: four names that share no place, and no leader through a name", () => {
  // As on the demo's study: a sofa 76 in wide, a picture above it, three groups of cushions.
  const labels = [
    thing("Harbor", 600, 1100),
    thing("Sofa", 250, 2200),
    thing("Stripe", 350, 1000),
    thing("Ikat", 650, 1050),
    thing("Ticking", 1150, 1900),
  ];
  const { labels: placed } = placeLeaders(labels, 1 / 16, 80, 60, 200, 420);
  for (const a of placed)
    for (const b of placed) {
      if (a === b) continue;
      if (a.y === b.y) expect(Math.abs(a.x - b.x)).toBeGreaterThanOrEqual(18);
      // A lower label's leader passes to the left of an upper one's text, or beyond its end.
      if (a.y > b.y) expect(a.x < b.x || a.x > b.x + 18).toBe(true);
    }
});
