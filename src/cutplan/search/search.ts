import type { Kind } from "../laying/kinds.ts";
import type { Checkpoint, Layout } from "../laying/layout.ts";
import type { Grains } from "../piece.ts";
import type { RandomStream } from "./random.ts";
import { copyOf, type Sequence } from "./sequence.ts";
import { MODE_SHIFT, NEW_BAND, RIGHTWARD, UPWARD } from "./wishes.ts";

/** How good a sequence is: what finds no place, then the length, then the moment. */
export interface Score {
  unplaced: number;
  length: number;
  moment: number;
}

const KICK_AFTER = 150;
/** In annealing a build is given up once it is this much of the length over what could be taken, were its middle no lower. */
const GIVE_UP = 0.003;
/** In annealing: how much twice the middle of the laid cloth counts beside the length. */
const MIDDLE_COUNTS = 0.4;
/** The first heat, as a share of the length that one piece takes on average. */
const HEAT = 0.03;
const CHANCE_BITS = 20;

const GIVEN_UP: Score = { unplaced: 0, length: Number.POSITIVE_INFINITY, moment: 0 };

/** What a layout was after each piece: its two marks, and its length. */
interface Marks {
  readonly first: Int32Array;
  readonly second: Int32Array;
  readonly length: Float64Array;
}

function marksFor(pieces: number): Marks {
  return {
    first: new Int32Array(pieces),
    second: new Int32Array(pieces),
    length: new Float64Array(pieces),
  };
}

/** Local search over sequences on one layout; every build counts against the budget that the caller gives. */
export class Search {
  current: Sequence;
  best: Sequence;
  bestScore: Score;
  private score: Score;
  private trial: Sequence;
  private failures = 0;
  /** The places in the sequence that the last change touched: none outside from the first to the last. */
  private firstTouched = 0;
  private lastTouched = 0;
  /** How many pieces the last build laid before it came back to the current layout, or all. */
  private laid = 0;
  /** The current layout's marks and length after each piece, and the trial's. */
  private keptMarks: Marks;
  private freshMarks: Marks;
  /** The current layout as it stood before every so many pieces, and the trial's, so that a trial begins at its change. */
  private readonly stride: number;
  private readonly kept: Checkpoint[] = [];
  private readonly fresh: Checkpoint[] = [];

  constructor(
    private readonly layout: Layout,
    private readonly kinds: readonly Kind[],
    private readonly random: RandomStream,
    private readonly bandLimit: Grains,
    first: readonly Sequence[],
  ) {
    this.best = first[0] as Sequence;
    const pieces = this.best.kinds.length;
    this.keptMarks = marksFor(pieces);
    this.freshMarks = marksFor(pieces);
    this.stride = Math.max(4, Math.ceil(pieces / 24));
    for (let i = 0; i < pieces; i += this.stride) {
      this.kept.push(layout.checkpoint());
      this.fresh.push(layout.checkpoint());
    }
    this.bestScore = { unplaced: Number.POSITIVE_INFINITY, length: 0, moment: 0 };
    for (const sequence of first) {
      const score = this.build(sequence);
      if (isBetter(score, this.bestScore)) {
        this.best = sequence;
        this.bestScore = score;
      }
    }
    this.best = copyOf(this.best);
    this.current = copyOf(this.best);
    this.trial = copyOf(this.best);
    this.score = this.build(this.current);
    this.keep(0);
  }

  /** Builds a whole sequence. */
  build(sequence: Sequence): Score {
    this.firstTouched = 0;
    this.lastTouched = sequence.kinds.length;
    return this.rebuild(sequence, Number.POSITIVE_INFINITY);
  }

  /**
   * Builds a sequence that differs from the current one where it was touched. Ends as soon as the layout is the current one again,
   * and is of infinite length where it was given up.
   */
  private rebuild(sequence: Sequence, giveUpAt: number): Score {
    const { layout, stride, lastTouched } = this;
    const { kinds, flags, rule } = sequence;
    const { first: a, second: b, length: l } = this.freshMarks;
    const kept = this.keptMarks;
    const from = Math.floor(this.firstTouched / stride);
    layout.set(sequence.start, this.bandLimit);
    if (from === 0) layout.clear();
    else layout.restore(this.kept[from] as Checkpoint);
    for (let i = from * stride; i < kinds.length; i++) {
      if (i % stride === 0 && i > from * stride) layout.save(this.fresh[i / stride] as Checkpoint);
      layout.add(kinds[i] as number, flags[i] as number, rule);
      const { mark, secondMark, length } = layout;
      if (length > giveUpAt) return GIVEN_UP;
      a[i] = mark;
      b[i] = secondMark;
      l[i] = length;
      if (
        i >= lastTouched &&
        mark === kept.first[i] &&
        secondMark === kept.second[i] &&
        length === kept.length[i]
      ) {
        this.laid = i + 1;
        return this.score;
      }
    }
    this.laid = kinds.length;
    return { unplaced: layout.unplacedArea, length: layout.length, moment: layout.moment };
  }

  /** After a build from piece `from` on was taken: its checkpoints and marks are the current ones. */
  private keep(from: number): void {
    const { stride, laid, kept, fresh, keptMarks, freshMarks } = this;
    const first = Math.floor(from / stride);
    for (let c = first + 1; c * stride < laid; c++) {
      const old = kept[c] as Checkpoint;
      kept[c] = fresh[c] as Checkpoint;
      fresh[c] = old;
    }
    for (let i = first * stride; i < laid; i++) {
      keptMarks.first[i] = freshMarks.first[i] as number;
      keptMarks.second[i] = freshMarks.second[i] as number;
      keptMarks.length[i] = freshMarks.length[i] as number;
    }
  }

  /** Climbs: spends `builds` builds, or fewer once the length is down to `target`, and takes what is no worse. */
  climb(builds: number, target: number): void {
    for (let b = 0; b < builds && !this.isDone(target); b++) {
      this.vary(this.next());
      const score = this.rebuild(this.trial, this.limit());
      const level =
        score.unplaced === this.score.unplaced &&
        score.length === this.score.length &&
        score.moment === this.score.moment;
      if (level || isBetter(score, this.score)) {
        if (!level) this.failures = 0;
        this.take(score);
      } else this.failures++;
      if (this.failures >= KICK_AFTER) this.kick();
    }
  }

  /**
   * Simulated annealing (Kirkpatrick, Gelatt and Vecchi 1983): spends builds as `climb` does, and takes what is worse too, with a
   * chance that falls with the loss and, evenly, with the builds spent. It leaves plateaus on which climbing stays.
   */
  anneal(builds: number, target: number): void {
    const area = this.kinds.reduce((sum, kind) => sum + kind.area * kind.count, 0);
    const energy = (score: Score) => score.length + (MIDDLE_COUNTS * 2 * score.moment) / area;
    const hottest = (HEAT * this.bestScore.length) / this.best.kinds.length;
    for (let b = 0; b < builds && !this.isDone(target); b++) {
      this.vary(this.next());
      const allowed = surprise(this.random) * hottest * (1 - b / builds);
      const score = this.rebuild(this.trial, this.limit() + allowed + GIVE_UP * this.score.length);
      if (score === GIVEN_UP) continue;
      const isBelow =
        score.unplaced === this.score.unplaced
          ? energy(score) - energy(this.score) <= allowed
          : score.unplaced < this.score.unplaced;
      if (isBelow) this.take(score);
    }
  }

  private isDone(target: number): boolean {
    return this.bestScore.unplaced === 0 && this.bestScore.length <= target;
  }

  /** The trial, brought level with the current sequence. */
  private next(): Sequence {
    const { trial, current } = this;
    trial.kinds.set(current.kinds);
    trial.flags.set(current.flags);
    trial.rule = current.rule;
    return trial;
  }

  /** Beyond this length a trial is no better. */
  private limit(): number {
    return this.score.unplaced > 0 ? Number.POSITIVE_INFINITY : this.score.length;
  }

  /** Makes the trial, as it was built last, the current sequence. */
  private take(score: Score): void {
    const { trial, current } = this;
    this.keep(this.firstTouched);
    this.score = score;
    this.trial = current;
    this.current = trial;
    if (isBetter(score, this.bestScore)) {
      this.bestScore = score;
      this.best = copyOf(trial);
    }
  }

  private kick(): void {
    this.failures = 0;
    this.current = copyOf(this.best);
    const shakes = 3 + this.random.below(4);
    for (let i = 0; i < shakes; i++) this.vary(this.current);
    if (this.random.below(4) === 0) this.current.rule = this.random.below(3);
    this.trial = copyOf(this.current);
    this.score = this.build(this.current);
    this.keep(0);
  }

  /** One random change: swap, move, gather a kind, or alter a piece's wish. Notes what it touched. */
  private vary(sequence: Sequence): void {
    const { random } = this;
    const { kinds, flags } = sequence;
    const n = kinds.length;
    const i = random.below(n);
    const move = random.below(16);
    let j = i;
    if (move < 10) {
      j = random.below(n);
      if (move < 6) {
        // Swap kinds, not copies.
        for (let tries = 0; tries < 6 && kinds[j] === kinds[i]; tries++) j = random.below(n);
        swap(kinds, i, j);
        swap(flags, i, j);
      } else {
        shift(kinds, i, j);
        shift(flags, i, j);
      }
    } else if (move === 10) {
      j = kinds.lastIndexOf(kinds[i] as number);
      this.firstTouched = gather(sequence, i);
      this.lastTouched = j;
      return;
    } else if (move < 13 || move === 15) {
      flags[i] = (flags[i] as number) ^ RIGHTWARD;
      if (move === 15) flags[i] = (flags[i] as number) ^ UPWARD;
    } else if (move === 13) {
      if (this.bandLimit !== Number.POSITIVE_INFINITY && random.below(2) === 0) {
        flags[i] = (flags[i] as number) ^ NEW_BAND;
      } else flags[i] = (flags[i] as number) ^ UPWARD;
    } else {
      const modes = (this.kinds[kinds[i] as number] as Kind).modes.length;
      const low = (flags[i] as number) & ((1 << MODE_SHIFT) - 1);
      flags[i] = low | (random.below(modes + 1) << MODE_SHIFT);
    }
    this.firstTouched = Math.min(i, j);
    this.lastTouched = Math.max(i, j);
  }
}

export function isBetter(a: Score, b: Score): boolean {
  if (a.unplaced !== b.unplaced) return a.unplaced < b.unplaced;
  if (a.length !== b.length) return a.length < b.length;
  return a.moment < b.moment;
}

/**
 * A random number above 0 with mean about 1, large ones ever less likely: -ln of an even chance. The logarithm runs straight between
 * powers of two, since Math.log may differ in its last digit from machine to machine.
 */
function surprise(random: RandomStream): number {
  const chance = random.below(2 ** CHANCE_BITS) + 1;
  const power = 31 - Math.clz32(chance);
  return Math.LN2 * (CHANCE_BITS - power - (chance / 2 ** power - 1));
}

function swap(list: Int32Array, i: number, j: number): void {
  const held = list[i] as number;
  list[i] = list[j] as number;
  list[j] = held;
}

/** Moves the entry at i to j, the ones between closing up. */
function shift(list: Int32Array, i: number, j: number): void {
  const held = list[i] as number;
  if (i < j) list.copyWithin(i, i + 1, j + 1);
  else list.copyWithin(j + 1, j, i);
  list[j] = held;
}

/** Brings all pieces of the kind at i to stand from its first place on; returns that place. */
function gather(sequence: Sequence, i: number): number {
  const { kinds, flags } = sequence;
  const kind = kinds[i];
  const first = kinds.indexOf(kind as number);
  let to = first;
  for (let from = first; from < kinds.length; from++) {
    if (kinds[from] !== kind) continue;
    shift(kinds, from, to);
    shift(flags, from, to);
    to++;
  }
  return first;
}
