import fc from "fast-check";
import { expect, test } from "vitest";
import { curtainsAllowances } from "../../../src/items/curtains/allowances.ts";
import { length } from "../tradeContext.ts";
import { LARGE, make } from "./curtainsOf.ts";

const eighth = (min: number, max: number) =>
  fc.integer({ min: min * 8, max: max * 8 }).map((n) => n / 8);
const heading = fc.constantFrom("pinch-pleat", "pencil-pleat", "eyelet");

test("a wider pole never takes fewer widths, a longer drop never a shorter cut", () => {
  fc.assert(
    fc.property(
      eighth(20, 300),
      eighth(0, 60),
      eighth(10, 150),
      eighth(0, 40),
      heading,
      fc.boolean(),
      (pole, wider, drop, longer, head, pair) => {
        const raw = { heading: head, panels: pair ? "pair" : "single", drop: `${drop}"` };
        const less = make({ ...raw, pole: `${pole}"` }).made.figures;
        const more = make({ ...raw, pole: `${pole + wider}"` }).made.figures;
        expect(more.widths as number).toBeGreaterThanOrEqual(less.widths as number);
        const taller = make({ ...raw, pole: `${pole}"`, drop: `${drop + longer}"` }).made.figures;
        expect(taller.plainCutLengthMm as number).toBeGreaterThanOrEqual(
          less.plainCutLengthMm as number,
        );
        expect(taller.cutLengthMm as number).toBeGreaterThanOrEqual(less.cutLengthMm as number);
      },
    ),
    { numRuns: 60 },
  );
});

test("the joined widths reach what is wanted, and half a width less would not", () => {
  fc.assert(
    fc.property(eighth(20, 300), fc.integer({ min: 30, max: 118 }), (pole, wide) => {
      const { made } = make(
        { pole: `${pole}"`, drop: `92"` },
        {},
        { ...LARGE, repeat: null, usableWidth: length(`${wide}"`) },
      );
      const { joinedWidthMm, flatWidthMm, widthsPerCurtain } = made.figures as Record<
        string,
        number
      >;
      expect(joinedWidthMm).toBeGreaterThanOrEqual((flatWidthMm as number) - 1e-6);
      const lessEach = (widthsPerCurtain as number) - 0.5;
      const less = 2 * (lessEach * wide - (Math.ceil(lessEach) - 1)) * 25.4;
      if (lessEach >= 0.5) expect(less).toBeLessThan((flatWidthMm as number) + 1e-6);
    }),
    { numRuns: 60 },
  );
});

test("the same curtains in inches and in centimetres come to the same figures", () => {
  fc.assert(
    fc.property(eighth(20, 200), eighth(20, 120), heading, (pole, drop, head) => {
      const names = Object.keys(curtainsAllowances) as (keyof typeof curtainsAllowances)[];
      const allowances = Object.fromEntries(
        names.map((name) => [name, curtainsAllowances[name].usual.inches]),
      );
      const inches = make(
        { heading: head, pole: `${pole}"`, drop: `${drop}"` },
        { allowances },
      ).made;
      const metric = make(
        {
          heading: head,
          pole: `${(pole * 2.54).toFixed(4)} cm`,
          drop: `${(drop * 25.4).toFixed(3)} mm`,
        },
        { allowances, units: "centimetres" },
      ).made;
      for (const [name, value] of Object.entries(inches.figures))
        expect(metric.figures[name], name).toBeCloseTo(value, 6);
    }),
    { numRuns: 40 },
  );
});

test("pleats and spaces, take-up and panel add back to the flat panel; eyelets are even", () => {
  fc.assert(
    fc.property(eighth(30, 250), heading, (pole, head) => {
      const plan = make({ heading: head, pole: `${pole}"`, drop: `92"` }).made.plan;
      if (plan === null) throw new Error("no plan");
      const planned = plan.heading;
      if (planned.heading === "pinch-pleat") {
        expect(planned.pleats).toBe(planned.spaces + 1);
        expect(
          planned.takeUp.times(planned.pleats).plus(plan.panel.finished).equals(plan.panel.flat),
        ).toBe(true);
        expect(planned.space.times(planned.spaces).equals(plan.panel.face)).toBe(true);
      }
      if (planned.heading === "eyelet") {
        expect(planned.eyelets % 2).toBe(0);
        expect(
          planned.spacing
            .times(planned.eyelets - 1)
            .plus(planned.edge.times(2))
            .equals(plan.panel.flat),
        ).toBe(true);
      }
    }),
    { numRuns: 60 },
  );
});
