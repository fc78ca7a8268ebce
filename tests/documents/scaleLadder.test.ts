import { expect, test } from "vitest";
import { ladderSvg } from "../../src/documents/board/scaleLadder.ts";
import type { PictureBook } from "../../src/documents/pictures/pictureBook.ts";
import type { Ladder } from "../../src/scheme/ladder.ts";

// A reader can divide what stands below two motifs and get the ratio between them: the house's own rule, common practice, no source.

/** A measure of the page in inches: `2<tspan class="frac">7/8</tspan>″`. */
function inches(text: string): number {
  const [, whole, up, down] = /^(\d+)?\s?(?:<tspan[^>]*>(\d+)\/(\d+)<\/tspan>)?/.exec(text) ?? [];
  return Number(whole ?? 0) + (up ? Number(up) / Number(down) : 0);
}

test("the ratio between two motifs is that of the sizes that are printed below them", () => {
  const motifs = [6.625, 4, 2.875, 2.25, 1.875].map((inch) => inch * 25.4);
  const rungs = motifs.map((motifMm, at) => ({ cloth: `c${at}`, motifMm }));
  const steps = rungs.slice(1).map((smaller, at) => ({
    larger: rungs[at],
    smaller,
    ratio: (motifs[at] as number) / smaller.motifMm,
  }));
  const ladder = { rungs, steps } as unknown as Ladder;
  const book = {} as PictureBook;
  const svg = ladderSvg(ladder, new Map(), 250, 30, 330, 4, book, "inches", "t", new Set());
  const sizes = [...svg.matchAll(/font-size="3.5">(\d.*?)<\/text>/g)].map((m) =>
    inches(m[1] ?? ""),
  );
  const ratios = [...svg.matchAll(/>×([\d.]+)<\/text>/g)].map((m) => m[1]);
  expect(sizes).toEqual([6.625, 4, 2.875, 2.25, 1.875]);
  expect(ratios).toEqual(
    sizes.slice(1).map((size, at) => ((sizes[at] as number) / size).toFixed(1)),
  );
});
