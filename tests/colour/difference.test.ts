// Values: tests/reference/colour/ciede2000.json (Sharma, Wu and Dalal 2005, all 34 pairs).
import { diff } from "color-diff";
import Color from "colorjs.io";
import { expect, test } from "vitest";
import { difference, differenceOfLab } from "../../src/colour/difference.ts";
import { labD65Of } from "../../src/colour/labD65.ts";
import reference from "../reference/colour/ciede2000.json" with { type: "json" };

const triple = (list: number[]) => list as unknown as readonly [number, number, number];

test("the published table has all of its pairs", () => {
  expect(reference.cases).toHaveLength(34);
});

test.each(reference.cases)("pair $id: $probes", ({ lab1, lab2, deltaE00 }) => {
  const there = differenceOfLab(triple(lab1), triple(lab2));
  const back = differenceOfLab(triple(lab2), triple(lab1));
  // Half a unit of the fourth printed decimal, and what binary fractions add to it.
  expect(Math.abs(there - deltaE00)).toBeLessThanOrEqual(reference.tolerance + 1e-9);
  expect(Math.abs(there - back)).toBeLessThan(1e-12);
});

test("color-diff and colorjs.io agree on hex colours", () => {
  const colours = ["#c9a227", "#3b4a52", "#b04a34", "#f2f0eb", "#0f52ba", "#556b2f", "#222222"];
  for (const one of colours)
    for (const two of colours) {
      const [L, a, b] = labD65Of(one);
      const [L2, a2, b2] = labD65Of(two);
      const ours = difference(one, two);
      expect(ours).toBeCloseTo(diff({ L, a, b }, { L: L2, a: a2, b: b2 }), 9);
      // The formula has no white of its own, so D65 numbers may be handed over as they are.
      const other = new Color("lab", [L, a, b]).deltaE(new Color("lab", [L2, a2, b2]), "2000");
      expect(ours).toBeCloseTo(other, 6);
    }
});

test("colorjs.io agrees on L*a*b* under D65", () => {
  for (const hex of ["#c9a227", "#3b4a52", "#ff0000", "#00ff00", "#0000ff", "#ffffff", "#000000"]) {
    const theirs = new Color(hex).to("lab-d65").coords as number[];
    const ours = labD65Of(hex);
    theirs.forEach((value, i) => {
      expect(Math.abs(value - (ours[i] as number))).toBeLessThan(0.01);
    });
  }
});
