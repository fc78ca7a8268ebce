/** From what size a print is large, in millimetres. */
export interface PrintLimits {
  /** Side of a square as large as one cell of its repeat. */
  readonly cellMm: number;
  readonly motifMm: number;
}

/** Where the studio says nothing; common practice, no source. */
export const USUAL_LIMITS: PrintLimits = { cellMm: 110, motifMm: 90 };
