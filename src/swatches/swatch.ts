import { isPlainKind, type Runs } from "../cloth/clothMeasure.ts";
import type { Place } from "../diagnostics/diagnostic.ts";
import type { PATTERN_KINDS } from "../records/schema/clothSchema.ts";

export type PatternKind = (typeof PATTERN_KINDS)[number];

/** Whether a value was said on the card, read off the photograph, or is not known. */
export type Origin = "declared" | "measured" | "unknown";

export interface SwatchColour {
  readonly hex: string;
  readonly oklch: readonly [l: number, c: number, h: number];
  /** Share of the surface, 0 to 1; all sum to one. */
  readonly share: number;
  readonly name: string;
  readonly family: string;
  /** Light reflectance value, 0 to 100. */
  readonly lrv: number;
}

/** The photograph as it is used: where it is, how large, and how much cloth it shows. */
export interface SwatchPhoto {
  /** Path below the content folder. */
  readonly source: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Real width that the photograph shows, or null where the card does not say. */
  readonly showsMm: number | null;
  readonly sha256: string;
  /** The middle of the most telling motif in the photograph, as parts of its width and height, or null where none stands out. */
  readonly motifAt: { readonly x: number; readonly y: number } | null;
}

/** The steps by which a cloth comes again as one sees it, for laying its photograph; null along a way in which nothing comes again. */
export interface Period {
  readonly acrossMm: number | null;
  readonly upMm: number | null;
  /** True where every other column hangs half a step lower. */
  readonly halfDrop: boolean;
}

/** Where card and photograph disagree: both values, in words. */
export interface Disagreement {
  readonly what: "repeat" | "kind" | "runs" | "motif" | "colours";
  readonly declared: string;
  readonly measured: string;
}

/** A cloth, wallcovering or object as the room uses it: the card's values where it has them, else the photograph's. */
export interface Swatch {
  readonly id: string;
  readonly of: "cloth" | "object";
  readonly name: string;
  readonly photo: SwatchPhoto | null;
  readonly colours: readonly SwatchColour[];
  readonly coloursFrom: Origin;
  /** Average in linear light, or null without colours. */
  readonly average: string | null;
  readonly contrast: number | null;
  readonly busyness: number | null;
  readonly kind: PatternKind | null;
  readonly kindFrom: Origin;
  readonly motifMm: number | null;
  readonly motifFrom: Origin;
  readonly repeat: {
    readonly upMm: number;
    readonly acrossMm: number | null;
    readonly match: "straight" | "half-drop" | "free";
    readonly fromSelvedgeMm: number | null;
  } | null;
  readonly repeatFrom: Origin;
  /** True of what the photograph calls a weave although it comes again as a fine check or zigzag does, while its card says no kind. */
  readonly wovenRepeat?: boolean;
  /** False where its card says that nothing of its pattern has to meet at a join. */
  readonly matched?: boolean;
  /** How it comes again to the eye, for laying its photograph; null where it has a pattern and nobody knows. */
  readonly period: Period | null;
  readonly readsPlainFromM: number | null;
  /** Which way its photograph shows that it runs, where its repeat is sure. */
  readonly runs?: Runs | null;
  readonly animal: boolean;
  readonly disagreements: readonly Disagreement[];
  /** What the photograph could not tell for certain. */
  readonly confirm: readonly string[];
  readonly place: (keyPath: readonly (string | number)[]) => Place;
}

/** Plain to the eye: no pattern, or only a weave's own texture. */
export function isPlain(swatch: Swatch): boolean {
  return isPlainKind(swatch.kind);
}
