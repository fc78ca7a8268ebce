// Values: tests/reference/colour/vision.json (Watson and Ahumada 2005; geometry).
import { expect, test } from "vitest";
import {
  contrastSensitivity,
  distanceFor,
  highestVisible,
} from "../../src/cloth/contrastSensitivity.ts";
import type { Pixels } from "../../src/cloth/pixels.ts";
import { readsPlainFrom, waveBands } from "../../src/cloth/readingDistance.ts";
import { channelOfLinear } from "../../src/colour/linear.ts";
import reference from "../reference/colour/vision.json" with { type: "json" };

const { cases, tolerance } = reference;
const within = (actual: number, expected: number, part = tolerance.relative) =>
  expect(Math.abs(actual / expected - 1)).toBeLessThanOrEqual(part);

test.each(cases.hpmh)("sensitivity at $cpd cycles per degree is $S", ({ cpd, S }) => {
  within(contrastSensitivity(cpd), S);
});

test("it peaks where the reference says", () => {
  const { cpd, S } = cases.hpmhPeak;
  within(contrastSensitivity(cpd), S);
  for (let f = 0.5; f < 60; f += 0.25)
    expect(contrastSensitivity(f)).toBeLessThanOrEqual(S * 1.0001);
});

test.each(cases.vanishingRepeat)("contrast $michelson is seen up to $highestVisibleCpd", (row) => {
  within(highestVisible(row.michelson), row.highestVisibleCpd);
  for (const [metres, mm] of Object.entries(row.repeatMmAt)) {
    // The published repeats have two decimals.
    const distance = distanceFor(highestVisible(row.michelson), mm) / 1000;
    within(distance, Number.parseFloat(metres), 0.006 / mm + tolerance.relative);
  }
});

test.each(cases.visualAngle)(
  "$sizeMm mm at $distanceMm mm",
  ({ sizeMm, distanceMm, cyclesPerDegreeIfRepeat }) => {
    within(distanceFor(cyclesPerDegreeIfRepeat, sizeMm), distanceMm);
  },
);

test("a contrast under every threshold is never seen", () => {
  expect(highestVisible(0.004)).toBe(0);
  expect(highestVisible(0)).toBe(0);
});

/** A grating whose luminance is mean (1 + m sin), upright waves of a length in millimetres. */
function grating(waveMm: number, contrast: number, mmPerPx: number): Pixels {
  const [width, height] = [400, 300];
  const data = new Float32Array(width * height * 3);
  for (let p = 0; p < width * height; p++) {
    const light = 0.4 * (1 + contrast * Math.sin((2 * Math.PI * (p % width) * mmPerPx) / waveMm));
    data.fill(channelOfLinear(light), p * 3, p * 3 + 3);
  }
  return { width, height, data };
}

test.each([
  [6, 0.1],
  [6, 0.4],
  [2.5, 0.2],
  [12, 0.05],
])("a grating of %d mm and contrast %d is measured as one", (wave, m) => {
  const bands = waveBands(grating(wave, m, 0.25), 0.25);
  const strongest = bands.reduce((a, b) => (b.contrast > a.contrast ? b : a));
  within(strongest.waveMm, wave, 0.03);
  within(strongest.contrast, m, 0.08);
  // Texture rather than pattern up to three times the threshold (the reference's margin, no source).
  within(
    readsPlainFrom(grating(wave, m, 0.25), 0.25),
    distanceFor(highestVisible(m / 3), wave) / 1000,
    0.08,
  );
});
