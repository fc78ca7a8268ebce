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

/** What all the names begin with, at a comma: `left curtain, width 1 of 3` and `left curtain, width 2 of 3` are `left curtain`. */
function commonName(names: readonly string[]): string {
  const parts = names.map((n) => n.split(", "));
  const first = parts[0] as string[];
  const same = first.filter(
    (word, at) =>
      parts.every((p) => p[at] === word) &&
      first.slice(0, at).every((w, i) => parts.every((p) => p[i] === w)),
  );
  return same.length > 0 ? same.join(", ") : first.join(", ");
}

/** Pieces of one item, surface, size and register together; the plan tells by number which is which. */
export function cutGroups(cloth: ClothQuantity): CutGroup[] {
  const numbers = cutNumbers(cloth);
  const groups = new Map<string, PlannedPiece[]>();
  for (const p of inOrder(cloth)) {
    const key = [
      p.room,
      p.item,
      p.surface,
      p.width.mm.toFraction(),
      p.height.mm.toFraction(),
      p.register?.x?.mm.toFraction() ?? "",
      p.register?.y?.mm.toFraction() ?? "",
      p.turned,
    ].join("|");
    groups.set(key, [...(groups.get(key) ?? []), p]);
  }
  return [...groups.values()].map((pieces) => ({
    numbers: numberWords(pieces.map((p) => numbers.get(p.id) as number)),
    words: commonName(pieces.map((p) => p.piece)),
    pieces,
  }));
}
