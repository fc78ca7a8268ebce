import type { Kind } from "../laying/kinds.ts";
import type { Grains } from "../piece.ts";
import { LOWEST_FOOT, LOWEST_TOP, TIGHTEST } from "./wishes.ts";

/** What the search varies: the order of the kinds, a wish for each piece, the rule of choice, the pattern point of the start. */
export interface Sequence {
  kinds: Int32Array;
  flags: Int32Array;
  rule: number;
  start: Grains;
}

export function copyOf(sequence: Sequence): Sequence {
  return {
    kinds: sequence.kinds.slice(),
    flags: sequence.flags.slice(),
    rule: sequence.rule,
    start: sequence.start,
  };
}

/** Six sort orders by three rules: full widths and tall pieces first among them. */
export function firstSequences(kinds: readonly Kind[], start: Grains): Sequence[] {
  const width = (k: number) => (kinds[k] as Kind).piece.width;
  const height = (k: number) => (kinds[k] as Kind).piece.height;
  const area = (k: number) => (kinds[k] as Kind).area;
  const ties = (k: number) => ((kinds[k] as Kind).piece.along.rule === "register" ? 1 : 0);
  const by: ((k: number) => number)[][] = [
    [ties, height, width],
    [width, height],
    [area, height],
    [height, width],
    [ties, width, height],
    [(k) => Math.max(width(k), height(k)), area],
  ];
  return by.flatMap((keys) => {
    const order = kinds.map((_, k) => k);
    order.sort((a, b) => {
      for (const key of keys) if (key(a) !== key(b)) return key(b) - key(a);
      return a - b;
    });
    const sorted = Int32Array.from(
      order.flatMap((k) => new Array<number>((kinds[k] as Kind).count).fill(k)),
    );
    return [LOWEST_TOP, LOWEST_FOOT, TIGHTEST].map((rule) => ({
      kinds: sorted.slice(),
      flags: new Int32Array(sorted.length),
      rule,
      start,
    }));
  });
}
