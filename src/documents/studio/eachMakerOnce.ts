/**
 * Uses of one trim with its makers together, in the order in which each first stands, and each named before its first use alone: the column is
 * narrow, and a braid may go on twenty things.
 */
export function eachMakerOnce<U extends { readonly maker: string }>(uses: readonly U[]): U[] {
  const makers = [...new Set(uses.map((use) => use.maker))];
  return makers.flatMap((maker) =>
    uses
      .filter((use) => use.maker === maker)
      .map((use, at) => (at === 0 ? use : { ...use, maker: "" })),
  );
}
