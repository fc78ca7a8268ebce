import { bandsAndRuns } from "./cloth/bandsAndRuns.ts";
import { LEVELS } from "./cloth/damage.ts";
import {
  accentCloth,
  meanDifference,
  nearestTo,
  neutralError,
  ours,
  steadyIn,
  twoShots,
} from "./cloth/palettes.ts";
import { plainKMeans, QUANTISERS } from "./cloth/quantisers.ts";
import { kindOf, offBy, sizeOf, type Trial, tryOn } from "./cloth/repeat.ts";
import {
  drawingsOf,
  furtherDrawingsOf,
  type Half,
  nearlyDrawingsOf,
  subjectOf,
} from "./cloth/subjects.ts";
import { times } from "./cloth/time.ts";
import { told } from "./options.ts";

/** A palette's accent is recalled within this CIEDE2000. */
const RECALLED = 6;

/** Width of a photograph much larger than what is measured of it, which a bench can still make in a second. */
const TELEPHONE_PX = 1920;

const text = { type: "string" } as const;
const OPTIONS = {
  only: text,
  shots: text,
  from: text,
  cloths: text,
  every: text,
  verbose: { type: "boolean" },
} as const;

/** Which photographs of a tile and level, and which tiles; verbose where what is wrong is named beside the figures. */
interface Run {
  readonly shots: readonly number[];
  readonly every: number;
  readonly verbose: boolean;
}

/**
 * Measures the measuring: `npm run bench -- cloth [tuning|held-out] [--only repeat|nearly|kind|bands|palette|time] [--shots N] [--from N] [--cloths N] [--every N] [--verbose]`.
 * Photographs with known truth are made from seeds: of outside tiles and of our own drawings, by half, of which the one for trying
 * limits is never the one reported. `--shots` photographs of each tile and level, beginning `--from` the Nth, so that runs beside each
 * other measure others; `--cloths` for the palettes, every Nth tile alone for a quick look.
 */
export async function cloth(): Promise<void> {
  const said = told(OPTIONS);
  const half: Half = said.words.includes("tuning") ? "tuning" : "held-out";
  const seed = half === "tuning" ? 1 : 1_000_001;
  console.log(`Measured cloth, ${half} tiles and seeds.`);
  const from = said.number("from", 0);
  const run: Run = {
    shots: Array.from({ length: said.number("shots", 6) }, (_, i) => from + i),
    every: said.number("every", 1),
    verbose: said.flag("verbose"),
  };
  const only = said.text("only");
  const asked = (part: string) => only === null || only === part;
  if (asked("repeat")) await patterns(drawingsOf(half), seed, run);
  if (asked("nearly")) await patterns(nearlyDrawingsOf(half), seed, run);
  if (asked("kind")) await kinds(half, seed, run);
  if (asked("bands")) await bands(half, seed, run);
  if (asked("palette")) await colours(half, seed, said.number("cloths", 60));
  if (asked("time")) await time();
}

function row(what: string, goal: string, figure: string): void {
  console.log(`${what.padEnd(52)} goal ${goal.padEnd(16)} ${figure}`);
}

const percent = (part: number, of: number) =>
  of > 0 ? `${((100 * part) / of).toFixed(1)} % of ${of}` : "none";

async function patterns(
  all: ReturnType<typeof drawingsOf>,
  firstSeed: number,
  { shots, every, verbose }: Run,
): Promise<void> {
  const tally = new Map<string, { right: number; all: number }>();
  const count = (key: string, right: boolean) => {
    const t = tally.get(key) ?? { right: 0, all: 0 };
    t.all++;
    if (right) t.right++;
    tally.set(key, t);
  };
  const drawings = all.filter((_, i) => i % every === 0);
  for (const [n, { drawing, origin }] of drawings.entries()) {
    const subject = await subjectOf(drawing, origin);
    if (subject.truth.form === "doubtful") continue;
    for (const level of LEVELS) {
      for (const i of shots) {
        const trial = await tryOn(subject, level, firstSeed + 1000 * n + i, sizeOf(subject, i));
        judge(trial, count, verbose);
      }
    }
    if (verbose) process.stderr.write(`${n + 1} of ${drawings.length}\n`);
  }
  const at = (key: string) => {
    const { right, all } = tally.get(key) ?? { right: 0, all: 0 };
    return percent(right, all);
  };
  for (const [level, goal] of [
    ["clean", "99 %"],
    ["photo", "97 %"],
    ["hard", "92 %"],
  ] as const) {
    row(
      `repeat within 1 %, ${level}`,
      goal,
      `${at(`repeat ${level}`)} (own ${at(`own ${level}`)}, outside ${at(`outside ${level}`)})`,
    );
    row(`  given as sure, ${level}`, "-", at(`claimed ${level}`));
  }
  row("of sure answers, right", "99.5 % of 2000", at("sure"));
  row("stripe direction within 1.5 degrees, all levels", "100 %", at("direction"));
}

function judge(trial: Trial, count: (key: string, right: boolean) => void, verbose: boolean): void {
  const { subject, level, measure } = trial;
  const { repeat, directionDeg } = measure.pattern;
  const form = subject.truth.form;
  const right = offBy(repeat, trial.truth) < 0.01;
  if (form !== "none") {
    count(`repeat ${level}`, right);
    count(`${subject.origin} ${level}`, right);
    count(`claimed ${level}`, repeat?.sure === true);
  }
  // A repeat that is sure of a cloth that has none is wrong.
  if (repeat?.sure) {
    count("sure", form !== "none" && right);
    // What is sure and wrong is the worst that can be: it is named, so that it can be looked at.
    if (verbose && (form === "none" || !right))
      process.stderr.write(`sure and wrong: ${subject.name}, ${level}, seed ${trial.seed}\n`);
  }
  if (trial.directionDeg !== null) {
    const off = Math.abs((directionDeg ?? 999) - trial.directionDeg);
    count("direction", Math.min(off, Math.abs(180 - off)) < 1.5);
  }
}

/** Kinds as they are found on photographs, by kind and origin, and how often those given as sure are right. */
async function kinds(half: Half, firstSeed: number, { shots, every, verbose }: Run): Promise<void> {
  const tally = new Map<string, { right: number; all: number }>();
  const misses = new Map<string, number>();
  const count = (key: string, right: boolean) => {
    const t = tally.get(key) ?? { right: 0, all: 0 };
    tally.set(key, { right: t.right + (right ? 1 : 0), all: t.all + 1 });
  };
  const named = [...drawingsOf(half), ...furtherDrawingsOf(half)].filter(
    ({ drawing }) => drawing.kind !== null,
  );
  for (const [n, { drawing, origin }] of named.entries()) {
    if (n % every !== 0) continue;
    const subject = await subjectOf(drawing, origin);
    for (const i of shots) {
      const trial = await tryOn(subject, "photo", firstSeed + 1000 * n + i, sizeOf(subject, i));
      const kind = kindOf(trial) ?? "";
      const { confirm, pattern } = trial.measure;
      const right = pattern.kind === kind;
      for (const key of ["all", origin, `as ${kind}`, `as ${kind}, ${origin}`]) count(key, right);
      const sure = !confirm.some(({ what }) => what === "pattern.kind");
      if (sure) for (const key of ["sure", `sure ${origin}`]) count(key, right);
      if (right) continue;
      const miss = `${drawing.name.replace(/-[0-9]+$/, "")}: ${kind} for ${pattern.kind}`;
      misses.set(miss, (misses.get(miss) ?? 0) + 1);
    }
  }
  const at = (key: string) => percent(tally.get(key)?.right ?? 0, tally.get(key)?.all ?? 0);
  row("kind of eight, photo", "95 %", `${at("all")} (own ${at("own")}, outside ${at("outside")})`);
  row("  given as sure and right", "-", `${at("sure")} (outside ${at("sure outside")})`);
  for (const key of [...tally.keys()].filter((k) => k.startsWith("as ")).sort())
    row(`  ${key.slice(3)}`, "-", at(key));
  if (verbose)
    for (const [miss, times] of [...misses].sort((a, b) => b[1] - a[1]))
      process.stderr.write(`${times} x ${miss}\n`);
}

/** How often bands and the way that a pattern runs are told, and are then right. */
async function bands(half: Half, firstSeed: number, { shots, every }: Run): Promise<void> {
  const tally = new Map<string, { right: number; all: number }>();
  await bandsAndRuns(half, firstSeed, shots, every, (key, right) => {
    const t = tally.get(key) ?? { right: 0, all: 0 };
    tally.set(key, { right: t.right + (right ? 1 : 0), all: t.all + 1 });
  });
  const at = (key: string) => percent(tally.get(key)?.right ?? 0, tally.get(key)?.all ?? 0);
  for (const [what, name] of [
    ["bands", "sequence of bands, widths within 2 %"],
    ["runs", "the same upside down, or one-way"],
  ]) {
    for (const level of LEVELS) {
      row(`${name}, ${level}: right`, "-", at(`${what} ${level}`));
      row(`  told, ${level}`, "-", at(`${what} told ${level}`));
    }
  }
}

async function colours(half: Half, firstSeed: number, cloths: number): Promise<void> {
  const rivals: typeof QUANTISERS = {
    ours: (pixels) => ours(pixels, 6),
    "plain k-means in Oklab": (pixels) => plainKMeans(pixels, 6),
    ...QUANTISERS,
  };
  const sums = new Map(
    Object.keys(rivals).map((name) => [name, { difference: 0, accents: 0, ms: [] as number[] }]),
  );
  const neutral = { warm: 0, cool: 0 };
  const accents = { steady: 0, pictures: 0 };
  for (let i = 0; i < cloths; i++) {
    const one = await accentCloth(firstSeed + i);
    for (const [name, quantiser] of Object.entries(rivals)) {
      const sum = sums.get(name);
      if (!sum) continue;
      const from = performance.now();
      const found = await quantiser(one.pixels, 6);
      sum.ms.push(performance.now() - from);
      sum.difference += meanDifference(one.pixels, found);
      if (nearestTo(one.accent, found) < RECALLED) sum.accents++;
    }
    neutral.warm += (await neutralError(firstSeed + i, "warm")) / cloths;
    neutral.cool += (await neutralError(firstSeed + i, "cool")) / cloths;
    const again = await accentCloth(firstSeed + i, 77);
    const found = steadyIn(one.pixels, again.pixels);
    accents.steady += found.steady;
    accents.pictures += found.pictures;
  }
  // Small, as files that are sent about are, and nearer to what a telephone takes, its noise and blocks much finer than what is measured.
  const sizes = [400, TELEPHONE_PX].map((width) => ({ width, steady: 0, pictures: 0 }));
  const drawings = drawingsOf(half).filter(({ origin }) => origin === "own");
  // As many drawings as cloths, of all traditions.
  const every = Math.max(1, Math.floor(drawings.length / cloths));
  for (const [n, { drawing }] of drawings.entries()) {
    if (n % every !== 0) continue;
    for (const size of sizes) {
      const found = steadyIn(...(await twoShots(drawing, firstSeed + n, size.width)));
      size.steady += found.steady;
      size.pictures += found.pictures;
    }
  }
  for (const [name, { difference, accents: recalled, ms }] of sums) {
    row(
      `palette of six, ${name}`,
      name === "ours" ? "least; 95 %" : "-",
      `mean CIEDE2000 ${(difference / cloths).toFixed(2)}; accents ${percent(recalled, cloths)}; ${median(ms).toFixed(0)} ms`,
    );
  }
  row(
    "colours with a white card, warm / cool light",
    "3 / 3",
    `${neutral.warm.toFixed(2)} / ${neutral.cool.toFixed(2)}`,
  );
  row(
    "steady after other grain, a crop, a half turn",
    "100 %",
    [
      percent(accents.steady, accents.pictures),
      ...sizes.map(
        (size) => `own drawings on ${size.width} px ${percent(size.steady, size.pictures)}`,
      ),
    ].join("; "),
  );
}

const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

async function time(): Promise<void> {
  for (const sharpness of ["soft", "sharp"] as const) {
    const { sharpFull, sharpShort, read, measured, palettes } = await times(20, sharpness);
    row(
      `time of all measures of 12 megapixels, ${sharpness}`,
      "1.6",
      `${(measured / sharpFull).toFixed(2)} of sharp's full decode and resize (${sharpFull.toFixed(0)} ms), ` +
        `${(measured / sharpShort).toFixed(2)} of its short cut (${sharpShort.toFixed(0)} ms); reading alone ${(read / sharpFull).toFixed(2)}`,
    );
    row(
      `palette of six of 12 megapixels from the file, ${sharpness}`,
      "fastest",
      [...palettes].map(([name, ms]) => `${name} ${ms.toFixed(0)} ms`).join(", "),
    );
  }
}
