import type { Outcome } from "../outcome.ts";
import type { Target } from "../target.ts";
import type { Wiring } from "../wiring.ts";
import { targetReport } from "./targetReport.ts";

/** What to buy for a project or one of its rooms, with the working and the cutting plan. */
export function quantities(contentDir: string, target: Target, wiring: Wiring): Promise<Outcome> {
  return targetReport(contentDir, target, wiring, (computed, name) => computed.quantities(name));
}
