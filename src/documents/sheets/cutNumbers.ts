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
  /** `3`, `1 to 6`, or `2, 4`. */
  readonly numbers: string;
  readonly words: string;
  readonly pieces: readonly PlannedPiece[];
}

function numberWords(numbers: readonly number[]): string {
  const run = numbers.every((n, at) => at === 0 || n === (numbers[at - 1] as number) + 1);
  const first = numbers[0] as number;
  return numbers.length > 2 && run ? `${first} to ${numbers.at(-1)}` : numbers.join(", ");
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
