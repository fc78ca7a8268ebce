import fc from "fast-check";
import { expect, test } from "vitest";
import { ovalArea, ovalGirth, ovalOutline } from "../../src/items/common/flat/oval.ts";
import { Length } from "../../src/units/length.ts";
import { figure, tablecloth, tableSkirt } from "./bedTableMade.ts";

test("round an ellipse twice as long as wide: 4 E(0.75) times its half length (Abramowitz and Stegun, table 17.1: E = 1.21105603; from memory)", () => {
  const girth = ovalGirth([Length.cm(200), Length.cm(100)], Length.zero).toMm();
  expect(girth / (4 * 1000 * 1.21105603)).toBeCloseTo(1, 5);
});

// Geometry, no outside source: the outline as a polygon of very many corners, its length and area counted (shoelace).
test("the hem's curve: way round and area agree with the drawn outline, and it lies everywhere as far from the table", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 40, max: 300 }),
      fc.integer({ min: 40, max: 300 }),
      fc.integer({ min: 0, max: 80 }),
      (w, d, drop) => {
        const size = [Length.cm(w), Length.cm(d)] as const;
        const [a, b, out] = [w * 5, d * 5, drop * 10];
        const path = ovalOutline(0, 0, { a, b }, out, 20_000);
        const points = [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map((m): [number, number] => [
          Number(m[1]),
          Number(m[2]),
        ]);
        expect(points).toHaveLength(20_000);
        let [round, area] = [0, 0];
        for (const [at, [x, y]] of points.entries()) {
          const [nx, ny] = points[(at + 1) % points.length] as [number, number];
          round += Math.hypot(nx - x, ny - y);
          area += (x * ny - nx * y) / 2;
        }
        expect(ovalGirth(size, Length.cm(drop)).toMm() / round).toBeCloseTo(1, 3);
        expect(ovalArea(size, Length.cm(drop)) / Math.abs(area)).toBeCloseTo(1, 4);
        // An ellipse of the outer size runs inside it: cut so, the cloth would hang short at the shoulders.
        for (const [x, y] of points.filter((_, at) => at % 500 === 0))
          expect((x / (a + out)) ** 2 + (y / (b + out)) ** 2).toBeGreaterThan(1 - 1e-4);
      },
    ),
    { numRuns: 30 },
  );
});

test("an oval tablecloth: cut from table and two drops each way, trimmed round its hem, its corners not counted", () => {
  const raw = { table: '72" x 44" x 29"', drop: '10"' };
  const made = tablecloth({ ...raw, form: "oval", trim: "print" }, { allowances: { hem: '1"' } });
  expect(made.diagnostics).toEqual([]);
  expect([figure(made, "cutWidthMm", "in"), figure(made, "cutLengthMm", "in")]).toEqual([94, 66]);
  const edge = made.plan?.cover.edge.toMm() as number;
  // More than the circle of the mean size, less than the rectangle's.
  expect(edge).toBeGreaterThan(Math.PI * ((92 + 64) / 2) * 25.4);
  expect(edge).toBeLessThan(2 * (92 + 64) * 25.4);
  expect(made.working.find((w) => w.what === "Round the edge")?.sum).toContain("ellipse");
  expect(made.cuts[0]?.because).toContain("an oval is cut from it");
  const square = tablecloth({ ...raw, trim: "print" }, { allowances: { hem: '1"' } });
  expect(made.cuts.map((c) => [c.width, c.height])).toEqual(
    square.cuts.map((c) => [c.width, c.height]),
  );
  // Of one diameter it is a round one.
  const round = { table: '44" x 44" x 29"', drop: '10"' };
  expect(tablecloth({ ...round, form: "oval" }).cuts).toEqual(
    tablecloth({ ...round, form: "round" }).cuts,
  );
  expect(tablecloth({ ...raw, form: "round" }).diagnostics[0]?.hint).toContain("form: oval");
});

test("a skirt round an oval table is as long as the way round it", () => {
  const made = tableSkirt({ table: '72" x 44" x 29"', form: "oval" });
  const run = ovalGirth([Length.inches(72), Length.inches(44)], Length.zero).toMm();
  expect(made.figures.runMm).toBeCloseTo(run, 2);
  expect(made.cuts.some((c) => c.piece.includes("corner"))).toBe(false);
});
