import type { Made } from "../itemKind.ts";
import type { Notes } from "./notes.ts";

/** What was gathered on the way, and the cautions, as every result carries them; sizes are measured, so nothing is an estimate. */
export function noted(
  notes: Notes,
  cautions: readonly string[],
): Pick<Made, "working" | "questions" | "cautions" | "estimate" | "diagnostics"> {
  return {
    working: notes.working,
    questions: notes.questions,
    cautions,
    estimate: null,
    diagnostics: notes.diagnostics,
  };
}

/** Nothing is cut where something essential is not known; a diagnostic says what. */
export const NOTHING_CUT: Pick<
  Made,
  "figures" | "cuts" | "materials" | "handbook" | "makingCounts"
> = { figures: {}, cuts: [], materials: [], handbook: [], makingCounts: {} };
