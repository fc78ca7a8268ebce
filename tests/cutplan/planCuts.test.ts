import { expect, test } from "vitest";
import { planCuts } from "../../src/cutplan/planCuts.ts";
import { faultsOf } from "./checkPlan.ts";
import { FAMILIES, room } from "./rooms.ts";

test.each(FAMILIES)("plans of %s can be cut", (family) => {
  for (let seed = 1; seed <= 6; seed++) {
    for (const size of [7, 30]) {
      const input = { ...room(family, seed, size), options: { builds: 300 } };
      const plan = planCuts(input);
      expect(plan.ok).toBe(true);
      if (!plan.ok) continue;
      expect(faultsOf(plan, input)).toEqual([]);
      expect(plan.length).toBeLessThanOrEqual(plan.itemByItem ?? 0);
    }
  }
});
