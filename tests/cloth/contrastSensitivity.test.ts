// Values: tests/reference/colour/vision.json (Watson and Ahumada 2005; geometry).
import Color from "colorjs.io";
import { expect, test } from "vitest";
import {
  contrastSensitivity,
  distanceFor,
  highestVisible,
} from "../../src/cloth/distance/contrastSensitivity.ts";
import {
  contrastLeft,
  NOTICED,
  readingDistances,
  type WaveBand,
  waveBands,
} from "../../src/cloth/distance/readingDistance.ts";
import type { Pixels } from "../../src/cloth/pixels/pixels.ts";
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

/** A grating in Oklab's lightness (a grey) or in its blue-yellow axis, upright waves of a length in millimetres. */
function grating(waveMm: number, amplitude: number, mmPerPx: number, axis: 0 | 2 = 0): Pixels {
  const [width, height] = [400, 300];
  const row = new Float32Array(width * 3);
  for (let x = 0; x < width; x++) {
    const wave = amplitude * Math.sin((2 * Math.PI * x * mmPerPx) / waveMm);
    const lab: [number, number, number] = [0.65, 0, 0];
    lab[axis] += wave;
    const rgb = new Color("oklab", lab).to("srgb").coords as number[];
    for (let c = 0; c < 3; c++) row[x * 3 + c] = 255 * (rgb[c] as number);
  }
  const data = new Float32Array(width * height * 3);
  for (let y = 0; y < height; y++) data.set(row, y * row.length);
  return { width, height, data };
}

test.each([
  [6, 0.04, 0],
  [6, 0.1, 2],
  [2.5, 0.08, 0],
  [12, 0.03, 0],
] as const)("a grating of %d mm, amplitude %d, is measured as one", (wave, amplitude, axis) => {
  const bands = waveBands(grating(wave, amplitude, 0.25, axis), 0.25);
  const sum = (of: (band: WaveBand) => number) => bands.reduce((all, band) => all + of(band), 0);
  const own = axis === 0 ? sum((b) => b.light) : sum((b) => b.chroma);
  // A sine's mean square is half its amplitude's square.
  within(Math.sqrt(2 * own), amplitude, 0.06);
  const strongest = bands.reduce((a, b) => (b.light + b.chroma > a.light + a.chroma ? b : a));
  within(strongest.waveMm, wave, 0.03);
});

test.each([
  [3, 0.1, 1],
  [8, 0.15, 1],
  [3, 0.1, 0.5],
])("%d mm, amplitude %d, acuity %d: gone where the published sensitivity says", (mm, a, acuity) => {
  const found = readingDistances(grating(mm, a, 0.25), 0.25, acuity);
  for (const [level, metres] of [
    [NOTICED, found.plainFromM],
    [3 * NOTICED, found.patternToM],
  ] as const) {
    // The part that must be passed, over its peak of 217.29 at 3.45 cycles a degree (vision.json, hpmhPeak).
    const needed = (level * Math.SQRT2) / a;
    const frequency = highestVisible(1 / (needed * cases.hpmhPeak.S)) * acuity;
    within(metres, distanceFor(frequency, mm) / 1000, 0.08);
  }
});

test("colour alone is lost nearer than light and dark of the same strength, and half the acuity halves the distance", () => {
  const light = readingDistances(grating(4, 0.08, 0.25, 0), 0.25);
  const colour = readingDistances(grating(4, 0.08, 0.25, 2), 0.25);
  within(colour.plainFromM, light.plainFromM / 4, 0.05);
  within(
    readingDistances(grating(4, 0.08, 0.25), 0.25, 0.5).plainFromM,
    light.plainFromM / 2,
    0.02,
  );
});

test("what is left only falls as one walks away, of a coarse pattern as of a fine one", () => {
  for (const mm of [2, 20]) {
    const bands = waveBands(grating(mm, 0.1, 0.25), 0.25);
    let last = Number.POSITIVE_INFINITY;
    for (let metres = 0.1; metres < 60; metres *= 1.1) {
      const left = contrastLeft(bands, metres, 1);
      expect(left).toBeLessThanOrEqual(last + 1e-12);
      last = left;
    }
    expect(last).toBeLessThan(mm === 2 ? 1e-6 : 0.01);
  }
});

test("below what is just noticed there is neither pattern nor texture", () => {
  expect(readingDistances(grating(6, 0.02, 0.25), 0.25)).toEqual({ patternToM: 0, plainFromM: 0 });
});
