import fc from "fast-check";
import { expect, test } from "vitest";
import { BETWEEN, type Block, leavesOf } from "../../src/documents/sheets/leaves.ts";

// How blocks fill pages is the house's own rule: common practice, no source.

const PAGE = 240;
const block = (heightMm: number, more: Partial<Block> = {}): Block => ({ heightMm, ...more });

function takenBy(leaf: readonly Block[]): number {
  return leaf.reduce((sum, b) => sum + b.heightMm, BETWEEN * (leaf.length - 1));
}

test("two small blocks share a page, what stands alone has its own, and order is kept where it costs no page", () => {
  const [a, alone, b, c] = [block(100), block(200, { alone: true }), block(110), block(105)];
  expect(leavesOf([alone, a, b, c], PAGE)).toEqual([[alone], [a, b], [c]]);
  // One that stands between two small ones does not keep them apart.
  expect(leavesOf([a, alone, b], PAGE)).toEqual([[a, b], [alone]]);
  expect(leavesOf([a, alone, b, c], PAGE)).toEqual([[a], [alone], [b, c]]);
});

test("a second page begins the page after the first, and others may stand below it", () => {
  const [first, second, small] = [
    block(240, { alone: true }),
    block(90, { second: true }),
    block(110),
  ];
  const before = block(60);
  expect(leavesOf([before, first, second, small], PAGE)).toEqual([
    [before],
    [first],
    [second, small],
  ]);
});

test("no page is fuller than a page, nothing is lost, and no two neighbouring pages would fit on one", () => {
  const height = fc.integer({ min: 20, max: 230 });
  fc.assert(
    fc.property(fc.array(height, { maxLength: 24 }), (heights) => {
      const blocks = heights.map((mm) => block(mm));
      const leaves = leavesOf(blocks, PAGE);
      expect(new Set(leaves.flat())).toEqual(new Set(blocks));
      for (const leaf of leaves) expect(takenBy(leaf)).toBeLessThanOrEqual(PAGE);
      leaves.slice(1).forEach((leaf, at) => {
        const both = takenBy([...(leaves[at] as Block[]), ...leaf]);
        expect(both).toBeGreaterThan(PAGE);
      });
    }),
  );
});
