/** Something that stands whole on a page of a maker's sheet. */
export interface Block {
  /** About how tall it is, millimetres. */
  readonly heightMm: number;
  /** Nothing stands on its page with it. */
  readonly alone?: boolean;
  /** It goes on with what stood before it: it begins the next page. */
  readonly second?: boolean;
}

/** Whether a block begins a page, or follows another on it. */
export interface Standing {
  readonly begins: boolean;
  readonly follows: boolean;
}

interface Leaf<B> {
  readonly blocks: B[];
  leftMm: number;
}

/** Between two blocks on a page: the space, and the heavy rule in it, millimetres (as in the style sheet). */
export const BETWEEN = 11;

/** Blocks laid on pages in their order; `find` says on which of the pages begun a block goes, or that it begins a new one. */
function laid<B extends Block>(
  blocks: readonly B[],
  pageMm: number,
  find: (open: readonly Leaf<B>[], takes: number) => Leaf<B> | undefined,
): Leaf<B>[] {
  const leaves: Leaf<B>[] = [];
  for (const block of blocks) {
    const takes = block.heightMm + BETWEEN;
    const page = block.alone || block.second ? undefined : find(leaves, takes);
    if (page) {
      page.blocks.push(block);
      page.leftMm -= takes;
    } else {
      // What is taller than a page goes on over the next, and where it ends there is not known well enough.
      leaves.push({ blocks: [block], leftMm: block.alone ? 0 : pageMm - block.heightMm });
    }
  }
  return leaves;
}

/**
 * Blocks that never break, on as few pages as they need: each on the page before it where that has room; where fewer pages are needed
 * so, each on the first page that has.
 */
export function leavesOf<B extends Block>(blocks: readonly B[], pageMm: number): B[][] {
  const inOrder = laid(blocks, pageMm, (open, takes) =>
    open.slice(-1).find((leaf) => leaf.leftMm >= takes),
  );
  const firstFit = laid(blocks, pageMm, (open, takes) => open.find((leaf) => leaf.leftMm >= takes));
  const best = firstFit.length < inOrder.length ? firstFit : inOrder;
  return best.map((leaf) => leaf.blocks);
}
