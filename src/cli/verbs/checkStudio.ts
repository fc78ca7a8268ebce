import { diagnosticJson, reportText } from "../../diagnostics/report.ts";
import { exitOf, type Outcome } from "../outcome.ts";
import type { Wiring } from "../wiring.ts";
import { findingsText } from "./check.ts";

/**
 * Everything that is wrong with a studio and everything worth a word, with all photographs measured and
 * all sums done; writes nothing. Findings never make an error.
 */
export async function checkStudio(contentDir: string, wiring: Wiring): Promise<Outcome> {
  const { diagnostics, findings } = await wiring.compute(contentDir, {
    only: null,
    useCache: true,
  });
  const shown = [findingsText(findings), reportText(diagnostics)].filter((text) => text !== "");
  return {
    exit: exitOf(diagnostics),
    json: { diagnostics: diagnostics.map(diagnosticJson), findings },
    text: shown.join("\n"),
    diagnostics,
    textHasDiagnostics: true,
  };
}
