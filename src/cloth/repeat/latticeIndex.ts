/** A condition u * i + v * j = 0 modulo p on whole multiples: every pth point of a lattice. */
export interface Part {
  readonly p: number;
  readonly u: number;
  readonly v: number;
}

/** All parts of index 2 and 3: a repeat that holds two or three cells which are alike. */
export const PARTS: readonly Part[] = [2, 3].flatMap((p) => [
  ...Array.from({ length: p }, (_, v): Part => ({ p, u: 1, v })),
  { p, u: 0, v: 1 },
]);
