import type { Kind } from "../laying/kinds.ts";
import { Layout, type Strip } from "../laying/layout.ts";
import type { Mode } from "../laying/modes.ts";
import type { Grains } from "../piece.ts";
import { RandomStream } from "./random.ts";
import { isBetter } from "./score.ts";
import { Search } from "./search.ts";
import { firstSequences } from "./sequence.ts";

const MOST_LAID = 60_000;

export interface Found {
  readonly start: Grains;
  readonly length: Grains;
  readonly unplaced: number;
  /** In the order of laying; a null mode is a piece that found no place. */
  readonly laid: readonly { mode: Mode | null; kind: number; x: Grains; y: Grains }[];
}

export interface SearchInput {
  readonly kinds: readonly Kind[];
  readonly usableWidth: Grains;
  readonly vertical: Grains;
  readonly strips: readonly Strip[];
  readonly bandLimit: Grains;
  readonly starts: readonly Grains[];
  readonly builds: number;
  readonly seed: number;
  /** A length that no plan can beat: reaching it ends the search. */
  readonly target: Grains;
  /** True: by annealing, which needs many builds; else by climbing. */
  readonly anneals?: boolean;
}

/** Searches from every start with a share of the budget, drops the worse half, and so on until one start is left. */
export function searchStarts(input: SearchInput): Found {
  const { kinds, starts, target } = input;
  const layout = new Layout(kinds, input.usableWidth, input.vertical, input.strips);
  const random = new RandomStream(input.seed);
  const pieces = kinds.reduce((sum, kind) => sum + kind.count, 0);
  // Thousands of pieces: the first few orders are all that there is time for.
  const orders = Math.max(3, Math.floor(MOST_LAID / pieces));
  let searches = starts.map((start) => {
    const first = firstSequences(kinds, start).slice(0, orders);
    return new Search(layout, kinds, random, input.bandLimit, first);
  });
  const rounds = Math.ceil(Math.log2(starts.length)) + 1;
  const share = Math.floor(input.builds / rounds);
  for (;;) {
    const each = Math.floor(share / searches.length);
    for (const search of searches) {
      if (input.anneals) search.anneal(each, target);
      else search.climb(each, target);
    }
    searches.sort((a, b) =>
      isBetter(a.bestScore, b.bestScore) ? -1 : isBetter(b.bestScore, a.bestScore) ? 1 : 0,
    );
    if (searches.length === 1) break;
    searches = searches.slice(0, Math.ceil(searches.length / 2));
  }
  const best = searches[0] as Search;
  best.rebuildBest();
  const laid = Array.from(best.best.kinds, (kind, i) => ({
    mode: layout.modes[layout.placedMode[i] as number] ?? null,
    kind,
    x: layout.placedX[i] as number,
    y: layout.placedY[i] as number,
  }));
  return { start: best.best.start, length: layout.length, unplaced: layout.unplacedArea, laid };
}
