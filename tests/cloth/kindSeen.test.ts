// Kinds told by signs that a decorator would name: each class is drawn here, photographed and measured.
import { expect, test } from "vitest";
import { kindOf } from "../../src/cloth/kind/kindOf.ts";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { USUAL_LIMITS } from "../../src/cloth/motif/printSize.ts";
import { hexOfRgb, rgbOfHex } from "../../src/colour/hex.ts";
import { channelOfLinear, linearOfChannel } from "../../src/colour/linear.ts";
import { type Design, photograph, seeded } from "./made.ts";

const mod = (a: number, n: number) => ((a % n) + n) % n;

function kindSeen(design: Design, widthMm: number, seed = 1) {
  const shot = { widthMm, heightMm: 0.75 * widthMm, widthPx: 640, noise: 2, blurPx: 0, seed };
  const place = { file: "card.md", line: 1, column: 1, keyPath: null };
  const { value } = measureCloth(photograph(design, shot), widthMm, { place });
  if (!value) throw new Error("nothing measured");
  return {
    kind: value.pattern.kind,
    sure: !value.confirm.some(({ what }) => what === "pattern.kind"),
  };
}

/** Half the light of each of two yarns, as a close weave sends it back. */
const woven = new Map<string, string>();
function wovenOf(warp: string, weft: string): string {
  const known = woven.get(warp + weft);
  if (known) return known;
  const [one, other] = [rgbOfHex(warp), rgbOfHex(weft)];
  const [r, g, b] = one.map((v, c) =>
    Math.round(channelOfLinear((linearOfChannel(v) + linearOfChannel(other[c] as number)) / 2)),
  ) as [number, number, number];
  const hex = hexOfRgb([r, g, b]);
  woven.set(warp + weft, hex);
  return hex;
}

/** A design turned by 45 degrees. */
const onBias =
  (design: Design): Design =>
  (x, y) =>
    design((x + y) * Math.SQRT1_2, (y - x) * Math.SQRT1_2);

test("a plaid cut on the bias is a check, a trellis that lies so is a geometric", () => {
  const bands: [string, number][] = [
    ["#d8c7a6", 30],
    ["#7e3f35", 16],
    ["#d8c7a6", 6],
    ["#40566b", 5],
  ];
  const at = (place: number) => {
    let left = mod(place, 57);
    for (const [hex, mm] of bands) {
      if (left < mm) return hex;
      left -= mm;
    }
    return "#d8c7a6";
  };
  expect(
    kindSeen(
      onBias((x, y) => wovenOf(at(x), at(y))),
      230,
    ).kind,
  ).toBe("check");
  const bars = (place: number) => mod(place, 40) < 3;
  const lines = (place: number) => mod(place, 40) < 5;
  const trellis = onBias((x, y) => {
    if (bars(x) || bars(y)) return "#8d7440";
    return lines(x) || lines(y) ? "#c9b98f" : "#2f4438";
  });
  expect(kindSeen(trellis, 230).kind).toBe("geometric");
});

test("spots that are seen from afar are no chequer", () => {
  const spots: Design = (x, y) => {
    const column = Math.round(x / 16);
    const down = mod(y - (mod(column, 2) === 1 ? 16 : 0) + 16, 32) - 16;
    return Math.hypot(x - 16 * column, down) < 5 ? "#f2eee2" : "#31486b";
  };
  expect(kindSeen(spots, 840).kind).not.toBe("check");
  const chequer: Design = (x, y) =>
    mod(Math.floor(x / 16) + Math.floor(y / 16), 2) === 0 ? "#f2eee2" : "#31486b";
  expect(kindSeen(chequer, 840).kind).toBe("check");
});

test("a linen whose yarns are uneven is no sure plain, though neither its grain nor its streaks tell alone", () => {
  const random = seeded(3);
  const uneven = Array.from({ length: 4096 }, () => random());
  const yarn = (line: number, along: number) => {
    const from = Math.floor(along);
    const of = (n: number) => uneven[(((line * 57 + n) % 4096) + 4096) % 4096] as number;
    return of(from) + (along - from) * (of(from + 1) - of(from));
  };
  const linen =
    (depth: number): Design =>
    (x, y) => {
      const sum = yarn(Math.floor(x / 0.9), y / 30) + yarn(2000 + Math.floor(y / 0.9), x / 26);
      const light = 1 + depth * (sum - 1);
      const [r, g, b] = [201, 189, 164].map((v) => Math.round(v * light)) as [
        number,
        number,
        number,
      ];
      return hexOfRgb([r, g, b]);
    };
  expect(kindSeen(linen(0), 240)).toEqual({ kind: "plain", sure: true });
  expect(kindSeen(linen(0.045), 240)).toEqual({ kind: "plain", sure: false });
  expect(kindSeen(linen(0.12), 240).kind).toBe("textured-plain");
});

test("flowers in rows between bands are no sure geometric; strokes that lie one way are no sure stripe", () => {
  const flowered: Design = (x, y) => {
    const across = mod(x + 4, 30);
    if (across < 8) return "#8ba6b5";
    const [u, v] = [across - 19, mod(y, 90)];
    const [r, turn] = [Math.hypot(u, v - 22), Math.atan2(v - 22, u)];
    if (r < 2) return "#e6cf7a";
    if (r < 5.5 + 2.5 * Math.cos(5 * turn)) return "#c0606f";
    return (u / 3.5) ** 2 + ((v - 60) / 8) ** 2 < 1 ? "#6d8b57" : "#f4efe3";
  };
  const { kind, sure } = kindSeen(flowered, 210);
  expect(kind !== "geometric" || !sure).toBe(true);
  const signs = {
    ...{ colours: 4, contrast: 0.7, surface: { all: 0.1, texture: 0.08, coarse: 0.08 } },
    ...{ widestMm: 20, crossing: { sum: 0.5, product: 0.1, balance: 0.3 }, onBias: null },
    ...{
      groundShare: 0.5,
      cellMm: null,
      agreement: 0,
      forGeometric: 0,
      mirrored: 0,
      motifMm: 30,
      freeMm: [],
    },
    ...{ repeatSure: false, slant: 0, sumFromAfar: 0 },
    changes: 0,
  };
  const along = (alongRun: number) =>
    kindOf({ ...signs, motifsPerCell: 0, alongRun }, USUAL_LIMITS);
  expect(along(0.9)).toEqual({ kind: "stripe", sure: true });
  expect(along(0.25)).toEqual({ kind: "stripe", sure: false });
});

test("what comes again only by chance, and what is nearly a check, are no sure kind", () => {
  const surface = { all: 0.1, texture: 0.08, coarse: 0.08 };
  const of = (agreement: number, sum: number) =>
    kindOf(
      {
        ...{ colours: 2, contrast: 0.7, surface, widestMm: 20, alongRun: null, onBias: null },
        ...{ crossing: { sum, product: 0.05, balance: 0.8 }, groundShare: 0.5, cellMm: 60 },
        ...{
          agreement,
          forGeometric: 3,
          mirrored: 0.5,
          motifMm: 30,
          freeMm: [20, 30],
          motifsPerCell: 2,
        },
        ...{ repeatSure: true, slant: 0, sumFromAfar: 0 },
        changes: 0,
      },
      USUAL_LIMITS,
    );
  expect(of(0.95, 0.3)).toEqual({ kind: "geometric", sure: true });
  // The stripes of a zebra agree with themselves a little wherever they run alike.
  expect(of(0.42, 0.3)).toEqual({ kind: "geometric", sure: false });
  // A glen check of which hardly more than one repeat is seen.
  expect(of(0.95, 0.87)).toEqual({ kind: "geometric", sure: false });
});
