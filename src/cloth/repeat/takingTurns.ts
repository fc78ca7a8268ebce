import type { BandLine } from "./bandLine.ts";

/** Whether the bands of a supposed period take turns with others that are nearly like them. */
export interface Turns {
  /** Supposed periods that make one repeat: 1 where all are alike, 2 where every second is. */
  readonly times: number;
  /** Whether they do is open: the light, or too few of them, leave it so. */
  readonly doubtful: boolean;
}

/** Periods on that a line is compared with itself, at most. */
const MOST = 12;
/** Part of a period that must overlap to compare anything. */
const OVERLAP = 0.45;
/** Whole numbers of periods that may make one repeat: weavers put in another colour every second, third or fourth time. */
const TIMES = [2, 3, 4] as const;
/** Difference, as `differences` counts it, that bands have which take turns; and under which nobody sees one. */
const TURNS = 0.02;
const ALIKE = 0.01;
/** Part of the difference that is left where a turn comes round, at most: of one round, and of the mean of more. */
const ONE_ROUND = 0.38;
const MORE_ROUNDS = 0.5;
/** So much left is no doubt; less than this is taking turns without doubt. */
const NONE = 0.7;
const PLAIN = 0.3;
/** Bands that differ by this are in doubt, whatever makes them differ; by less, where no third is seen to judge by. */
const UNLIKE = 0.08;
const UNLIKE_OF_TWO = 0.04;

/**
 * Whether the bands of a line take turns. Where every second stands otherwise the line is less like itself one period on than
 * two, and so on in turn; where all are alike it is never more like itself further on, since light and folds change with the way.
 * The limits were tried on photographs of made cloths (tests/bench).
 */
export function turnsOf(line: BandLine, periodPx: number): Turns {
  const found = differences(line, periodPx);
  const rounds = TIMES.map((q) => ({ q, ...comingRound(found, q) }));
  const taking = rounds
    .filter(
      ({ q, off, part, count }) =>
        off > TURNS && found.length > q && part < (count > 1 ? MORE_ROUNDS : ONE_ROUND),
    )
    .sort((one, other) => one.part - other.part)[0];
  if (taking) {
    const { doubtful } = turnsOf(line, taking.q * periodPx);
    return { times: taking.q, doubtful: doubtful || taking.part > PLAIN };
  }
  const isOpen = (found[0] ?? 1) > (found.length < 2 ? UNLIKE_OF_TWO : UNLIKE);
  const may = rounds.some(
    ({ off, part, before, first }) =>
      (off > ALIKE && part < NONE) || (before > ALIKE && first < NONE),
  );
  return { times: 1, doubtful: isOpen || may };
}

/** How different a line is from itself between whole rounds, and when a round is whole. */
interface Rounds {
  /** Least difference between rounds, and the part of it that is left where a round is whole: the means of all rounds. */
  readonly off: number;
  readonly part: number;
  readonly count: number;
  /** The same before and at the end of the first round alone, which light and folds change least. */
  readonly before: number;
  readonly first: number;
}

/** The rounds of `q` periods; `found` holds the difference one period on, two and so on. */
function comingRound(found: readonly number[], q: number): Rounds {
  const before = Math.min(...found.slice(0, q - 1));
  let [on, off, count] = [0, 0, 0];
  for (let m = q; m <= found.length; m += q) {
    on += found[m - 1] as number;
    // Before and after the mth.
    off += Math.min(...found.slice(m - q, m - 1), ...found.slice(m, m + 1));
    count++;
  }
  if (count === 0) return { off: 0, part: 1, count, before: 0, first: 1 };
  const first = (found[q - 1] as number) / Math.max(before, 1e-12);
  return { off: off / count, part: on / Math.max(off, 1e-12), count, before, first };
}

/**
 * Mean square difference of a line from itself one period on, two and so on, over twice its variance: nought where it is the
 * same, one where it has nothing in common. A shift is moved a little where that fits better, as cloth gives.
 */
export function differences(line: BandLine, periodPx: number, most = MOST): number[] {
  const { length } = line;
  // What changes over more than two periods is light and shade.
  const level = line.channels.map((channel) => lessMean(channel, 2 * periodPx));
  let all = 1e-12;
  for (const channel of level) for (const v of channel) all += (2 * v * v) / length;
  const found: number[] = [];
  for (let m = 1; m <= most; m++) {
    const shift = m * periodPx;
    if (length - shift < OVERLAP * periodPx) break;
    let best = Number.POSITIVE_INFINITY;
    for (let d = -1.5; d <= 1.5; d += 0.25) best = Math.min(best, differenceAt(level, shift + d));
    found.push(best / all);
  }
  return found;
}

/** Mean square difference from itself so many places on, linear between places. */
function differenceAt(channels: readonly Float64Array[], shift: number): number {
  const whole = Math.floor(shift);
  const part = shift - whole;
  let [sum, n] = [0, 0];
  for (const channel of channels) {
    n = channel.length - whole - 1;
    for (let k = 0; k < n; k++) {
      const [one, two] = [channel[k + whole] as number, channel[k + whole + 1] as number];
      sum += ((channel[k] as number) - (1 - part) * one - part * two) ** 2;
    }
  }
  return n > 0 ? sum / n : Number.POSITIVE_INFINITY;
}

/** Less the mean over some places about each; near the ends over what is there. */
function lessMean(values: Float64Array, over: number): Float64Array {
  const half = Math.round(over / 2);
  const sums = new Float64Array(values.length + 1);
  for (let k = 0; k < values.length; k++) sums[k + 1] = (sums[k] as number) + (values[k] as number);
  return values.map((v, k) => {
    const [from, to] = [Math.max(0, k - half), Math.min(values.length, k + half + 1)];
    return v - ((sums[to] as number) - (sums[from] as number)) / (to - from);
  });
}
