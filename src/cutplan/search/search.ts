import type { Kind } from "../laying/kinds.ts";
import type { Layout } from "../laying/layout.ts";
import type { Grains } from "../piece.ts";
import { type RandomStream, surprise } from "./random.ts";
import { GIVEN_UP, isBetter, type Score } from "./score.ts";
import { copyOf, type Sequence } from "./sequence.ts";
import { Trials } from "./trials.ts";
import { vary } from "./vary.ts";

const KICK_AFTER = 150;
/** In annealing a build is given up once it is this much of the length over what could be taken, were its middle no lower. */
const GIVE_UP = 0.003;
/** In annealing: how much twice the middle of the laid cloth counts beside the length. */
const MIDDLE_COUNTS = 0.4;
/**
 * In annealing: of a hundred changes of the order, how many stay near, and in bands. Little is laid anew for those. Climbing needs the far
 * ones.
 */
const NEAR_OF_100 = 30;
const NEAR_OF_100_IN_BANDS = 50;
/** The first heat, as a share of the length that one piece takes on average. */
const HEAT = 0.03;
/** In annealing: given up once the middle alone is worse by what could be taken and so many first heats more. */
const MIDDLE_GIVES_UP = 8;
const MIDDLE_GIVES_UP_IN_BANDS = 4;

/** Local search over sequences on one layout; every build counts against the budget that the caller gives. */
export class Search {
  best: Sequence;
  bestScore: Score;
  private current: Sequence;
  private score: Score;
  private trial: Sequence;
  private failures = 0;
  private readonly trials: Trials;
  private readonly touched = { first: 0, last: 0 };
  private readonly limits = { length: 0, moment: Number.POSITIVE_INFINITY };
  private readonly hasBands: boolean;

  constructor(
    layout: Layout,
    private readonly kinds: readonly Kind[],
    private readonly random: RandomStream,
    bandLimit: Grains,
    first: readonly Sequence[],
  ) {
    this.hasBands = bandLimit !== Number.POSITIVE_INFINITY;
    this.best = first[0] as Sequence;
    this.trials = new Trials(layout, this.best.kinds.length, bandLimit);
    this.bestScore = { unplaced: Number.POSITIVE_INFINITY, length: 0, moment: 0 };
    for (const sequence of first) {
      const score = this.trials.build(sequence);
      if (isBetter(score, this.bestScore)) {
        this.best = sequence;
        this.bestScore = score;
      }
    }
    this.best = copyOf(this.best);
    this.current = copyOf(this.best);
    this.trial = copyOf(this.best);
    this.score = this.trials.build(this.current);
    this.trials.keep(0);
  }

  /** Lays the best sequence out again. */
  rebuildBest(): void {
    this.trials.build(this.best);
  }

  /** Climbs: spends `builds` builds, or fewer once the length is down to `target`, and takes what is no worse. */
  climb(builds: number, target: number): void {
    const { limits } = this;
    limits.moment = Number.POSITIVE_INFINITY;
    for (let b = 0; b < builds && !this.isDone(target); b++) {
      limits.length = this.limit();
      const score = this.tryNext(0);
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
    const { limits } = this;
    const area = this.kinds.reduce((sum, kind) => sum + kind.area * kind.count, 0);
    const weight = (MIDDLE_COUNTS * 2) / area;
    const energy = (score: Score) => score.length + weight * score.moment;
    const near = this.hasBands ? NEAR_OF_100_IN_BANDS : NEAR_OF_100;
    const borne = this.hasBands ? MIDDLE_GIVES_UP_IN_BANDS : MIDDLE_GIVES_UP;
    const hottest = (HEAT * this.bestScore.length) / this.best.kinds.length;
    for (let b = 0; b < builds && !this.isDone(target); b++) {
      const allowed = surprise(this.random) * hottest * (1 - b / builds);
      limits.length = this.limit() + allowed + GIVE_UP * this.score.length;
      limits.moment =
        this.score.unplaced > 0 ? Number.POSITIVE_INFINITY : (allowed + borne * hottest) / weight;
      const score = this.tryNext(near);
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

  /** Builds the current sequence with one change, as the trial. */
  private tryNext(nearOf100: number): Score {
    const { trial, current, touched } = this;
    trial.kinds.set(current.kinds);
    trial.flags.set(current.flags);
    trial.rule = current.rule;
    vary(trial, this.kinds, this.random, this.hasBands, nearOf100, touched);
    return this.trials.rebuild(trial, touched, this.limits, this.score);
  }

  /** Beyond this length a trial is no better. */
  private limit(): number {
    return this.score.unplaced > 0 ? Number.POSITIVE_INFINITY : this.score.length;
  }

  /** Makes the trial, as it was built last, the current sequence. */
  private take(score: Score): void {
    const { trial, current } = this;
    this.trials.keep(this.touched.first);
    this.score = score;
    this.trial = current;
    this.current = trial;
    if (isBetter(score, this.bestScore)) {
      this.bestScore = score;
      this.best = copyOf(trial);
    }
  }

  private kick(): void {
    const { random } = this;
    this.failures = 0;
    this.current = copyOf(this.best);
    const shakes = 3 + random.below(4);
    for (let i = 0; i < shakes; i++) {
      vary(this.current, this.kinds, random, this.hasBands, 0, this.touched);
    }
    if (random.below(4) === 0) this.current.rule = random.below(3);
    this.trial = copyOf(this.current);
    this.score = this.trials.build(this.current);
    this.trials.keep(0);
  }
}
