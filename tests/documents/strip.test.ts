import fc from "fast-check";
import { expect, test } from "vitest";
import { spreadLabels } from "../../src/documents/board/spreadLabels.ts";
import { shareStrip, stripLeaders } from "../../src/documents/board/strip.ts";
import type { RoomScheme } from "../../src/scheme/roomScheme.ts";

const scheme = (parts: readonly number[]): RoomScheme =>
  ({
    shares: parts.map((hundredths, at) => ({
      hex: "#888888",
      name: at % 3 === 1 ? `moderate yellowish brown ${at}` : `c${at}`,
      hundredths,
      areaMm2: hundredths,
      palette: null,
    })),
  }) as unknown as RoomScheme;

const hundreds = fc
  .array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 8 })
  .map((raw) => {
    const sum = raw.reduce((a, b) => a + b, 0);
    const parts = raw.map((n) => Math.max(1, Math.floor((n / sum) * 100)));
    parts[0] = (parts[0] as number) + 100 - parts.reduce((a, b) => a + b, 0);
    return parts.sort((a, b) => b - a);
  });

test("every part of the strip has its true height, and labels never overlap or leave the page", () => {
  fc.assert(
    fc.property(hundreds, (parts) => {
      const strip = shareStrip(scheme(parts), 279.4, 27, 260);
      const last = strip.at(-1);
      expect((last?.y ?? 0) + (last?.height ?? 0)).toBeCloseTo(279.4, 6);
      for (const [at, part] of strip.entries()) {
        expect(part.height).toBeCloseTo((279.4 * part.hundredths) / 100, 6);
        expect(part.labelY).toBeLessThanOrEqual(260 - 5);
        // A hair line joins a label to a part that it does not stand beside, and only then.
        const beside = part.labelY + 2 >= part.y && part.labelY + 2 <= part.y + part.height;
        expect(part.led).toBe(!beside);
        const next = strip[at + 1];
        if (next)
          expect(next.labelY - part.labelY).toBeGreaterThanOrEqual(
            (part.oneLine ? 4.4 : part.name.length > 15 ? 9 : 5) - 1e-6,
          );
      }
    }),
    { numRuns: 200, seed: 20261125 },
  );
});

test("the largest part stands at the head and the next one at the foot, with the others by size between them", () => {
  const strip = shareStrip(scheme([43, 30, 19, 3, 2, 1, 1, 1]), 279.4, 27, 269.4);
  expect(strip.map((p) => p.hundredths)).toEqual([43, 19, 3, 2, 1, 1, 1, 30]);
  // Five low parts between two high ones: no name is further from its part than two of its own lines.
  for (const p of strip) {
    const line = p.labelY + 2;
    expect(Math.max(p.y - line, line - p.y - p.height)).toBeLessThan(8);
  }
});

/** The path of a leader as points. */
const pointsOf = (d: string): [number, number][] => {
  const m = d.match(/^M([\d.]+) ([\d.]+)H([\d.]+)L([\d.]+) ([\d.]+)H([\d.]+)$/);
  const [x0, y0, x1, x2, y1, x3] = (m ?? []).slice(1).map(Number) as number[];
  return [
    [x0, y0],
    [x1, y0],
    [x2, y1],
    [x3, y1],
  ] as [number, number][];
};

test("leaders end at their labels' lines, keep the order of the parts and never cross", () => {
  fc.assert(
    fc.property(hundreds, (parts) => {
      const strip = shareStrip(scheme(parts), 279.4, 27, 269.4);
      const led = strip.filter((p) => p.led);
      const lines = stripLeaders(strip, 298, 300.5).map(pointsOf);
      expect(lines).toHaveLength(led.length);
      for (const [at, line] of lines.entries()) {
        const part = led[at] as (typeof led)[number];
        expect(line[0]?.[1]).toBeCloseTo(part.y + part.height / 2, 1);
        expect(Math.abs((line[3]?.[1] ?? 0) - part.labelY - 2)).toBeLessThan(0.2);
        // All bend at the same two places, so that lines in order at each of them never meet.
        if (led[at + 1]?.oneLine === part.oneLine)
          for (const [n, point] of (lines[at + 1] ?? []).entries())
            expect(point[1]).toBeGreaterThan(line[n]?.[1] ?? 0);
      }
    }),
    { numRuns: 200, seed: 20261125 },
  );
});

test("labels move as little as their order and heights allow", () => {
  // Three labels of height 5 that all want the same place: the middle one has it.
  expect(spreadLabels([50, 50, 50], [5, 5, 5], 0, 100)).toEqual([45, 50, 55]);
  expect(spreadLabels([10, 30], [5, 5], 0, 100)).toEqual([10, 30]);
  expect(spreadLabels([98, 99], [5, 5], 0, 100)).toEqual([90, 95]);
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { minLength: 1, maxLength: 9 }),
      fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 9, maxLength: 9 }),
      (raw, nudges) => {
        const wanted = [...raw].sort((a, b) => a - b);
        const heights = wanted.map((_, at) => 4 + (at % 3) * 4);
        const placed = spreadLabels(wanted, heights, 0, 220);
        const cost = (all: readonly number[]): number =>
          all.reduce((sum, y, at) => sum + (y - (wanted[at] as number)) ** 2, 0);
        // No lawful arrangement near it costs less.
        const other = placed.map((y, at) => y + (nudges[at] as number));
        const lawful = other.every(
          (y, at) =>
            y >= 0 &&
            y + (heights[at] as number) <= 220 &&
            (at === 0 || y >= (other[at - 1] as number) + (heights[at - 1] as number)),
        );
        if (lawful) expect(cost(other)).toBeGreaterThanOrEqual(cost(placed) - 1e-6);
        for (let at = 1; at < placed.length; at++)
          expect((placed[at] as number) - (placed[at - 1] as number)).toBeGreaterThanOrEqual(
            (heights[at - 1] as number) - 1e-9,
          );
      },
    ),
    { numRuns: 500, seed: 20261125 },
  );
});

test("where one colour is nearly all, the others' names run on one line each, near their parts", () => {
  for (const parts of [
    [89, 4, 2, 1, 1, 1, 1, 1],
    [91, 4, 1, 1, 1, 1, 1],
  ]) {
    const strip = shareStrip(scheme(parts), 297, 27, 287);
    expect(strip.filter((p) => p.oneLine)).toHaveLength(parts.length - 1);
    for (const p of strip) {
      const line = p.labelY + 2;
      expect(Math.max(p.y - line, line - p.y - p.height)).toBeLessThan(12);
    }
  }
  expect(
    shareStrip(scheme([43, 30, 19, 3, 2, 1, 1, 1]), 279.4, 27, 269.4).some((p) => p.oneLine),
  ).toBe(false);
});
