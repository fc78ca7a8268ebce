import { expect, test } from "vitest";
import { planCuts } from "../../src/cutplan/planCuts.ts";
import { fits } from "../../src/cutplan/remnant/fits.ts";
import { faultsOf } from "./checkPlan.ts";
import { CM, FAMILIES, room } from "./rooms.ts";

test.each(FAMILIES)("a longer remnant never holds less, and what fits is a plan: %s", (family) => {
  for (let seed = 1; seed <= 4; seed++) {
    const input = { ...room(family, seed, 6), options: { builds: 200 } };
    const plan = planCuts(input);
    if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
    for (const width of [input.usableWidth, input.usableWidth - 20 * CM, 90 * CM]) {
      let before = false;
      for (let length = 0; length <= 40_00 * CM; length += 50 * CM) {
        const fit = fits(input, plan, { length, width, start: null });
        if (fit.needed === null) {
          expect(fit.problems.length).toBeGreaterThan(0);
          break;
        }
        if (before) expect(fit.fits).toBe(true);
        expect(fit.fits).toBe(length >= fit.needed);
        if (fit.fits && !before && fit.plan && fit.keeps !== "right") {
          expect(faultsOf(fit.plan, { ...input, usableWidth: width })).toEqual([]);
          expect(fit.plan.length).toBeLessThanOrEqual(length);
        }
        before = fit.fits;
        if (before && length > fit.needed + 100 * CM) break;
      }
    }
  }
});

test("a known pattern start loses only the way to the plan's start", () => {
  const input = { ...room("cushions", 2, 6), options: {} };
  const plan = planCuts(input);
  if (!plan.ok || !input.pattern) throw new Error("no plan");
  const { vertical } = input.pattern;
  const remnant = { length: plan.length, width: input.usableWidth };
  expect(fits(input, plan, { ...remnant, start: plan.start }).fits).toBe(true);
  expect(fits(input, plan, { ...remnant, start: null }).missing).toBe(vertical);
  const past = (plan.start + 10 * CM) % vertical;
  expect(fits(input, plan, { ...remnant, start: past }).missing).toBe(vertical - 10 * CM);
});

test("a narrow remnant with the right selvedge takes what belongs there", () => {
  const W = 140 * CM;
  const input = {
    usableWidth: W,
    pattern: null,
    pieces: [
      {
        id: "right part",
        group: "part",
        width: 50 * CM,
        height: 200 * CM,
        mayTurn: false,
        across: { rule: "at" as const, positions: [W - 50 * CM] },
        along: { rule: "free" as const },
      },
    ],
    options: {},
  };
  const fit = fits(input, null, { length: 200 * CM, width: 60 * CM, start: null });
  expect(fit.fits).toBe(true);
  expect(fit.keeps).toBe("right");
  expect(
    fits(input, null, { length: 200 * CM, width: 40 * CM, start: null }).problems[0]?.reason,
  ).toBe("wider-than-cloth");
});
