/** How good a sequence is: what finds no place, then the length, then the moment. */
export interface Score {
  readonly unplaced: number;
  readonly length: number;
  readonly moment: number;
}

/** The score of a sequence that was not built to its end. */
export const GIVEN_UP: Score = { unplaced: 0, length: Number.POSITIVE_INFINITY, moment: 0 };

export function isBetter(a: Score, b: Score): boolean {
  if (a.unplaced !== b.unplaced) return a.unplaced < b.unplaced;
  if (a.length !== b.length) return a.length < b.length;
  return a.moment < b.moment;
}
