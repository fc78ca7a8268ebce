/** Labels that stand without a gap, as one block: how many, what they weigh, and where each would put it, as a weighted sum. */
interface Block {
  readonly first: number;
  readonly count: number;
  readonly weight: number;
  readonly sum: number;
}

/**
 * Where labels stand down a page, millimetres: as near to where they are wanted as can be, in the same order, none nearer to the next
 * than its own height, all between `from` and `to`. Of all such ways the one with the least sum of squared distances, each times its
 * weight (1 where nothing is said): isotonic regression by pooling adjacent violators (Barlow et al., 1972; from memory), and its bounds by clipping. Where there are too many for
 * that, they run over `from`.
 */
export function spreadLabels(
  wanted: readonly number[],
  heights: readonly number[],
  from: number,
  to: number,
  weights: readonly number[] = [],
): number[] {
  const offsets: number[] = [];
  let all = 0;
  for (const height of heights) {
    offsets.push(all);
    all += height;
  }
  const blocks: Block[] = [];
  const middle = (b: Block): number => b.sum / b.weight;
  for (const [at, w] of wanted.entries()) {
    const weight = weights[at] ?? 1;
    let block: Block = { first: at, count: 1, weight, sum: weight * (w - (offsets[at] as number)) };
    for (;;) {
      const last = blocks.at(-1);
      if (!last || middle(last) <= middle(block)) break;
      blocks.pop();
      block = {
        first: last.first,
        count: last.count + block.count,
        weight: last.weight + block.weight,
        sum: last.sum + block.sum,
      };
    }
    blocks.push(block);
  }
  const most = to - all;
  return blocks.flatMap((b) => {
    const start = Math.min(Math.max(middle(b), from), most);
    return Array.from({ length: b.count }, (_, n) => start + (offsets[b.first + n] as number));
  });
}
