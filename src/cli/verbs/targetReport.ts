import type { Computed, Report } from "../../site/computed.ts";
import { exitOf, type Outcome } from "../outcome.ts";
import { requireTarget, type Target } from "../target.ts";
import type { Wiring } from "../wiring.ts";

/**
 * What a verb says about one project or room. Where an error stops the project there is no report: the
 * JSON is null, and the diagnostics say why.
 */
export async function targetReport(
  contentDir: string,
  target: Target,
  wiring: Wiring,
  choose: (computed: Computed, name: string) => Report | null,
): Promise<Outcome> {
  const name = target.room ?? target.project;
  const computed = await wiring.compute(contentDir, { only: name, useCache: true });
  if (!computed.studioBroken) requireTarget(target, computed);
  const { diagnostics } = computed;
  const report = choose(computed, name);
  if (report === null) {
    return { exit: exitOf(diagnostics) || 1, json: null, text: "", diagnostics };
  }
  // Errors elsewhere in the studio do not touch this project's figures.
  return { exit: 0, json: report.json, text: report.text, diagnostics };
}
