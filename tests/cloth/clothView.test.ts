// A bank card on the cloth: size by ISO/IEC 7810 (ID-1, 85.60 x 53.98 mm). The camera of these tests is a pinhole, made here.
import fc from "fast-check";
import { expect, test } from "vitest";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import type { Pixels } from "../../src/cloth/pixels/pixels.ts";
import { cardPlane } from "../../src/cloth/reading/bankCard.ts";
import { clothView } from "../../src/cloth/reading/clothView.ts";
import { homographyOf, mapPoint, type Point } from "../../src/cloth/reading/homography.ts";
import { rgbOfHex } from "../../src/colour/hex.ts";
import { channelOfLinear, linearOfChannel } from "../../src/colour/linear.ts";
import { type Design, discs, photograph, plain } from "./made.ts";

const PLACE = { file: "fern.jpg", line: null, column: null, keyPath: null };
const CARD = [85.6, 53.98] as const;
const CREAM = "#efe3c8";
const INK = "#3b4a52";

interface Camera {
  readonly tiltDeg: number;
  readonly panDeg: number;
  readonly rollDeg: number;
  /** From the lens to the cloth along the axis, in millimetres. */
  readonly far: number;
}
const [W, H, FOCAL] = [1000, 750, 1000];

/** Where a place of the cloth (millimetres from the middle of the view, y down) falls in the picture. */
function seen({ tiltDeg, panDeg, rollDeg, far }: Camera, [x, y]: Point): Point {
  const rad = (degrees: number) => (degrees * Math.PI) / 180;
  const [cr, sr] = [Math.cos(rad(rollDeg)), Math.sin(rad(rollDeg))];
  const [x1, y1] = [x * cr - y * sr, x * sr + y * cr];
  const [ct, st] = [Math.cos(rad(tiltDeg)), Math.sin(rad(tiltDeg))];
  const [y2, z2] = [y1 * ct, y1 * st];
  const [cp, sp] = [Math.cos(rad(panDeg)), Math.sin(rad(panDeg))];
  const [x3, z3] = [x1 * cp + z2 * sp, -x1 * sp + z2 * cp];
  return [W / 2 + (FOCAL * x3) / (far + z3), H / 2 + (FOCAL * y2) / (far + z3)];
}

/** The four corners of a card whose top left corner lies at a place of the cloth, turned by some degrees. */
function cardAt([left, top]: Point, turnDeg: number): Point[] {
  const [c, s] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  return [
    [0, 0],
    [CARD[0], 0],
    [CARD[0], CARD[1]],
    [0, CARD[1]],
  ].map(([x = 0, y = 0]): Point => [left + x * c - y * s, top + x * s + y * c]);
}

/** The picture of a cloth with a card on it. */
function shoot(camera: Camera, design: Design, card: readonly Point[]): Pixels {
  // From pixels back to the cloth, by four of the camera's own points.
  const frame: Point[] = [
    [-100, -100],
    [100, -100],
    [100, 100],
    [-100, 100],
  ];
  const back = homographyOf(
    frame.map((p) => seen(camera, p)),
    frame,
  );
  if (!back) throw new Error();
  const inCard = ([x, y]: Point) =>
    card.every(([ax, ay], i) => {
      const [bx, by] = card[(i + 1) % 4] as Point;
      return (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= 0;
    });
  const data = new Uint8Array(W * H * 3);
  for (let y = 0, i = 0; y < H; y++) {
    for (let x = 0; x < W; x++, i += 3) {
      const light = [0, 0, 0];
      for (const [u, v] of [
        [0.25, 0.25],
        [0.75, 0.25],
        [0.25, 0.75],
        [0.75, 0.75],
      ] as const) {
        const at = mapPoint(back, [x + u, y + v]) as Point;
        const rgb = rgbOfHex(inCard(at) ? "#204080" : design(at[0] + 2000, at[1] + 2000));
        rgb.forEach((value, c) => {
          light[c] = (light[c] as number) + linearOfChannel(value) / 4;
        });
      }
      light.forEach((value, c) => {
        data[i + c] = Math.round(channelOfLinear(value));
      });
    }
  }
  return { width: W, height: H, data };
}

const cameras: [string, Camera, number, Point][] = [
  ["from straight above", { tiltDeg: 0, panDeg: 0, rollDeg: 0, far: 300 }, 0, [-115, -88]],
  ["tilted by 20 degrees", { tiltDeg: 20, panDeg: 0, rollDeg: 0, far: 320 }, 12, [-115, -88]],
  [
    "tilted, panned and a little turned",
    { tiltDeg: -15, panDeg: 12, rollDeg: 2, far: 310 },
    -35,
    [-110, -35],
  ],
];

test.each(cameras)(
  "card and cloth seen %s: the repeat within one per cent",
  (_, camera, turn, at) => {
    const card = cardAt(at, turn);
    const corners = card.map((p) => seen(camera, p));
    const pixels = shoot(camera, discs(CREAM, INK, { across: 24, up: 31, diameter: 13 }), card);
    // In any order, as anybody may give them.
    const shuffled = [corners[2], corners[0], corners[3], corners[1]] as Point[];
    const { value, diagnostics } = measureCloth(pixels, null, { corners: shuffled, place: PLACE });
    expect(diagnostics).toEqual([]);
    const repeat = value?.pattern.repeat;
    expect(repeat).toMatchObject({ match: "straight", sure: true });
    expect(Math.abs((repeat?.horizontalMm ?? 0) / 24 - 1)).toBeLessThan(0.01);
    expect(Math.abs((repeat?.verticalMm ?? 0) / 31 - 1)).toBeLessThan(0.01);
    // The card itself is no colour of the cloth.
    expect(value?.colours).toHaveLength(2);
    // What the whole photograph shows along its middle, from the camera itself.
    const frame: Point[] = [
      [-100, -100],
      [100, -100],
      [100, 100],
      [-100, 100],
    ];
    const back = homographyOf(
      frame.map((p) => seen(camera, p)),
      frame,
    );
    if (!back) throw new Error();
    const [l, r] = [mapPoint(back, [0, H / 2]), mapPoint(back, [W, H / 2])] as [Point, Point];
    expect(value?.showsMm).toBeCloseTo(Math.hypot(r[0] - l[0], r[1] - l[1]), 1);
  },
);

test("corners that are a pixel off move the scale by a per cent or so, not more", () => {
  const camera = cameras[1]?.[1] as Camera;
  const corners = cardAt([-40, -30], 10).map((p) => seen(camera, p));
  const exact = cardPlane(corners, W, H);
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 8, maxLength: 8 }),
      (off) => {
        const moved = corners.map(
          ([x, y], i): Point => [x + (off[2 * i] as number), y + (off[2 * i + 1] as number)],
        );
        const found = cardPlane(moved, W, H);
        if (!("plane" in exact) || !("plane" in found)) throw new Error();
        expect(Math.abs(found.plane.acrossMm / exact.plane.acrossMm - 1)).toBeLessThan(0.03);
      },
    ),
    { numRuns: process.env.SOAK ? 5000 : 100 },
  );
});

test("a homography takes four places to four others and comes back", () => {
  const side = fc.double({ min: -40, max: 40, noNaN: true });
  fc.assert(
    fc.property(fc.array(side, { minLength: 8, maxLength: 8 }), (off) => {
      const from: Point[] = [
        [0, 0],
        [300, 0],
        [300, 200],
        [0, 200],
      ];
      const to = from.map(
        ([x, y], i): Point => [x + (off[2 * i] as number), y + (off[2 * i + 1] as number)],
      );
      const [there, back] = [homographyOf(from, to), homographyOf(to, from)];
      if (!there || !back) throw new Error();
      for (const p of [...from, [120, 70] as Point]) {
        const again = mapPoint(back, mapPoint(there, p) as Point) as Point;
        expect(again[0]).toBeCloseTo(p[0], 6);
        expect(again[1]).toBeCloseTo(p[1], 6);
      }
    }),
    { numRuns: process.env.SOAK ? 5000 : 200 },
  );
});

const cloth = photograph(discs(CREAM, INK, { across: 30, up: 40, diameter: 14 }), {
  widthMm: 300,
  heightMm: 225,
  widthPx: 400,
});
const refused: [string, Parameters<typeof clothView>[1], object, RegExp][] = [
  [
    "corners-outside",
    null,
    {
      corners: [
        [10, 10],
        [500, 10],
        [90, 60],
        [10, 60],
      ],
    },
    /outside/,
  ],
  [
    "corners-crossed",
    null,
    {
      corners: [
        [10, 10],
        [10, 10],
        [90, 60],
        [10, 60],
      ],
    },
    /outline of a card/,
  ],
  [
    "corners-crossed",
    null,
    {
      corners: [
        [10, 10],
        [90, 10],
        [50, 20],
        [50, 90],
      ],
    },
    /outline of a card/,
  ],
  [
    "corners-small",
    null,
    {
      corners: [
        [10, 10],
        [30, 10],
        [30, 22],
        [10, 22],
      ],
    },
    /too small/,
  ],
  [
    "corners-steep",
    null,
    {
      corners: [
        [150, 100],
        [250, 100],
        [390, 200],
        [10, 200],
      ],
    },
    /too low/,
  ],
  ["crop-outside", 300, { crop: { x: 300, y: 0, width: 200, height: 20 } }, /not inside/],
  ["cloth-too-little", 300, { crop: { x: 0, y: 0, width: 20, height: 200 } }, /Too little/],
  ["shows-too-little", 0, {}, /no cloth at all/],
  ["shows-too-little", 4, {}, /only 4.0 mm/],
  ["shows-too-much", 1_000_000, {}, /1000 m of cloth/],
];
test.each(refused)("%s", (code, shows, options, message) => {
  const { value, diagnostics } = measureCloth(cloth, shows, { ...options, place: PLACE });
  expect(value).toBeNull();
  expect(diagnostics).toHaveLength(1);
  expect(diagnostics[0]).toMatchObject({ ...PLACE, code, severity: "error" });
  expect(diagnostics[0]?.message).toMatch(message);
  expect(diagnostics[0]?.hint).toBeTruthy();
});

test("a crop leaves the scale as it is and the rest unseen", () => {
  const whole = photograph(
    (x, y) => (x < 150 ? discs(CREAM, INK, { across: 20, up: 20, diameter: 9 })(x, y) : "#aa2020"),
    {
      widthMm: 300,
      heightMm: 225,
      widthPx: 600,
    },
  );
  const crop = { x: 0, y: 0, width: 290, height: 450 };
  const { value } = measureCloth(whole, 300, { crop, place: PLACE });
  expect(value?.showsMm).toBe(300);
  expect(value?.colours).toHaveLength(2);
  expect(Math.abs((value?.pattern.repeat?.horizontalMm ?? 0) / 20 - 1)).toBeLessThan(0.01);
});

test("card and said length that differ are both named, and the card counts", () => {
  const camera = cameras[0]?.[1] as Camera;
  const card = cardAt([-115, -88], 0);
  const pixels = shoot(camera, plain(CREAM), card);
  const corners = card.map((p) => seen(camera, p));
  const { value } = clothView(pixels, 200, { corners, place: PLACE });
  expect(value?.showsMm).toBeCloseTo(300, 0);
  expect(value?.confirm[0]?.why).toMatch(/300 mm across its middle, not 200 mm/);
  expect(clothView(pixels, 297, { corners, place: PLACE }).value?.confirm).toEqual([]);
});
