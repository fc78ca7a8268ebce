import { type PrintLimits, USUAL_LIMITS } from "./motif/printSize.ts";

/** What a studio sets of how its cloths are judged. */
export interface MeasureSettings {
  /** From what size a print is large. */
  readonly printLimits: PrintLimits;
  /** Decimal acuity (ISO 8596) of the eye by which a pattern is told from a plain across a room: 1 is a good eye. */
  readonly acuity: number;
}

/** Where the studio says nothing. */
export const USUAL_SETTINGS: MeasureSettings = { printLimits: USUAL_LIMITS, acuity: 1 };
