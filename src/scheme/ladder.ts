import type { RoleOf } from "./roles.ts";

/** A patterned cloth's rung: the height of its largest motif. */
export interface Rung {
  readonly cloth: string;
  readonly name: string;
  readonly motifMm: number;
}

export interface Ladder {
  /** Largest first. */
  readonly rungs: readonly Rung[];
  /** Ratio of each rung to the next smaller one. */
  readonly steps: readonly {
    readonly larger: Rung;
    readonly smaller: Rung;
    readonly ratio: number;
    readonly close: boolean;
  }[];
}

/** Under this ratio two motif sizes are hard to tell apart in a room; common practice, no source. */
export const CLOSE_RUNGS = 1.5;

/**
 * The ladder of motif sizes of the patterned cloths, largest first, and which neighbours stand too close. `together` tells of two
 * cloths that may be of one size all the same.
 */
export function motifLadder(
  roles: readonly RoleOf[],
  together: (one: string, other: string) => boolean = () => false,
): Ladder {
  const rungs = roles
    .filter((r) => r.role !== "plain" && r.motifMm !== null && r.motifMm > 0)
    .map(
      (r): Rung => ({
        cloth: r.cloth,
        name: r.name,
        motifMm: r.motifMm as number,
      }),
    )
    .sort((a, b) => b.motifMm - a.motifMm || (a.cloth < b.cloth ? -1 : 1));
  const steps = rungs.slice(1).map((smaller, at) => {
    const larger = rungs[at] as Rung;
    const ratio = larger.motifMm / smaller.motifMm;
    const close = ratio < CLOSE_RUNGS && !together(larger.cloth, smaller.cloth);
    return { larger, smaller, ratio, close };
  });
  return { rungs, steps };
}
