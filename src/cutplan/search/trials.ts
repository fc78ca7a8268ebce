import type { Checkpoint, Layout } from "../laying/layout.ts";
import type { Grains } from "../piece.ts";
import { GIVEN_UP, type Score } from "./score.ts";
import type { Sequence } from "./sequence.ts";
import type { Touched } from "./vary.ts";

/** Checkpoints a sequence, and the fewest pieces from one to the next. */
const CHECKPOINTS = 24;
const LEAST_STRIDE = 4;

/** When a trial is given up: beyond this length, or with its moment so much over the current one's once what it changed is laid. */
export interface Limits {
  length: number;
  moment: number;
}

/** What a layout was after each piece: its two marks, its length and its moment. */
class Course {
  readonly first: Int32Array;
  readonly second: Int32Array;
  readonly length: Float64Array;
  readonly moment: Float64Array;

  constructor(pieces: number) {
    this.first = new Int32Array(pieces);
    this.second = new Int32Array(pieces);
    this.length = new Float64Array(pieces);
    this.moment = new Float64Array(pieces);
  }
}

/**
 * Builds sequences that differ little from a current one. Each begins at the last checkpoint before the difference, and ends as soon as
 * its layout is the current one again.
 */
export class Trials {
  /** How many pieces the last trial laid before it came back to the current layout, or all. */
  private laid = 0;
  private readonly current: Course;
  private readonly trial: Course;
  /** The current layout as it stood before every so many pieces, and the trial's. */
  private readonly stride: number;
  private readonly kept: Checkpoint[] = [];
  private readonly fresh: Checkpoint[] = [];

  constructor(
    private readonly layout: Layout,
    private readonly pieces: number,
    private readonly bandLimit: Grains,
  ) {
    this.current = new Course(pieces);
    this.trial = new Course(pieces);
    this.stride = Math.max(LEAST_STRIDE, Math.ceil(pieces / CHECKPOINTS));
    for (let i = 0; i < pieces; i += this.stride) {
      this.kept.push(layout.checkpoint());
      this.fresh.push(layout.checkpoint());
    }
  }

  /** Builds a whole sequence. */
  build(sequence: Sequence): Score {
    const limits = { length: Number.POSITIVE_INFINITY, moment: Number.POSITIVE_INFINITY };
    return this.rebuild(sequence, { first: 0, last: this.pieces }, limits, GIVEN_UP);
  }

  /** Builds a sequence that differs from the current one, of score `score`, where it was touched; GIVEN_UP beyond the limits. */
  rebuild(sequence: Sequence, touched: Touched, limits: Limits, score: Score): Score {
    const { layout, stride, pieces } = this;
    const { kinds, flags, rule } = sequence;
    const { first: a, second: b, length: l, moment: m } = this.trial;
    const old = this.current;
    const last = touched.last;
    const from = Math.floor(touched.first / stride);
    layout.set(sequence.start, this.bandLimit);
    if (from === 0) layout.clear();
    else layout.restore(this.kept[from] as Checkpoint);
    for (let i = from * stride; i < pieces; i++) {
      if (i % stride === 0 && i > from * stride) layout.save(this.fresh[i / stride] as Checkpoint);
      layout.add(kinds[i] as number, flags[i] as number, rule);
      const { length, moment } = layout;
      const { first, second } = layout.mark;
      if (length > limits.length) return GIVEN_UP;
      a[i] = first;
      b[i] = second;
      l[i] = length;
      m[i] = moment;
      if (i < last) continue;
      if (first === old.first[i] && second === old.second[i] && length === old.length[i]) {
        this.laid = i + 1;
        return score;
      }
      // The same pieces lie higher than before: what follows seldom makes it good.
      if (moment - (old.moment[i] as number) > limits.moment) return GIVEN_UP;
    }
    this.laid = pieces;
    return { unplaced: layout.unplacedArea, length: layout.length, moment: layout.moment };
  }

  /** After a build from piece `from` on was taken: it is the current one. */
  keep(from: number): void {
    const { stride, laid, kept, fresh, current, trial } = this;
    const first = Math.floor(from / stride);
    for (let c = first + 1; c * stride < laid; c++) {
      const old = kept[c] as Checkpoint;
      kept[c] = fresh[c] as Checkpoint;
      fresh[c] = old;
    }
    for (let i = first * stride; i < laid; i++) {
      current.first[i] = trial.first[i] as number;
      current.second[i] = trial.second[i] as number;
      current.length[i] = trial.length[i] as number;
      current.moment[i] = trial.moment[i] as number;
    }
  }
}
