import type { Plan, PlanOptions } from "../../src/cutplan/plan.ts";
import { planCuts } from "../../src/cutplan/planCuts.ts";
import { exactLength } from "../cutplan/exact.ts";
import { FAMILIES, type Family, type Room, room } from "../cutplan/rooms.ts";
import { times } from "./cloth/time.ts";

/** Small rooms a family, of which the solver proves 300 and more over all; seconds for each exact answer, large rooms a family and size. */
const SMALL = 70;
const SECONDS = 5;
const LARGE = 5;
const SIZES = [40, 80, 120];
/** Rounds of reading the photograph and of each plan; the least counts. */
const ROUNDS = 3;

/**
 * Prints how good the cutting plans are, by family of invented, seeded rooms: small ones (6 to 10 pieces, start given, no
 * straight cuts asked) against optima proved by HiGHS; large ones (40 to 120 pieces, start chosen) against the lower bound, with
 * and without straight cuts every 2.5 m; the bound against proved optima; the time for a plan with its bound, as a share of the time
 * in which the same machine reads and measures a cloth's photograph. After the name: families to look at (all), and how many small
 * and large rooms of each.
 */
export async function cutting(): Promise<void> {
  const asked = process.argv.slice(3);
  const numbers = asked.filter((each) => /^\d+$/.test(each)).map(Number);
  const names = FAMILIES.filter((family) => asked.includes(family));
  const [rooms = SMALL, many = LARGE] = numbers;
  const photo = (await times(ROUNDS, "soft")).measured;
  console.log("Cutting plans. Excess in per cent, mean / worst.");
  console.log(
    `Time as a share of reading and measuring a photograph of 12 megapixels (${photo.toFixed(0)} ms here), mean / worst.`,
  );
  for (const family of names.length > 0 ? names : FAMILIES) {
    if (rooms > 0) await small(family, rooms, photo);
    if (many > 0) large(family, many, photo);
  }
}

async function small(family: Family, rooms: number, photo: number): Promise<void> {
  const over = new Sample();
  const boundBelow = new Sample();
  const time = new Sample(2);
  let tight = 0;
  let above = 0;
  for (let seed = 1; seed <= rooms; seed++) {
    const one = room(family, seed, 6 + (seed % 5));
    const plan = timed(one, { start: 0, maxBandG: null }, time, photo);
    const exact = await exactLength(one, 0, plan.length, { seconds: SECONDS });
    if (!exact.proved) continue;
    over.add(100 * (plan.length / exact.length - 1));
    const bound = plan.lowerBound;
    boundBelow.add(100 * (exact.length / bound - 1));
    if (bound === exact.length) tight++;
    if (bound > exact.length) above++;
  }
  console.log(
    `${family.padEnd(10)} 6-10 pieces: ${over.count} of ${rooms} proved; plan over optimum ${over}; ` +
      `optimum over bound ${boundBelow}, equal ${tight}, bound above ${above}; time ${time}`,
  );
}

function large(family: Family, rooms: number, photo: number): void {
  const all = new Sample();
  const cost = new Sample();
  for (const size of SIZES) {
    const free = new Sample();
    const straight = new Sample();
    const price = new Sample();
    const saved = new Sample();
    const time = new Sample(2);
    for (let seed = 1; seed <= rooms; seed++) {
      const one = room(family, seed, size);
      const without = planned(one, { maxBandG: null });
      const plan = timed(one, {}, time, photo);
      free.add(100 * (without.length / without.lowerBound - 1));
      all.add(100 * (without.length / without.lowerBound - 1));
      cost.add(100 * (plan.length / without.length - 1));
      straight.add(100 * (plan.length / plan.lowerBound - 1));
      price.add(100 * (plan.length / without.length - 1));
      saved.add(100 * (1 - plan.length / (plan.itemByItem ?? plan.length)));
    }
    console.log(
      `${family.padEnd(10)} ${String(size).padStart(3)} pieces: over bound ${free}; with straight cuts ${straight} ` +
        `(their price ${price}); under item by item ${saved.meanText()}; time ${time}`,
    );
  }
  console.log(`${family.padEnd(10)} all sizes: over bound ${all}; price of straight cuts ${cost}`);
}

function timed(one: Room, options: PlanOptions, time: Sample, photo: number): Plan {
  let least = Number.POSITIVE_INFINITY;
  let plan = planCuts({ ...one, options });
  // As for the photograph, the least of some rounds: the first, not counted, may wait for the compiler.
  for (let round = 1; round < ROUNDS; round++) {
    const from = performance.now();
    plan = planCuts({ ...one, options });
    least = Math.min(least, performance.now() - from);
  }
  time.add(least / photo);
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return plan;
}

function planned(one: Room, options: PlanOptions): Plan {
  const plan = planCuts({ ...one, options });
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return plan;
}

/** Figures of one kind: how many, their mean, the worst. */
class Sample {
  count = 0;
  private sum = 0;
  private worst = 0;

  constructor(private readonly digits = 1) {}

  add(value: number): void {
    this.count++;
    this.sum += value;
    this.worst = Math.max(this.worst, value);
  }

  meanText(): string {
    return (this.sum / Math.max(1, this.count)).toFixed(2);
  }

  toString(): string {
    return `${this.meanText()} / ${this.worst.toFixed(this.digits)}`;
  }
}
