import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { WorkingLine } from "../itemKind.ts";

/** What an item's arithmetic gathers on its way. */
export interface Notes {
  readonly working: WorkingLine[];
  readonly questions: string[];
  readonly diagnostics: Diagnostic[];
}

export function newNotes(): Notes {
  return { working: [], questions: [], diagnostics: [] };
}
