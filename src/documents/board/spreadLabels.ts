/**
 * Where labels stand down a page, millimetres: each as near to where it is wanted as its neighbours allow, in the same order, none
 * nearer to the next than its own height, all between `from` and `to`. Where there are too many for that, they run over `from`.
 */
export function spreadLabels(
  wanted: readonly number[],
  heights: readonly number[],
  from: number,
  to: number,
): number[] {
  const placed: number[] = [];
  let least = from;
  for (const [at, w] of wanted.entries()) {
    placed.push(Math.max(w, least));
    least = (placed[at] as number) + (heights[at] as number);
  }
  let most = to;
  for (let at = placed.length - 1; at >= 0; at--) {
    placed[at] = Math.min(placed[at] as number, most - (heights[at] as number));
    most = placed[at] as number;
  }
  return placed;
}
