/** The measures of a board's sheet, millimetres. */
export interface BoardSheet {
  readonly width: number;
  readonly height: number;
  readonly margin: {
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
    readonly left: number;
  };
  /** Width of the wall field, which bleeds off three sides, and of the share strip beside it. */
  readonly fieldWidth: number;
  readonly stripWidth: number;
  /** Left edges of the strip's labels and of the text column, and the text's width. */
  readonly labelX: number;
  readonly textX: number;
  readonly textWidth: number;
}

/** A3 and tabloid, landscape, on one grid (ISO 216: 420 x 297; ANSI: 11 x 17 in). */
export function boardSheet(paper: "a3" | "tabloid"): BoardSheet {
  if (paper === "a3") {
    return {
      width: 420,
      height: 297,
      margin: { top: 15, right: 15, bottom: 15, left: 15 },
      fieldWidth: 280,
      stripWidth: 10,
      labelX: 293,
      textX: 322,
      textWidth: 83,
    };
  }
  return {
    width: 431.8,
    height: 279.4,
    margin: { top: 14, right: 16, bottom: 14, left: 16 },
    fieldWidth: 288,
    stripWidth: 10,
    labelX: 301,
    textX: 331,
    textWidth: 84.8,
  };
}
