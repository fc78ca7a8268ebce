import type { Outcome } from "../outcome.ts";
import type { Target } from "../target.ts";
import type { Wiring } from "../wiring.ts";
import { targetReport } from "./targetReport.ts";

/** What a project or one of its rooms costs, line by line. */
export function money(contentDir: string, target: Target, wiring: Wiring): Promise<Outcome> {
  return targetReport(contentDir, target, wiring, (computed, name) => computed.money(name));
}
