import { expect, test } from "vitest";
import { lowerBound } from "../../src/cutplan/bound/lowerBound.ts";
import { planCuts } from "../../src/cutplan/planCuts.ts";
import { exactLength } from "./exact.ts";
import { FAMILIES, room } from "./rooms.ts";

// The yardstick is HiGHS (open mixed-integer solver), on models that share nothing with the planner: see exact.ts.
const SOAK = Boolean(process.env.SOAK);
const SEEDS = SOAK ? 60 : 5;
// In nodes, so that a busy machine proves as many as an idle one; seconds only end what hangs.
const LIMIT = SOAK ? { seconds: 12 } : { seconds: 30, nodes: 1500 };
/** Most that the mean and the worst plan may be over the proved optimum. */
const ALLOWED = { default: [0.001, 0.01], turnable: [0.003, 0.05] } as const;

test.each(FAMILIES)(
  "small rooms of %s against the proved optimum",
  async (family) => {
    let proved = 0;
    let sum = 0;
    let worst = 0;
    for (let seed = 1; seed <= SEEDS; seed++) {
      const small = room(family, seed, 6 + (seed % 5));
      const plan = planCuts({ ...small, options: { start: 0, maxBandG: null } });
      if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
      const exact = await exactLength(small, 0, plan.length, LIMIT);
      if (!exact.proved) continue;
      proved++;
      // The bound of lines and slabs by itself, and the plan's own, which a search of all registered places may raise.
      const bound = lowerBound(small.usableWidth, small.pattern, small.pieces, {
        start: 0,
        knownLength: plan.itemByItem ?? plan.length,
      });
      expect(bound, `${family} ${seed}`).toBeLessThanOrEqual(exact.length);
      expect(plan.lowerBound, `${family} ${seed}`).toBeGreaterThanOrEqual(bound);
      expect(plan.lowerBound, `${family} ${seed}`).toBeLessThanOrEqual(exact.length);
      // With every piece in register both ways, the plan's bound is the optimum itself.
      if (family === "curtains" || family === "cushions") {
        expect(plan.lowerBound, `${family} ${seed}`).toBe(exact.length);
      }
      expect(plan.length, `${family} ${seed}`).toBeGreaterThanOrEqual(exact.length);
      const over = plan.length / exact.length - 1;
      sum += over;
      worst = Math.max(worst, over);
    }
    expect(proved).toBeGreaterThan(0);
    const [mean, most] = family === "turnable" ? ALLOWED.turnable : ALLOWED.default;
    // A handful of rooms says nothing about a mean.
    if (proved >= 20) expect(sum / proved).toBeLessThanOrEqual(mean);
    expect(worst).toBeLessThanOrEqual(most);
  },
  SOAK ? 3_600_000 : 60_000,
);

// With every piece in register the lowest one begins at a residue of some kind: the best of these starts is the best of all.
test.each(["curtains", "cushions"] as const)(
  "the bound over all starts is below the optimum of each start: %s",
  async (family) => {
    for (let seed = 1; seed <= (SOAK ? 20 : 2); seed++) {
      const small = room(family, seed, 6);
      const vertical = small.pattern?.vertical ?? 1;
      const starts = new Set(
        small.pieces.map(({ along }) => (along.rule === "register" ? along.residue : 0)),
      );
      const chosen = planCuts({ ...small, options: { maxBandG: null } });
      if (!chosen.ok) throw new Error(JSON.stringify(chosen.problems));
      let best = Number.POSITIVE_INFINITY;
      for (const residue of starts) {
        const start = ((residue % vertical) + vertical) % vertical;
        const plan = planCuts({ ...small, options: { start, maxBandG: null } });
        if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
        const exact = await exactLength(small, start, plan.length, LIMIT);
        if (exact.proved) best = Math.min(best, exact.length);
      }
      expect(chosen.lowerBound).toBeLessThanOrEqual(best);
      expect(chosen.length).toBeLessThanOrEqual(best * 1.01);
    }
  },
  SOAK ? 3_600_000 : 60_000,
);
