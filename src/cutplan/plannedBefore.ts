import type { PlanInput, PlanResult } from "./plan.ts";
import { planCuts } from "./planCuts.ts";

/** Plans that are kept; of a studio's cloths few change from one look to the next. */
const KEPT = 300;

/** The latest last. A plan is a function of its input alone, so that one that is kept is the one that would be found again. */
const kept = new Map<string, PlanResult>();

/**
 * `planCuts`, but what was planned before is not searched again: each way to make an item is priced by a plan of the whole project, of
 * which one or two cloths differ, and a preview looks again at what has hardly changed.
 */
export function plannedBefore(input: PlanInput): PlanResult {
  const key = JSON.stringify(input);
  const plan = kept.get(key) ?? planCuts(input);
  kept.delete(key);
  kept.set(key, plan);
  const [oldest] = kept.keys();
  if (kept.size > KEPT && oldest !== undefined) kept.delete(oldest);
  return plan;
}
