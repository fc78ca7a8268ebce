/** Kinds of item whose cloth is upholstered: pulled over stuffing and rubbed or leant on. */
export const UPHOLSTERED: ReadonlySet<string> = new Set([
  "armchair",
  "sofa",
  "dining-chair",
  "drop-in-seat",
  "ottoman",
  "headboard",
]);

/** Kinds that one sits on or leans against every day. */
export const SAT_ON: ReadonlySet<string> = new Set([...UPHOLSTERED, "seat-pad", "cushion"]);
