/** What a cloth truly is, in the keys of the `swatch` JSON: what its measurement is compared with. */
export type PatternTruth = {
  kind:
    | "plain"
    | "textured-plain"
    | "stripe"
    | "check"
    | "geometric"
    | "small-print"
    | "large-print"
    | "irregular";
  repeat: {
    verticalMm: number | null;
    horizontalMm: number | null;
    match: "straight" | "half-drop" | "none";
    /** A basis of the primitive lattice, x right, y down; other bases of the same lattice are as true. One vector for a stripe. */
    lattice: (readonly [number, number])[];
  } | null;
  /** The run of a stripe, anticlockwise from horizontal; null where there is none. */
  directionDeg: number | null;
};

export const straight = (acrossMm: number, upMm: number): PatternTruth["repeat"] => ({
  verticalMm: upMm,
  horizontalMm: acrossMm,
  match: "straight",
  lattice: [
    [acrossMm, 0],
    [0, upMm],
  ],
});

/** `columnMm` is the distance to the next column, which hangs half a repeat lower. */
export const halfDrop = (columnMm: number, upMm: number): PatternTruth["repeat"] => ({
  verticalMm: upMm,
  horizontalMm: columnMm,
  match: "half-drop",
  lattice: [
    [columnMm, upMm / 2],
    [0, upMm],
  ],
});

export const bands = (acrossMm: number): PatternTruth["repeat"] => ({
  verticalMm: null,
  horizontalMm: acrossMm,
  match: "none",
  lattice: [[acrossMm, 0]],
});
