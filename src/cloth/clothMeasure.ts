import type { ClothColour } from "./palette/palette.ts";
import type { PhotoQuality } from "./reading/quality.ts";

/** What a cloth's pattern is, in the trade's words. */
export type PatternKind =
  | "plain"
  | "textured-plain"
  | "stripe"
  | "check"
  | "geometric"
  | "small-print"
  | "large-print"
  | "irregular";

/** Plain to the eye: no pattern, or only a weave's own texture. */
export function isPlainKind(kind: PatternKind | null | undefined): boolean {
  return kind === "plain" || kind === "textured-plain";
}

/** How a pattern repeats, as measured. */
export interface MeasuredRepeat {
  /** Straight up a column, from a motif to the next like it; null for a stripe. */
  readonly verticalMm: number | null;
  /** To the next column, level or dropped by half; null where the stripe runs across. */
  readonly horizontalMm: number | null;
  readonly match: "straight" | "half-drop" | "other";
  /** The two shortest vectors of the primitive lattice, x right, y down, in millimetres; for a stripe one, across the bands. */
  readonly lattice: readonly (readonly [xMm: number, yMm: number])[];
  /** 0 to 1: how well the cloth agrees with itself one repeat further. */
  readonly confidence: number;
  /** False where she should measure it herself. */
  readonly sure: boolean;
}

/** One band of a stripe or a check. */
export interface MeasuredBand {
  /** A colour of the cloth. */
  readonly hex: string;
  readonly widthMm: number;
}

/** The bands of one repeat that run one way, in their order: those that run up from left to right, all others from the top down. */
export interface BandSequence {
  /** Their run, anticlockwise from horizontal, 0 to 180. */
  readonly directionDeg: number;
  readonly bands: readonly MeasuredBand[];
}

/** Whether a pattern is the same upside down (two-way) or not, in the words of a card. */
export type Runs = "one-way" | "two-way";

/** The pattern of a cloth; what could not be measured is null and stands in `confirm`. */
export interface MeasuredPattern {
  readonly kind: PatternKind | null;
  readonly repeat: MeasuredRepeat | null;
  readonly motifMm: number | null;
  /** Run of the stripes, anticlockwise from horizontal, 0 to 180. */
  readonly directionDeg: number | null;
  /** Of stripes one sequence of bands, of a check that of warp and that of weft; empty where they cannot be told for sure. */
  readonly bands: readonly BandSequence[];
  /** As photographed; null where nothing comes again, or where it is for the eye. */
  readonly runs: Runs | null;
  /** Michelson's, 0 to 1, on linear-light Y. */
  readonly contrast: number;
  /** 0 (a plain) to 1. */
  readonly busyness: number | null;
  /** Up to this many metres its pattern holds, beyond it is a texture; null where it holds in any room. */
  readonly patternToM: number | null;
  /** From this many metres it reads as a plain of its average colour; null where it does in no room. */
  readonly readsPlainFromM: number | null;
}

/** Something that the measurement asks her to look at. */
export interface Confirm {
  /** The key in question, for example `pattern.repeat`. */
  readonly what: string;
  readonly why: string;
}

/** The measurement of one photograph: the `swatch` JSON but for the photograph's own name. */
export interface ClothMeasure {
  /** What the picture shows from left to right, in millimetres, as declared. */
  readonly showsMm: number;
  /** What it shows from top to bottom, by its proportions. */
  readonly showsDownMm: number;
  readonly colours: readonly ClothColour[];
  readonly average: string;
  readonly pattern: MeasuredPattern;
  readonly quality: PhotoQuality;
  readonly confirm: readonly Confirm[];
}
