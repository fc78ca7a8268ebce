import type { CutPiece, Grains } from "../../cutplan/piece.ts";
import type { PlanInput } from "../../cutplan/plan.ts";
import { fits, type Remnant } from "../../cutplan/remnant/fits.ts";

/** Where a remnant falls short: how many pieces it holds, in their order, and what would let it hold one more. */
export interface Shortfall {
  readonly holds: number;
  readonly of: number;
  /** The first piece that finds no room. */
  readonly piece: string;
  /** How much longer it would have to be for that piece; null where no length would do. */
  readonly missing: Grains | null;
  /** The motif so much below (or, negative, above) the place that was asked for would do; null where no other place would. */
  readonly shift: Grains | null;
}

/** Other places of the motif that are tried, up to this far from the one asked for, in so many steps. */
const STEPS = 12;
/** Plans tried for each question: few, since many are asked. */
const BUILDS = 96;

/** Looks for the nearest miss of pieces that a remnant does not hold all together. Deterministic; an estimate from above. */
export function shortfallOf(input: PlanInput, remnant: Remnant): Shortfall {
  const options = { ...input.options, builds: BUILDS };
  const tried = (pieces: readonly CutPiece[]) => fits({ ...input, options, pieces }, null, remnant);
  let holds = 0;
  while (holds < input.pieces.length - 1 && tried(input.pieces.slice(0, holds + 1)).fits) holds++;
  const before = input.pieces.slice(0, holds);
  const next = input.pieces[holds] as CutPiece;
  return {
    holds,
    of: input.pieces.length,
    piece: next.id,
    missing: tried([...before, next]).missing,
    shift: shiftThatDoes(before, next, input, (pieces) => tried(pieces).fits),
  };
}

function shiftThatDoes(
  before: readonly CutPiece[],
  piece: CutPiece,
  input: PlanInput,
  fitsAll: (pieces: readonly CutPiece[]) => boolean,
): Grains | null {
  const vertical = input.pattern?.vertical ?? 0;
  const { along } = piece;
  if (along.rule !== "register" || vertical === 0) return null;
  // The motif must stay within the middle half of the piece, and half a repeat further is the next motif.
  const most = Math.min(vertical / 2, piece.height / 4);
  for (let step = 1; step <= STEPS; step++) {
    const by = Math.round((most * step) / STEPS);
    for (const shift of [by, -by]) {
      // A foot that lies higher on the pattern brings the motif lower on the piece.
      const moved = { ...piece, along: { ...along, residue: along.residue + shift } };
      if (fitsAll([...before, { ...moved, group: `${piece.group}/moved` }])) return shift;
    }
  }
  return null;
}
