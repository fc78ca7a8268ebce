import { Length } from "../../units/length.ts";

/** A blind's folds: the drop less the headrail in an odd number of equal sections. */
export interface Sections {
  readonly sections: number;
  /** Height of one section, and of the flap at the foot. */
  readonly section: Length;
  readonly rods: number;
  /** Of each rod above the hem. */
  readonly rodHeights: readonly Length[];
  /** From the top edge down to the top rod: two sections and the headrail; it means nothing where there is no rod. */
  readonly topRodFromTop: Length;
  /** How far the raised blind hangs down: one section and the headrail. */
  readonly stackDepth: Length;
  /** False where no odd number gives a section inside the wanted range. */
  readonly wanted: boolean;
}

/** The same drop in a given odd number of sections: rods = (n − 1) / 2, two sections apart, the first one section up. */
export function partSections(
  drop: Length,
  headrail: Length,
  sections: number,
  wanted = true,
): Sections {
  if (sections % 2 !== 1 || sections < 1) throw new Error(`Sections must be odd, not ${sections}`);
  const section = drop.minus(headrail).dividedBy(sections);
  const rods = (sections - 1) / 2;
  return {
    sections,
    section,
    rods,
    rodHeights: Array.from({ length: rods }, (_, at) => section.times(2 * at + 1)),
    topRodFromTop: section.times(2).plus(headrail),
    stackDepth: section.plus(headrail),
    wanted,
  };
}

/**
 * The odd number of sections whose height lies in the wanted range and nearest its middle; where none does, the nearest of all.
 */
export function chooseSections(
  drop: Length,
  headrail: Length,
  least: Length,
  most: Length,
): Sections {
  const folded = drop.minus(headrail);
  const middle = least.plus(most).dividedBy(2);
  const wantedOf = (n: number) => {
    const height = folded.dividedBy(n);
    return !height.isLessThan(least) && !height.isMoreThan(most);
  };
  const away = (n: number) => {
    const gap = folded.dividedBy(n).minus(middle);
    return gap.isNegative() ? Length.zero.minus(gap) : gap;
  };
  const about = Math.max(1, folded.over(middle).round().valueOf());
  const odd = about % 2 === 1 ? about : about + 1;
  const tries = [odd - 2, odd, odd + 2].filter((n) => n >= 1);
  const best = tries.reduce((a, b) => (away(b).isLessThan(away(a)) ? b : a));
  return partSections(drop, headrail, best, wantedOf(best));
}
