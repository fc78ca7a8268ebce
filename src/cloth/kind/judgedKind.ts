import type { PatternKind } from "../clothMeasure.ts";
import type { Crossing } from "./crossing.ts";
import type { Surface } from "./surface.ts";

/** What the kind of a pattern is told from. The dear ones may be getters, which are asked only where the kind hangs on them. */
export interface KindSigns {
  /** Colours that were separated. */
  readonly colours: number;
  /** Michelson's, between the lightest and darkest of the colours. */
  readonly contrast: number;
  readonly surface: Surface;
  /** Mean width of the wider of figure and ground, in millimetres; it is asked of cells finer than `FINE_CELL_MM` alone. */
  readonly widestMm: number;
  /** How well stripes agree with themselves along their run, 0 to 1; null where there are none. */
  readonly alongRun: number | null;
  readonly crossing: Crossing;
  /** Bands along the two vectors of a lattice that stands on the bias; null where it does not. */
  readonly onBias: Crossing | null;
  /** Part of the picture that its commonest colour covers. */
  readonly groundShare: number;
  /** Side of a square as large as one cell; null where nothing repeats. */
  readonly cellMm: number | null;
  /** How well the cloth agrees with itself one repeat further, 0 to 1. */
  readonly agreement: number;
  /** Whether the repeat is sure. */
  readonly repeatSure: boolean;
  /** How far the edges lean one way, -1 to 1. */
  readonly slant: number;
  /** Part of the variance that is a sum of bands once all that is finer than a band is gone, 0 to 1. */
  readonly sumFromAfar: number;
  /** How often a line as long as the side of a cell goes from ground to figure or back. */
  readonly changes: number;
  /** How much speaks for a geometric, in logarithms of the odds. */
  readonly forGeometric: number;
  /** How far the edges of a cell are those of a mirror image of it, 0 to 1. */
  readonly mirrored: number;
  readonly motifMm: number | null;
  /** Sizes of the motifs that stand free, in millimetres, least first. */
  readonly freeMm: readonly number[];
  /** Motifs that stand free in one cell of the repeat. */
  readonly motifsPerCell: number;
}

/** A kind, and whether it is more than a guess. */
export interface JudgedKind {
  readonly kind: PatternKind;
  readonly sure: boolean;
}
