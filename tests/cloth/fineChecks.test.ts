// Cloths drawn thread by thread: warp and weft of known colours and sizes, so that kind and repeat are known.
import { expect, test } from "vitest";
import type { KindSigns } from "../../src/cloth/kind/judgedKind.ts";
import { kindOf } from "../../src/cloth/kind/kindOf.ts";
import { slantOf } from "../../src/cloth/kind/leaning.ts";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { USUAL_LIMITS } from "../../src/cloth/motif/printSize.ts";
import { fieldOf } from "../../src/cloth/pixels/field.ts";
import { type Design, photograph } from "./made.ts";

const mod = (a: number, n: number) => ((a % n) + n) % n;

interface Woven {
  readonly threadMm: number;
  readonly warp: (end: number) => string;
  readonly weft: (pick: number) => string;
  /** True where the end lies over the pick. */
  readonly over: (end: number, pick: number) => boolean;
}

function woven({ threadMm, warp, weft, over }: Woven): Design {
  return (x, y) => {
    const [end, pick] = [Math.floor(x / threadMm), Math.floor(y / threadMm)];
    return over(end, pick) ? warp(end) : weft(pick);
  };
}

const PLACE = { file: "card.md", line: 1, column: 1, keyPath: null };
const measured = (design: Design, widthMm: number, widthPx: number, falloff = 0.9, blurPx = 1) => {
  const shot = { widthMm, heightMm: 0.75 * widthMm, widthPx, noise: 2, falloff, blurPx };
  const { value } = measureCloth(photograph(design, shot), widthMm, { place: PLACE });
  if (!value) throw new Error("not measured");
  return value;
};
const asked = (measure: ReturnType<typeof measured>) => measure.confirm.map(({ what }) => what);
const inTurn = (one: string, two: string, each: number) => (at: number) =>
  mod(at, 2 * each) < each ? one : two;
const tabby = (end: number, pick: number) => mod(end + pick, 2) === 0;
const twill = (end: number, pick: number) => mod(end + pick, 4) < 2;

test.each([
  ["red and white", "#b3282d", "#f4f0e6", true],
  ["two greys", "#8a9298", "#adb4b7", false],
])(
  "a gingham of six millimetres, its threads seen, is a check with its repeat: %s",
  (_, one, two, sure) => {
    const bands = inTurn(one, two, 6);
    const found = measured(
      woven({ threadMm: 0.5, warp: bands, weft: bands, over: tabby }),
      104,
      640,
    );
    expect(found.pattern.kind).toBe("check");
    expect(Math.abs((found.pattern.repeat?.verticalMm ?? 0) / 6 - 1)).toBeLessThan(0.01);
    expect(Math.abs((found.pattern.repeat?.horizontalMm ?? 0) / 6 - 1)).toBeLessThan(0.01);
    expect(found.pattern.repeat?.sure).toBe(true);
    expect(asked(found).includes("pattern.kind")).toBe(!sure);
  },
);

const herringbone = (yarn: string) =>
  woven({
    threadMm: 0.6,
    warp: () => "#efe8d8",
    weft: () => yarn,
    over: (end, pick) => twill(mod(end, 24) < 12 ? end : 11 - end, pick),
  });

test("a fine herringbone is a weave that keeps its repeat, and she is asked whether it is matched", () => {
  const found = measured(herringbone("#4a3a2e"), 104, 900);
  expect(found.pattern.kind).toBe("textured-plain");
  // Four picks of 0.6 mm up, two stripes of twelve ends across; a stripe turned stands two picks on.
  const [a, b] = found.pattern.repeat?.lattice ?? [];
  if (!a || !b) throw new Error("no repeat");
  expect(Math.abs(Math.abs(a[0] * b[1] - a[1] * b[0]) / (2.4 * 14.4) - 1)).toBeLessThan(0.02);
  expect(asked(found)).toContain("pattern.repeat");
});

test("a hopsack of three millimetres has no repeat to match", () => {
  const hopsack = woven({
    threadMm: 0.8,
    warp: () => "#c9b48f",
    weft: () => "#a98f66",
    over: (end, pick) => mod(Math.floor(end / 2) + Math.floor(pick / 2), 2) === 0,
  });
  const found = measured(hopsack, 104, 640);
  expect(found.pattern.kind).toBe("textured-plain");
  expect(found.pattern.repeat).toBeNull();
  expect(asked(found)).not.toContain("pattern.repeat");
});

const houndstooth = (threadMm: number, one: string, two: string) => {
  const bands = inTurn(one, two, 4);
  return woven({ threadMm, warp: bands, weft: bands, over: twill });
};
const HARLEQUIN: Design = (x, y) =>
  tabby(Math.floor(x / 20 + y / 32), Math.floor(x / 20 - y / 32)) ? "#24252b" : "#f0ead8";
const PINWHEEL: Design = (x, y) => {
  const [u, v] = [mod(x, 30) - 15, mod(y, 30) - 15];
  return mod(Math.floor((4 * Math.atan2(v, u)) / Math.PI), 2) === 0 ? "#24252b" : "#f0ead8";
};

test.each([
  ["of 16 mm", 2, 110],
  ["of 58 mm", 7.2, 260],
  ["of 6 mm", 0.75, 104],
])("a houndstooth %s is a check, as the trade says", (_, threadMm, widthMm) => {
  const found = measured(houndstooth(threadMm, "#24252b", "#f0ead8"), widthMm, 640);
  expect(found.pattern.kind).toBe("check");
  const { verticalMm } = found.pattern.repeat ?? { verticalMm: 0 };
  expect(Math.abs((verticalMm ?? 0) / (8 * threadMm) - 1)).toBeLessThan(0.01);
});

/** Bands by fours beside bands by twos: where both ways are fours a houndstooth stands, elsewhere finer figures; and a line of a third colour. */
const glen = (threadMm: number, fours: number, twos: number): Design => {
  const length = 8 * fours + 4 * twos + 4;
  const yarn = (at: number) => {
    const place = mod(at, length);
    if (place >= length - 4) return place < length - 2 ? "#8a2f2f" : "#e9e5da";
    const each = place < 8 * fours ? 4 : 2;
    return mod(place, 2 * each) < each ? "#3a3b3d" : "#e9e5da";
  };
  return woven({ threadMm, warp: yarn, weft: yarn, over: twill });
};

// Sharp, and held a little turned: the threads fall out of step with the picture's rows, and the bands are a sum no longer.
const turned =
  (design: Design, deg: number): Design =>
  (x, y) => {
    const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
    return design(x * c - y * s, x * s + y * c);
  };

test.each([
  [0.7, 8, 330, 640],
  [0.6, 6, 400, 900],
])(
  "a glen check held a little turned is a check, and sure: threads of %f mm",
  (threadMm, fours, widthMm, widthPx) => {
    const found = measured(turned(glen(threadMm, fours, 18), 2), widthMm, widthPx, 0.9, 0);
    expect(found.pattern.kind).toBe("check");
    expect(asked(found)).not.toContain("pattern.kind");
    const lengthMm = threadMm * (8 * fours + 4 * 18 + 4);
    expect(Math.abs((found.pattern.repeat?.verticalMm ?? 0) / lengthMm - 1)).toBeLessThan(0.01);
  },
);

test("a Greek key runs in even bands from afar, and is a geometric: its lines are no threads", () => {
  const KEY = [
    "#######.",
    "#.....#.",
    "#.###.#.",
    "#.#.#.#.",
    "#.#...#.",
    "#.#####.",
    "#.......",
    "########",
  ];
  const key: Design = (x, y) =>
    KEY[Math.floor(mod(y, 56) / 7)]?.[Math.floor(mod(x, 56) / 7)] === "#" ? "#3c5a73" : "#f4f0e6";
  expect(measured(key, 300, 640).pattern.kind).toBe("geometric");
});

// Half of each square, cut corner to corner: its edges lean, and its bands are even, but from afar they run slantwise still.
const SAILS: Design = (x, y) => (mod(x, 40) < mod(y, 40) ? "#3a7a70" : "#cfc4e6");

test.each([
  ["sails", SAILS],
  ["a harlequin", HARLEQUIN],
  ["pinwheels", PINWHEEL],
])("%s are no houndstooth", (_, design) => {
  expect(measured(design, 220, 640).pattern.kind).toBe("geometric");
});

test("edges lean in a houndstooth, and not where a mirror or a quarter turn brings the pattern onto itself", () => {
  const slant = (design: Design, cellPx = 64) =>
    slantOf(fieldOf(photograph(design, { widthMm: 120, heightMm: 120, widthPx: 480 })), cellPx);
  expect(Math.abs(slant(houndstooth(2, "#24252b", "#f0ead8")))).toBeGreaterThan(0.2);
  expect(Math.abs(slant(HARLEQUIN))).toBeLessThan(0.02);
  expect(Math.abs(slant(PINWHEEL))).toBeLessThan(0.02);
  // Lines that run one way have all of it: their gradient is (1, 1) everywhere.
  const lines: Design = (x, y) => (mod(x + y, 20) < 10 ? "#24252b" : "#f0ead8");
  expect(Math.abs(slant(lines))).toBeGreaterThan(0.9);
});

test("no check is sure by a repeat that may be chance, or just over a limit", () => {
  const signs: KindSigns = {
    ...{ colours: 2, contrast: 0.7, surface: { all: 0.1, texture: 0.08, coarse: 0.08 } },
    ...{ widestMm: 20, alongRun: null, onBias: null, groundShare: 0.5, cellMm: 60 },
    ...{
      forGeometric: 3,
      mirrored: 0.5,
      motifMm: 30,
      freeMm: [20, 30],
      motifsPerCell: 2,
      slant: 0,
      sumFromAfar: 0,
      changes: 0,
    },
    crossing: { sum: 0.94, product: 0.02, balance: 0.5 },
    agreement: 0.95,
    repeatSure: true,
  };
  const judged = (more: Partial<KindSigns>) => kindOf({ ...signs, ...more }, USUAL_LIMITS);
  expect(judged({})).toEqual({ kind: "check", sure: true });
  expect(judged({ repeatSure: false, agreement: 0.32 })).toEqual({ kind: "check", sure: false });
  const squares = (product: number) => judged({ crossing: { sum: 0.06, product, balance: 0.8 } });
  expect(squares(0.95)).toEqual({ kind: "check", sure: true });
  expect(squares(0.83)).toEqual({ kind: "check", sure: false });
});
