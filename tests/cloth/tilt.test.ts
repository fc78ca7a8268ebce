import { expect, test } from "vitest";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { fieldOf } from "../../src/cloth/pixels/field.ts";
import { reliefOf } from "../../src/cloth/pixels/reliefOf.ts";
import { autocorrelation, cubicBetween } from "../../src/cloth/repeat/autocorrelation.ts";
import { findLattice } from "../../src/cloth/repeat/findLattice.ts";
import { fitTilt } from "../../src/cloth/repeat/fitTilt.ts";
import { hilltop } from "../../src/cloth/repeat/hilltop.ts";
import { area, type Basis } from "../../src/cloth/repeat/lattice.ts";
import { refineLattice } from "../../src/cloth/repeat/refineLattice.ts";
import { restLattice } from "../../src/cloth/repeat/restLattice.ts";
import { seenPattern } from "../../src/cloth/repeat/seenPattern.ts";
import { SQUARE, seenPlace, seenShift, type Tilt } from "../../src/cloth/repeat/tilt.ts";
import { unevenness } from "../../src/cloth/repeat/unevenness.ts";
import { type Design, discs, photograph, sprigs, stripes } from "./made.ts";

const PLACE = { file: "content/cloths/fern.md", line: 2, column: 8, keyPath: null };
const SHOT = { widthMm: 300, heightMm: 225, widthPx: 420 };
const SPRIG: [string, string, string, string] = ["#efe3c8", "#556b2f", "#c98a86", "#d8a21c"];

/** What a tilted camera sees of a design: `tilt` in parts of the picture's width. The middle keeps its scale. */
function seenBy(design: Design, [gx, gy]: Tilt): Design {
  return (x, y) => {
    const [sx, sy] = [x - 150, y - 112.5];
    // x = u / (1 - g.u), turned round: u = x / (1 + g.x).
    const w = 1 + (gx * sx + gy * sy) / 300;
    return design(150 + sx / w, 112.5 + sy / w);
  };
}

test("a tilt moves places and shifts as its own derivative says", () => {
  const tilt: Tilt = [0.0004, -0.0003];
  const [u, v, d] = [40, -25, 6];
  const one = seenPlace(tilt, u, v);
  const other = seenPlace(tilt, u + d, v);
  const middle = [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2] as const;
  const shift = seenShift([d, 0], tilt, ...middle);
  // To second order in the tilt, of which 40 px times 0.0005 is a fiftieth.
  expect(Math.abs(shift[0] - (other[0] - one[0]))).toBeLessThan(0.01);
  expect(Math.abs(shift[1] - (other[1] - one[1]))).toBeLessThan(0.01);
});

test.each([
  [0.12, -0.06],
  [-0.05, 0.1],
  [0, 0],
] as const)("the camera's tilt %f, %f is found from the cloth alone", (gx, gy) => {
  const cloth = seenBy(sprigs(SPRIG, { across: 40, up: 52 }), [gx, gy]);
  const relief = reliefOf(fieldOf(photograph(cloth, { ...SHOT, noise: 4 })));
  const px = relief.width / 300;
  const shifts = [
    [0, 52 * px],
    [40 * px, 26 * px],
    [40 * px, -26 * px],
  ] as const;
  const found = fitTilt(relief, shifts);
  expect(Math.abs(found[0] * relief.width - gx)).toBeLessThan(0.015);
  expect(Math.abs(found[1] * relief.width - gy)).toBeLessThan(0.015);
});

test.each([
  ["sprigs", sprigs(SPRIG, { across: 40, up: 52 }), 40, 52],
  ["stripes", stripes(["#efe3c8", 20], ["#8a3b4a", 10], ["#556b2f", 8]), 38, null],
] as const)("%s under a tilted camera keep their repeat at the middle", (_, design, across, up) => {
  const photo = photograph(seenBy(design, [0.15, 0.08]), { ...SHOT, noise: 4 });
  const found = measureCloth(photo, 300, { place: PLACE }).value?.pattern.repeat;
  expect(found?.sure).toBe(true);
  expect(Math.abs((found?.horizontalMm ?? 0) / across - 1)).toBeLessThan(0.01);
  if (up !== null) expect(Math.abs((found?.verticalMm ?? 0) / up - 1)).toBeLessThan(0.01);
});

test("the top of a parabola is found between its places, and of a ridge how far across it", () => {
  const side = 5;
  const scores = (value: (x: number, y: number) => number) =>
    Float64Array.from({ length: side * side }, (_, n) =>
      value((n % side) - 2, Math.floor(n / side) - 2),
    );
  const hill = hilltop(
    scores((x, y) => 0.9 - 0.02 * (x - 0.3) ** 2 - 0.03 * (y + 0.4) ** 2),
    side,
    0.5,
  );
  expect(hill?.across).toBeNull();
  expect(hill?.dx).toBeCloseTo(0.3, 6);
  expect(hill?.dy).toBeCloseTo(-0.4, 6);
  const ridge = hilltop(
    scores((x) => 0.9 - 0.05 * (x - 0.25) ** 2),
    side,
    0.5,
  );
  expect(Math.abs(ridge?.across?.[0] ?? 0)).toBeCloseTo(1, 6);
  expect(ridge?.dx).toBeCloseTo(0.25, 6);
  expect(
    hilltop(
      scores(() => 0.2),
      side,
      0.5,
    ),
  ).toBeNull();
});

test("between pixels, a parabola is read without loss (Keys 1981: exact to the second order)", () => {
  const [reachX, reachY] = [8, 8];
  const value = (x: number, y: number) => 1 - 0.01 * x * x - 0.02 * y * y + 0.003 * x * y;
  const values = new Float32Array(17 * 17);
  for (let y = -8; y <= 8; y++)
    for (let x = -8; x <= 8; x++) values[(y + 8) * 17 + x + 8] = value(x, y);
  const correlation = { reachX, reachY, values };
  expect(cubicBetween(correlation, 2.37, -3.81)).toBeCloseTo(value(2.37, -3.81), 5);
});

/** Discs 20 mm apart whose colour goes by their place in rows and columns. */
const coloured = (colour: (i: number, j: number) => string): Design => {
  const ground = discs("#efe3c8", "#000000", { across: 20, up: 20, diameter: 11 });
  return (x, y) =>
    ground(x, y) === "#efe3c8" ? "#efe3c8" : colour(Math.round(x / 20), Math.round(y / 20));
};
const cellMm = (design: Design) => {
  const { correlation, relief } = seenPattern(fieldOf(photograph(design, { ...SHOT, noise: 3 })));
  const found = findLattice(correlation);
  return found ? Math.sqrt(area(found.basis)) * (300 / relief.width) : null;
};

test("discs of two near shades, turn about, are one repeat of two", () => {
  const two = coloured((i, j) => ((i + j) % 2 === 0 ? "#3b4a52" : "#56655f"));
  expect(Math.abs((cellMm(two) ?? 0) / (20 * Math.SQRT2) - 1)).toBeLessThan(0.01);
  expect(Math.abs((cellMm(coloured(() => "#3b4a52")) ?? 0) / 20 - 1)).toBeLessThan(0.01);
});

test("a lattice of discs whose every second is another shade is not even; of discs all alike it is", () => {
  const uneven = (design: Design) => {
    const { correlation, relief } = seenPattern(fieldOf(photograph(design, { ...SHOT, noise: 3 })));
    const px = (20 * relief.width) / 300;
    const basis = [
      [px, 0],
      [0, px],
    ] as const;
    return unevenness(correlation, basis)?.errors ?? 0;
  };
  expect(uneven(coloured(() => "#3b4a52"))).toBeLessThan(3);
  expect(uneven(coloured((i, j) => ((i + j) % 2 === 0 ? "#3b4a52" : "#4c5b5a")))).toBeGreaterThan(
    4,
  );
});

test("impressions of one block, none quite like the next, are one block", () => {
  const shades = ["#3b4a52", "#414f56", "#38474e", "#44525a", "#3f4d53", "#3a4950", "#455459"];
  const printed = coloured((i, j) => shades[(3 * i + 5 * j + ((i * j) % 4) + 70) % 7] as string);
  expect(Math.abs((cellMm(printed) ?? 0) / 20 - 1)).toBeLessThan(0.01);
});

test("the level picture is as alike to itself near and far; the tilted one is not", () => {
  const cloth = seenBy(sprigs(SPRIG, { across: 40, up: 52 }), [0.15, 0.08]);
  const photo = photograph(cloth, { ...SHOT, noise: 4 });
  const level = findLattice(seenPattern(fieldOf(photo)).correlation);
  const tilted = findLattice(autocorrelation(reliefOf(fieldOf(photo))));
  expect(level?.score).toBeGreaterThan((tilted?.score ?? 0) + 0.1);
});

test("a lattice that is known tells the tilt, and is nearer to the truth without it", () => {
  const [across, up] = [110, 90];
  const cloth = seenBy(sprigs(SPRIG, { across, up, size: 2.4, halfDrop: false }), [0.06, 0.03]);
  const raw = reliefOf(fieldOf(photograph(cloth, { ...SHOT, noise: 4 })), 0.03);
  const px = raw.width / 300;
  const correlation = autocorrelation(raw);
  const basis = restLattice(correlation, [
    [across * px, 0],
    [0, up * px],
  ]);
  const lattice = { basis, score: 0.9, points: 4 };
  const refined = refineLattice({ relief: raw, raw, correlation, tilt: SQUARE }, lattice);
  const off = (basis: Basis) => Math.abs(area(basis) / (across * up * px * px) - 1);
  expect(off(refined.lattice.basis)).toBeLessThan(0.01);
  expect(off(refined.lattice.basis)).toBeLessThan(off(lattice.basis));
  const [gx, gy] = refined.seen.tilt.map((g) => g * raw.width) as [number, number];
  expect(Math.hypot(gx - 0.06, gy - 0.03)).toBeLessThan(0.04);
});
