import type { ClothQuantity, PlannedPiece } from "../../quantities/quantityTypes.ts";

/** Pieces in the order of the cloth: by length, then from its start, then from the left selvedge. */
function inOrder(cloth: ClothQuantity): PlannedPiece[] {
  return [...cloth.plan.pieces].sort(
    (a, b) => a.length - b.length || a.y.compare(b.y) || a.x.compare(b.x),
  );
}

/** The number that each piece bears on the plan and in the cut list, from one in the order of the cloth, by the piece's id. */
export function cutNumbers(cloth: ClothQuantity): ReadonlyMap<string, number> {
  return new Map(inOrder(cloth).map((p, at) => [p.id, at + 1]));
}

/** A line of the cut list: pieces that are alike in all that a cutter must know. */
export interface CutGroup {
  /** `3`, `1 to 6`, `2, 4`, or `3 to 8, 11`. */
  readonly numbers: string;
  readonly words: string;
  readonly pieces: readonly PlannedPiece[];
}

/** Numbers in rising order, three or more that follow each other as a run: `3 to 8, 11, 12`. */
export function numberWords(numbers: readonly number[]): string {
  const runs: number[][] = [];
  for (const n of numbers) {
    const run = runs.at(-1);
    if (run?.at(-1) === n - 1) run.push(n);
    else runs.push([n]);
  }
  return runs
    .map((run) => (run.length > 2 ? `${run[0]} to ${run.at(-1)}` : run.join(", ")))
    .join(", ");
}

/** Pieces of one name, item, surface, size, register and length together: which is which is said here even where the plan is too small for names. */
export function cutGroups(cloth: ClothQuantity): CutGroup[] {
  const numbers = cutNumbers(cloth);
  const groups = new Map<string, PlannedPiece[]>();
  for (const p of inOrder(cloth)) {
    const key = [
      p.room,
      p.item,
      p.surface,
      p.piece,
      p.width.mm.toFraction(),
      p.height.mm.toFraction(),
      p.register?.x?.mm.toFraction() ?? "",
      p.register?.y?.mm.toFraction() ?? "",
      p.turned,
      p.length,
    ].join("|");
    groups.set(key, [...(groups.get(key) ?? []), p]);
  }
  return [...groups.values()].map((pieces) => ({
    numbers: numberWords(pieces.map((p) => numbers.get(p.id) as number)),
    words: (pieces[0] as PlannedPiece).piece,
    pieces,
  }));
}

/**
 * The distances of a line's pieces from the selvedge: once where all are alike, else one for each in the order of their numbers, since
 * two distances for three pieces cannot be cut from.
 */
export function placeWords(each: readonly string[]): string {
  return new Set(each).size === 1 ? (each[0] as string) : each.join(", ");
}
