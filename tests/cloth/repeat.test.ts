import { expect, test } from "vitest";
import type { MeasuredRepeat, PatternKind } from "../../src/cloth/clothMeasure.ts";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { fieldOf } from "../../src/cloth/pixels/field.ts";
import { reliefOf } from "../../src/cloth/pixels/reliefOf.ts";
import { alongOverAcross } from "../../src/cloth/repeat/alongAcross.ts";
import { type Design, discs, gingham, photograph, plain, seeded, sprigs, stripes } from "./made.ts";
import { CREAM, PLACE, pattern, SHOT, SPRIG } from "./shown.ts";

function turned(design: Design, degrees: number): Design {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  // Anticlockwise as one looks at it, about the picture's middle; y points down.
  return (x, y) => design(150 + (x - 150) * c - (y - 112) * s, 112 + (x - 150) * s + (y - 112) * c);
}

const repeats: [
  string,
  Design,
  MeasuredRepeat["match"],
  number | null,
  number | null,
  PatternKind,
][] = [
  [
    "sprigs, half-drop 40 x 52",
    sprigs(SPRIG, { across: 40, up: 52 }),
    "half-drop",
    40,
    52,
    "small-print",
  ],
  [
    "sprigs, straight 46 x 61",
    sprigs(SPRIG, { across: 46, up: 61, halfDrop: false }),
    "straight",
    46,
    61,
    "small-print",
  ],
  [
    "sprigs, half-drop 96 x 130, large",
    sprigs(SPRIG, { across: 96, up: 130, size: 3.2 }),
    "half-drop",
    96,
    130,
    "large-print",
  ],
  [
    "sprigs, half-drop 17 x 23, small",
    sprigs(SPRIG, { across: 17, up: 23, size: 0.5 }),
    "half-drop",
    17,
    23,
    "small-print",
  ],
  [
    "discs, straight 30 x 40",
    discs(CREAM, "#3b4a52", { across: 30, up: 40, diameter: 14 }),
    "straight",
    30,
    40,
    "geometric",
  ],
  ["a gingham of 12 mm", gingham("#f7f3ea", "#9fb0c4", "#3f5f8a", 12), "straight", 24, 24, "check"],
  [
    "stripes of 38 mm",
    stripes([CREAM, 20], ["#8a3b4a", 10], [CREAM, 5], ["#556b2f", 3]),
    "straight",
    38,
    null,
    "stripe",
  ],
];

test.each(repeats)("%s", (_, design, match, across, up, kind) => {
  const found = pattern(design);
  expect(found?.kind).toBe(kind);
  expect(found?.repeat).toMatchObject({ match, sure: true });
  const near = (actual: number | null | undefined, expected: number | null) =>
    expected === null
      ? expect(actual).toBeNull()
      : expect(Math.abs((actual ?? 0) / expected - 1)).toBeLessThan(0.008);
  near(found?.repeat?.horizontalMm, across);
  near(found?.repeat?.verticalMm, up);
});

test.each([0, 25, 45, 90, 130, 172])("stripes that run at %i degrees", (degrees) => {
  const found = pattern(turned(stripes([CREAM, 14], ["#3b4a52", 8]), degrees - 90));
  expect(found?.kind).toBe("stripe");
  const off = Math.abs((found?.directionDeg ?? 0) - degrees);
  expect(Math.min(off, 180 - off)).toBeLessThan(0.5);
  const [across] = found?.repeat?.lattice ?? [];
  expect(Math.abs(Math.hypot(...(across ?? [0, 0])) / 22 - 1)).toBeLessThan(0.01);
  // Across the bands: square to the run.
  const run = [Math.cos((degrees * Math.PI) / 180), -Math.sin((degrees * Math.PI) / 180)];
  expect(
    Math.abs((across?.[0] ?? 0) * (run[0] as number) + (across?.[1] ?? 0) * (run[1] as number)),
  ).toBeLessThan(0.3);
  expect(Math.abs((found?.motifMm ?? 0) - 8)).toBeLessThan(0.7);
});

test("sprigs that stand between stripes repeat along them: they are no plain stripes, and at worst not sure", () => {
  const bands = stripes([CREAM, 34], ["#556b2f", 20]);
  // A small cross every 17 mm down the middle of each light band.
  const crossed: Design = (x, y) => {
    const [u, v] = [Math.abs((x % 54) - 17), Math.abs((y % 17) - 8.5)];
    return (u < 1.6 && v < 4.5) || (v < 1.6 && u < 4.5) ? "#c98a86" : bands(x, y);
  };
  const found = pattern(crossed)?.repeat;
  const near = (mm: number | null | undefined, true_: number) =>
    Math.abs((mm ?? 0) - true_) < 0.01 * true_;
  expect((near(found?.horizontalMm, 54) && near(found?.verticalMm, 17)) || !found?.sure).toBe(true);
  expect(pattern(bands)?.repeat).toMatchObject({ verticalMm: null, sure: true });
});

test("a camera turned by two degrees changes neither repeat nor match", () => {
  const found = pattern(turned(sprigs(SPRIG, { across: 40, up: 52 }), 2))?.repeat;
  expect(found).toMatchObject({ match: "half-drop", sure: true });
  expect(Math.abs((found?.horizontalMm ?? 0) / 40 - 1)).toBeLessThan(0.01);
  expect(Math.abs((found?.verticalMm ?? 0) / 52 - 1)).toBeLessThan(0.01);
});

test("a third drop is neither straight nor half-drop, and not sure", () => {
  const third: Design = (x, y) => {
    const column = Math.round(x / 40);
    const dy = ((((y - column * 20 + 30) % 60) + 60) % 60) - 30;
    return Math.hypot(x - column * 40, dy * 1.5) < 12 ? "#8a3b4a" : CREAM;
  };
  expect(pattern(third)?.repeat).toMatchObject({ match: "other", sure: false });
});

test("plains, scattered spots and a repeat that is not wholly seen have none", () => {
  expect(pattern(plain(CREAM), { noise: 3 })).toMatchObject({
    kind: "plain",
    repeat: null,
    busyness: 0,
    contrast: 0,
    motifMm: null,
    readsPlainFromM: 0,
  });
  const random = seeded(11);
  const spots = Array.from({ length: 140 }, () => [
    random() * 300,
    random() * 225,
    3 + 2 * random(),
  ]);
  const spotted = new Uint8Array(600 * 450);
  for (const [sx = 0, sy = 0, r = 0] of spots)
    for (let j = 0; j < 450; j++)
      for (let i = 0; i < 600; i++)
        if (Math.hypot(i / 2 - sx, j / 2 - sy) < r) spotted[j * 600 + i] = 1;
  const scattered: Design = (x, y) =>
    spotted[Math.min(449, Math.floor(y * 2)) * 600 + Math.min(599, Math.floor(x * 2))]
      ? "#6b4a2f"
      : "#d8b98a";
  const found = pattern(scattered);
  expect(found).toMatchObject({ kind: "irregular", repeat: null });
  const large = measureCloth(
    photograph(sprigs(SPRIG, { across: 290, up: 300, size: 7 }), SHOT),
    300,
    { place: PLACE },
  );
  expect(large.value?.pattern.repeat).toBeNull();
  expect(large.value?.confirm.map((c) => c.what)).toContain("pattern.repeat");
});

test("stripes change along their run by nothing, a gingham as much as across", () => {
  const of = (design: Design) =>
    alongOverAcross(reliefOf(fieldOf(photograph(design, { ...SHOT, noise: 4 }))), 90);
  expect(of(stripes([CREAM, 14], ["#3b4a52", 8]))).toBeLessThan(0.02);
  const check = of(gingham("#f7f3ea", "#9fb0c4", "#3f5f8a", 12));
  expect(check).toBeGreaterThan(0.8);
  expect(check).toBeLessThan(1.25);
});

test("busyness: a plain has none, and it grows with contrast and with closeness", () => {
  const of = (ink: string, across: number) =>
    pattern(discs(CREAM, ink, { across, up: across, diameter: across / 2 }))?.busyness ?? 0;
  const [quiet, strong, close] = [of("#cbb48f", 40), of("#3b4a52", 40), of("#3b4a52", 18)];
  expect(quiet).toBeGreaterThan(0);
  expect(strong).toBeGreaterThan(quiet + 0.1);
  expect(close).toBeGreaterThan(strong + 0.1);
  expect(close).toBeLessThan(1);
});
