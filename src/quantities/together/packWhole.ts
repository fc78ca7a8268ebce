import { Length } from "../../units/length.ts";

/** A length on a bolt: which of the lengths asked for, and how much of it. */
export interface OnBolt {
  readonly at: number;
  readonly length: Length;
}

/** So many lengths are packed in every way that there is; more of them first-fit decreasing. */
const EXACT = 8;

/**
 * Packs lengths whole into bolts of one length, none of them split over two: with as few bolts as can be for up to eight lengths, above
 * that first-fit decreasing, which may take more (at most 11/9 of the fewest and one: Johnson 1974, from memory). A length longer than a
 * bolt can only come in parts: whole bolts of its own, and what is left is packed. Exact; each bolt's lengths in the order asked for.
 */
export function packWhole(lengths: readonly Length[], bolt: Length): readonly OnBolt[][] {
  const whole: OnBolt[][] = [];
  const rest: OnBolt[] = [];
  for (const [at, length] of lengths.entries()) {
    let left = length;
    for (; left.isMoreThan(bolt); left = left.minus(bolt)) whole.push([{ at, length: bolt }]);
    if (!left.isZero()) rest.push({ at, length: left });
  }
  const packed = rest.length <= EXACT ? fewest(rest, bolt) : firstFit(rest, bolt);
  return [...whole, ...packed]
    .map((each) => [...each].sort((a, b) => a.at - b.at))
    .sort((a, b) => (a[0] as OnBolt).at - (b[0] as OnBolt).at);
}

function firstFit(lengths: readonly OnBolt[], bolt: Length): OnBolt[][] {
  const bolts: OnBolt[][] = [];
  const longestFirst = [...lengths].sort((a, b) => b.length.compare(a.length) || a.at - b.at);
  for (const each of longestFirst) {
    const open = bolts.find((own) => !filled([...own, each]).isMoreThan(bolt));
    if (open) open.push(each);
    else bolts.push([each]);
  }
  return bolts;
}

/** For each set of lengths the fewest bolts and, among these, the one that is least full at its end: a length joins it or opens the next. */
function fewest(lengths: readonly OnBolt[], bolt: Length): OnBolt[][] {
  const best: OnBolt[][][] = [[]];
  for (let set = 1; set < 1 << lengths.length; set++) {
    for (const [bit, each] of lengths.entries()) {
      if ((set & (1 << bit)) === 0) continue;
      const before = best[set & ~(1 << bit)] as OnBolt[][];
      const last = before.at(-1);
      const fits = last !== undefined && !filled([...last, each]).isMoreThan(bolt);
      const found = fits ? [...before.slice(0, -1), [...last, each]] : [...before, [each]];
      const known = best[set];
      // Of ways that are as good the later: lengths that were asked for first then lie together on the first bolts.
      if (!known || !isBetter(known, found)) best[set] = found;
    }
  }
  return best[(1 << lengths.length) - 1] as OnBolt[][];
}

function isBetter(found: readonly OnBolt[][], known: readonly OnBolt[][]): boolean {
  if (found.length !== known.length) return found.length < known.length;
  return filled(found.at(-1) ?? []).isLessThan(filled(known.at(-1) ?? []));
}

function filled(lengths: readonly OnBolt[]): Length {
  return Length.sum(lengths.map(({ length }) => length));
}
