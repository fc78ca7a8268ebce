import type { BandSequence, MeasuredBand, Runs } from "../clothMeasure.ts";
import type { CellTurned } from "./cellTurned.ts";

/** Likeness from which a pattern is the same, and under which it is another; between them it is not said. */
const SAME = 0.94;
const OTHER = 0.8;
/** Agreement of the cells with each other under which nothing is said. */
const LEAST = 0.6;
/** Part of a repeat by which a band and its like may differ in width. */
const EVEN = 0.025;

/** What a pattern is upside down, and which way it runs by it. */
export interface FoundRuns {
  readonly runs: Runs | null;
  /** It is not the same upside down, though whether its motifs have a top is for the eye. */
  readonly isOther: boolean;
}

/** Nothing is known of it. */
export const UNKNOWN_RUNS: FoundRuns = { runs: null, isOther: false };

/**
 * Which way a pattern runs. What is the same upside down is two-way. What is not, and yet is its own mirror image along the cloth or across it,
 * points one way: of all plane groups those with mirrors or glides of one direction alone (International Tables for Crystallography,
 * volume A, from memory). What has neither may be one-way or tossed every way.
 */
export function runsOf({ half, mirrored }: CellTurned, agreement: number): FoundRuns {
  if (agreement < LEAST) return UNKNOWN_RUNS;
  if (half >= SAME) return { runs: "two-way", isOther: false };
  if (half > OTHER) return UNKNOWN_RUNS;
  return { runs: mirrored >= SAME ? "one-way" : null, isOther: true };
}

/** Which way bands run: two-way where each sequence is the same read backwards, else one-way (uneven stripes and checks). */
export function runsOfBands(all: readonly BandSequence[]): FoundRuns {
  const even = all.every(({ bands }) => isEven(bands));
  return { runs: even ? "two-way" : "one-way", isOther: !even };
}

function isEven(bands: readonly MeasuredBand[]): boolean {
  const n = bands.length;
  const repeat = bands.reduce((sum, { widthMm }) => sum + widthMm, 0);
  return bands.some((_, middle) =>
    bands.every((band, i) => {
      const other = bands[(2 * middle - i + 2 * n) % n] as MeasuredBand;
      return band.hex === other.hex && Math.abs(band.widthMm - other.widthMm) < EVEN * repeat;
    }),
  );
}
