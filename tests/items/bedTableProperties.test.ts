import fc from "fast-check";
import { expect, test } from "vitest";
import { joinsOf } from "../../src/items/common/flat/flatPanel.ts";
import type { Made } from "../../src/items/itemKind.ts";
import { Length } from "../../src/units/length.ts";
import {
  bedSkirt,
  cloth,
  coverlet,
  handbook,
  runner,
  tablecloth,
  tableSkirt,
} from "./bedTableMade.ts";
import { inUnit, length } from "./tradeContext.ts";

const PATTERN = {
  up: length('25 1/4"'),
  across: length('13 1/2"'),
  match: "half-drop" as const,
  fromSelvedge: length('6 3/4"'),
};
const someInch = (least: number, most: number) => fc.integer({ min: least, max: most });

test("no piece is wider than its cloth, no join stands in the middle, and the joined parts are exactly the cut width", () => {
  fc.assert(
    fc.property(
      someInch(30, 90),
      someInch(60, 90),
      someInch(6, 30),
      someInch(24, 60),
      fc.boolean(),
      fc.boolean(),
      (w, l, drop, width, patterned, sideways) => {
        const print = cloth(`${width}"`, patterned ? { repeat: PATTERN } : { mayTurn: true });
        const raw = {
          bed: `${w}" x ${l}" x 40"`,
          drop: `${drop}"`,
          back: "lining",
          ...(sideways ? { railroad: "yes" } : {}),
        };
        const made = coverlet(raw, {}, print);
        const face = made.plan?.cover.face;
        if (!face) throw new Error("no plan");
        for (const cut of made.cuts) {
          const usable = cut.cloth === "print" ? width : 54;
          expect(inUnit(cut.width, "in")).toBeLessThanOrEqual(usable);
        }
        if (!face.parts) return;
        const across = face.sideways ? face.height : face.width;
        const joined = Length.sum(face.parts.map((part) => part.width)).minus(
          face.join.times(2 * (face.parts.length - 1)),
        );
        expect(joined.equals(across)).toBe(true);
        const turning = made.plan?.cover.turning ?? Length.zero;
        const seams = joinsOf(face, turning);
        const finished = across.minus(turning.times(2));
        for (const at of seams) expect(at.times(2).equals(finished)).toBe(false);
        // Joins mirror each other about the middle.
        seams.forEach((at, n) => {
          const other = seams[seams.length - 1 - n] as Length;
          expect(at.plus(other).equals(finished)).toBe(true);
        });
      },
    ),
    { numRuns: 150 },
  );
});

test("a larger bed or table never needs less, and inches and centimetres give the same cuts", () => {
  const exact = {
    hem: '1"',
    join: '1/2"',
    seam: '1/2"',
    pillow: '12"',
    "side-hem": '1"',
    top: '1/2"',
    "platform-seam": '1/2"',
    clearance: '1/2"',
    lap: '1"',
  };
  fc.assert(
    fc.property(
      someInch(20, 90),
      someInch(40, 90),
      someInch(4, 24),
      someInch(0, 12),
      (w, l, drop, more) => {
        const print = cloth('54"', { repeat: { ...PATTERN, match: "straight" } });
        const all = (a: number, b: number, units: "inches" | "centimetres"): Made[] => {
          const say = (n: number) => (units === "inches" ? `${n}"` : `${(n * 2.54).toFixed(2)} cm`);
          const ctx = { units, allowances: { ...exact, "welt-lap": '2"' } };
          const size = `${say(a)} x ${say(b)} x ${say(30)}`;
          return [
            coverlet({ bed: size, drop: say(drop) }, ctx, print),
            bedSkirt({ bed: size, drop: say(drop) }, ctx, print),
            tablecloth({ table: size, drop: say(drop) }, ctx, print),
            tablecloth(
              { table: `${say(a)} x ${say(a)} x ${say(30)}`, form: "round", drop: say(drop) },
              ctx,
              print,
            ),
            tableSkirt({ table: size, drop: say(drop) }, ctx, print),
            runner({ bed: size, drop: say(drop), depth: say(20) }, ctx, print),
          ];
        };
        const small = all(w, l, "inches");
        const large = all(w + more, l + more, "inches");
        const metric = all(w, l, "centimetres");
        small.forEach((made, n) => {
          expect(handbook(large[n] as Made, "in")).toBeGreaterThanOrEqual(handbook(made, "in"));
          const sizes = (m: Made) =>
            m.cuts.map((c) => [
              c.piece,
              c.count,
              c.width.mm.toFraction(),
              c.height.mm.toFraction(),
            ]);
          expect(sizes(metric[n] as Made)).toEqual(sizes(made));
        });
      },
    ),
    { numRuns: 60 },
  );
});

test("a round cloth: its circle lies wholly in the joined piece, and the parts' segments add up to its area (geometry)", () => {
  fc.assert(
    fc.property(someInch(20, 60), someInch(5, 30), someInch(30, 60), (diameter, drop, width) => {
      const made = tablecloth(
        { table: `${diameter}" x ${diameter}" x 40"`, form: "round", drop: `${drop}"` },
        {},
        cloth(`${width}"`),
      );
      const face = made.plan?.cover.face;
      if (!face) throw new Error("no plan");
      const r = inUnit(face.width, "in") / 2;
      // Area of the circle left of x, counted from its middle.
      const left = (x: number) =>
        x <= -r
          ? 0
          : x >= r
            ? Math.PI * r * r
            : x * Math.sqrt(r * r - x * x) + r * r * Math.asin(x / r) + (Math.PI * r * r) / 2;
      const edges = [-r, ...joinsOf(face, Length.zero).map((at) => inUnit(at, "in") - r), r];
      const parts = edges.slice(1).map((to, n) => left(to) - left(edges[n] as number));
      expect(parts.reduce((a, b) => a + b, 0)).toBeCloseTo(Math.PI * r * r, 6);
      // No part holds more of the circle than its own cloth is, and each is as long as its longest chord.
      parts.forEach((area, n) => {
        const part = made.cuts[n];
        expect(area).toBeLessThanOrEqual(
          inUnit(part?.width as Length, "in") * inUnit(part?.height as Length, "in") + 1e-9,
        );
        const nearest = Math.max(
          0,
          Math.min(Math.abs(edges[n] as number), Math.abs(edges[n + 1] as number)) *
            ((edges[n] as number) * (edges[n + 1] as number) < 0 ? 0 : 1),
        );
        expect(inUnit(part?.height as Length, "in")).toBeGreaterThanOrEqual(
          2 * Math.sqrt(Math.max(0, r * r - nearest * nearest)) - 1e-9,
        );
      });
      expect(made.figures.edgeMm).toBeGreaterThanOrEqual(Math.PI * (diameter + 2 * drop) * 25.4);
      expect(made.figures.edgeMm).toBeLessThan(Math.PI * (diameter + 2 * drop) * 25.4 * 1.000001);
    }),
    { numRuns: 150 },
  );
});

test("joined parts are in register: a half-drop steps at each join, and the motif is asked for about the middle of the bed", () => {
  const odd = { ...PATTERN, across: length('18"'), fromSelvedge: length('9"') };
  const made = coverlet({ bed: '60" x 80" x 25"', drop: '12"' }, {}, cloth('54"', { repeat: odd }));
  expect(made.cuts.map((c) => c.across.how)).toEqual(["selvedge", "whole-width", "selvedge"]);
  const joined = made.cuts.map((c) => (c.along.how === "motif-at" ? c.along.joined : null));
  expect(joined[0]).toBe(joined[2]);
  expect(joined[0]).not.toBe(joined[1]);
  // The middle of the bed stands half its length and the foot's drop above the hem.
  const along = made.cuts[1]?.along;
  expect(along?.how === "motif-at" && inUnit(along.aboveFoot, "in")).toBe(40 + 12 + 2);
  expect(made.questions.join(" ")).not.toContain("gap between two");
  // Columns at 6 3/4, 20 1/4, 33 3/4 and 47 1/4 in: the widest middle with a motif in its middle is 40 1/2 in.
  const narrower = coverlet(
    { bed: '60" x 80" x 25"', drop: '12"' },
    {},
    cloth('54"', { repeat: PATTERN }),
  );
  expect(inUnit(narrower.cuts[1]?.width as Length, "in")).toBe(40.5);
  expect(narrower.questions.join(" ")).not.toContain("gap between two");
  // Columns at 13 1/2 and 40 1/2 in: so little would be left that it is asked.
  const gap = coverlet(
    { bed: '60" x 80" x 25"', drop: '12"' },
    {},
    cloth('54"', {
      repeat: { ...PATTERN, across: length('27"'), fromSelvedge: length('13 1/2"') },
    }),
  );
  expect(gap.questions.join(" ")).toContain("gap between two");
});
