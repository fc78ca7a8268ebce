/** A page's text height on letter, millimetres, less what an estimate may be wrong by; and the gap between blocks. */
const PAGE_MM = 238;
const GAP_MM = 9;

/**
 * Blocks that never break, in an order in which fewer pages are left half empty: each goes on the first page begun that has room for
 * it, and pages stand in the order in which they were begun. Heights in millimetres; a block taller than a page begins its own.
 */
export function packed<B extends { readonly heightMm: number }>(blocks: readonly B[]): B[] {
  const pages: { left: number; blocks: B[] }[] = [];
  for (const block of blocks) {
    const page = pages.find((p) => p.left >= block.heightMm + GAP_MM);
    if (page) {
      page.blocks.push(block);
      page.left -= block.heightMm + GAP_MM;
    } else pages.push({ left: PAGE_MM - (block.heightMm % PAGE_MM), blocks: [block] });
  }
  return pages.flatMap((page) => page.blocks);
}
