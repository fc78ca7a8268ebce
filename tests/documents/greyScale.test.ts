import fc from "fast-check";
import { expect, test } from "vitest";
import { lightness } from "../../src/colour/luminance.ts";
import { greyOfLightness, scaleLabels } from "../../src/documents/board/greyScale.ts";

const values = fc.array(
  fc.record({
    name: fc.constantFrom("Ash", "Bellwether", "Moderate yellowish brown", "The walls"),
    value: fc.double({ min: 0, max: 100, noNaN: true }),
  }),
  { minLength: 1, maxLength: 14 },
);
const width = (name: string, value: number): number =>
  (name.length + 1 + String(Math.round(value)).length) * 1.75;

test("names below the scale meet neither each other nor a line that goes further down, and stand near their place", () => {
  fc.assert(
    fc.property(values, (all) => {
      const at = (value: number): number => 16 + value * 3.7;
      const labels = scaleLabels(all, at);
      expect(labels).toHaveLength(all.length);
      for (const l of labels) {
        const end = l.x + width(l.name, l.value);
        // Only where values all but meet is a line moved, and never by more than all of them take.
        expect(at(l.value) - l.x).toBeGreaterThanOrEqual(-1e-9);
        expect(at(l.value) - l.x).toBeLessThan(1.3 * all.length);
        for (const o of labels) {
          if (o === l) continue;
          const textsMeet = o.row === l.row && o.x < end && l.x < o.x + width(o.name, o.value);
          const lineThrough = o.row > l.row && o.x > l.x && o.x < end;
          expect(textsMeet || lineThrough).toBe(false);
          expect(Math.abs(o.x - l.x)).toBeGreaterThanOrEqual(1.3 - 1e-9);
        }
      }
    }),
    { numRuns: 400, seed: 20261125 },
  );
});

test("a grey of an L* has that L* (CIE 15), but for eight bits a channel", () => {
  for (const value of [0, 8, 25, 50, 75, 99, 100])
    expect(lightness(greyOfLightness(value))).toBeCloseTo(value, 0);
});
