// Whether a cloth is the same upside down, and which way its motifs point.
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { ClothMeasure } from "../../src/cloth/clothMeasure.ts";
import { cellTurned } from "../../src/cloth/kind/cellTurned.ts";
import { CELL_SIDE, type MeanCell } from "../../src/cloth/kind/meanCell.ts";
import { runsOf, runsOfBands } from "../../src/cloth/kind/runsOf.ts";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { readPhoto } from "../../src/images/photo/readPhoto.ts";
import { type Design, photograph, seeded } from "./made.ts";

const PLACE = { file: "card.md", line: 1, column: 1, keyPath: null };

describe("cells made with the operations of a plane group", () => {
  // International Tables for Crystallography, volume A, part 6 (the plane groups' general positions; from memory). Which of them are
  // polar, and along what, follows from their operations: a half turn leaves no direction, a mirror or glide alone leaves its own axis.
  type Operation = (x: number, y: number) => readonly [number, number];
  const same: Operation = (x, y) => [x, y];
  const half: Operation = (x, y) => [-x, -y];
  const mirror: Operation = (x, y) => [-x, y];
  const glide: Operation = (x, y) => [-x, y + 0.5];
  const over: Operation = (x, y) => [x, -y];
  const quarter: Operation = (x, y) => [-y, x];
  const threeQuarters: Operation = (x, y) => [y, -x];
  const GROUPS: readonly [string, readonly Operation[], string | null][] = [
    ["p1", [same], null],
    ["p2", [same, half], "two-way"],
    ["pm", [same, mirror], "one-way"],
    ["pg", [same, glide], "one-way"],
    ["p2mm", [same, half, mirror, over], "two-way"],
    ["p2gg", [same, half, (x, y) => [-x + 0.5, y + 0.5], (x, y) => [x + 0.5, -y + 0.5]], "two-way"],
    ["p4", [same, half, quarter, threeQuarters], "two-way"],
  ];
  const SQUARE = [
    [CELL_SIDE, 0],
    [0, CELL_SIDE],
  ] as const;

  /** Soft random spots, laid down by each operation. */
  function cell(operations: readonly Operation[], seed: number): MeanCell {
    const random = seeded(seed);
    const channel = () => {
      const values = new Float32Array(CELL_SIDE * CELL_SIDE);
      for (let spot = 0; spot < 12; spot++) {
        const [sx, sy, height] = [random(), random(), random() - 0.5];
        const wide = 0.03 + 0.06 * random();
        for (const operation of operations) {
          const [cx, cy] = operation(sx, sy);
          for (let v = 0, k = 0; v < CELL_SIDE; v++)
            for (let u = 0; u < CELL_SIDE; u++, k++) {
              const off = (p: number, q: number) => p - q - Math.round(p - q);
              const d = Math.hypot(off((u + 0.5) / CELL_SIDE, cx), off((v + 0.5) / CELL_SIDE, cy));
              values[k] = (values[k] as number) + height * Math.exp(-((d / wide) ** 2));
            }
        }
      }
      const mean = values.reduce((sum, v) => sum + v, 0) / values.length;
      return values.map((v) => v - mean);
    };
    return { channels: [channel(), channel(), channel()], agreement: 1, cells: 4 };
  }

  test.each(GROUPS)("%s", (_, operations, expected) => {
    for (const seed of [1, 2, 3]) {
      const turned = cellTurned(cell(operations, seed), SQUARE);
      expect(runsOf(turned, 1).runs).toBe(expected);
      expect(turned.half > 0.99).toBe(expected === "two-way");
    }
  });

  test("what grain takes from the likeness of few cells is given back", () => {
    const { channels } = cell([same, half], 4);
    const random = seeded(9);
    const spread = Math.sqrt(channels[0].reduce((sum, v) => sum + v * v, 0) / channels[0].length);
    // As much independent grain as pattern in the mean of four cells: each of them has four times as much, one part in five is the cell's own.
    const grained = channels.map((channel) =>
      channel.map((v) => v + spread * Math.sqrt(12) * (random() - 0.5)),
    ) as unknown as MeanCell["channels"];
    const one = { channels: grained, agreement: 0.2, cells: 4 };
    expect(cellTurned({ ...one, agreement: 1 }, SQUARE).half).toBeLessThan(0.9);
    expect(cellTurned(one, SQUARE).half).toBeGreaterThan(0.95);
  });

  test("cells that agree little say nothing", () => {
    expect(runsOf({ half: 1, mirrored: 1 }, 0.4).runs).toBeNull();
  });
});

describe("sequences of bands", () => {
  const sequence = (...widths: readonly [string, number][]) => [
    { directionDeg: 90, bands: widths.map(([hex, widthMm]) => ({ hex, widthMm })) },
  ];
  test("the same backwards", () => {
    const even = sequence(["a", 20], ["b", 4], ["c", 9], ["b", 4]);
    expect(runsOfBands(even)).toEqual({ runs: "two-way", isOther: false });
    expect(runsOfBands(sequence(["a", 20], ["b", 4]))).toEqual({ runs: "two-way", isOther: false });
  });
  test("another backwards, in its colours or in its widths", () => {
    const colours = sequence(["a", 20], ["b", 4], ["c", 9]);
    expect(runsOfBands(colours)).toEqual({ runs: "one-way", isOther: true });
    const widths = sequence(["a", 20], ["b", 4], ["a", 6], ["b", 9], ["a", 11], ["b", 4]);
    expect(runsOfBands(widths)).toEqual({ runs: "one-way", isOther: true });
  });
});

function measured(design: Design): ClothMeasure {
  const shot = { widthMm: 220, heightMm: 180, widthPx: 640, noise: 4, falloff: 0.85 };
  const { value } = measureCloth(photograph(design, shot), 220, { place: PLACE });
  if (!value) throw new Error("not measured");
  return value;
}

/** A motif in each cell, every other column half a cell lower; it is given places from the cell's middle. */
const halfDrop =
  (motif: (x: number, y: number) => string | null): Design =>
  (x, y) => {
    const column = Math.floor(x / 50);
    const v = y + (column % 2) * 35;
    return motif(x - column * 50 - 25, v - Math.floor(v / 70) * 70 - 35) ?? "#eee4cd";
  };

const tree = halfDrop((x, y) => {
  if (y > -26 && y < 8 && Math.abs(x) < (y + 26) * 0.5) return "#335444";
  return y >= 8 && y < 28 && Math.abs(x) < 3 ? "#8f4b37" : null;
});

test("a tree that is its own mirror image has a top", () => {
  const { pattern, confirm } = measured(tree);
  expect(pattern.runs).toBe("one-way");
  expect(confirm.map(({ what }) => what)).not.toContain("pattern.runs");
});

test("photographed upside down it has one too", () => {
  expect(measured((x, y) => tree(220 - x, 180 - y)).pattern.runs).toBe("one-way");
});

test("a lozenge is the same upside down", () => {
  const lozenge = halfDrop((x, y) =>
    Math.abs(x) / 18 + Math.abs(y) / 28 < 1 ? (Math.abs(x) < 5 ? "#8f4b37" : "#335444") : null,
  );
  expect(measured(lozenge).pattern.runs).toBe("two-way");
});

test("of a motif without any mirror she is asked", () => {
  const flag = halfDrop((x, y) => {
    if (x > -14 && x < -8 && Math.abs(y) < 26) return "#8f4b37";
    return x >= -8 && x < 16 && y > -26 && y < -2 - x * 0.4 ? "#335444" : null;
  });
  const { pattern, confirm } = measured(flag);
  expect(pattern.runs).toBeNull();
  expect(confirm.map(({ what }) => what)).toContain("pattern.runs");
});

test("of a plain nothing is said", () => {
  const { pattern, confirm } = measured(() => "#aaa295");
  expect(pattern.runs).toBeNull();
  expect(confirm.map(({ what }) => what)).not.toContain("pattern.runs");
});

// The demo's cloths, by how they were drawn: a frond on either side of a stem, and a sett that is the same backwards.
test.each([
  ["vestry", 15, "one-way"],
  ["hayrick", 9, "two-way"],
] as const)("the demo's %s", async (name, inches, runs) => {
  const file = join(import.meta.dirname, `../../content/cloths/${name}.jpg`);
  const { value: photo } = await readPhoto(file, { place: PLACE });
  const found = photo && measureCloth(photo.pixels, inches * 25.4, { place: PLACE }).value;
  expect(found?.pattern.runs).toBe(runs);
});
