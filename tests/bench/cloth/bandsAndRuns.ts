import { bandsOfTile, isSequence } from "./bandTruth.ts";
import { LEVELS } from "./damage.ts";
import { offBy, sizeOf, tryOn } from "./repeat.ts";
import { runsOfTile } from "./runsTruth.ts";
import { drawingsOf, furtherDrawingsOf, type Half, subjectOf } from "./subjects.ts";

/** Traditions whose bands are read off the drawing: stripes, and checks that are the same both ways. */
const BANDED = new Set(
  "ticking acrossStripe awning pinstripe blanket acrossBlanket tartan gingham buffalo tattersall".split(
    " ",
  ),
);

type Count = (key: string, right: boolean) => void;

/** Sequences of bands, and which way a pattern runs, on photographs whose repeat was found; each only where it is told. */
export async function bandsAndRuns(
  half: Half,
  firstSeed: number,
  shots: readonly number[],
  every: number,
  count: Count,
): Promise<void> {
  const own = [...drawingsOf(half), ...furtherDrawingsOf(half)].filter(
    ({ origin }) => origin === "own",
  );
  for (const [n, { drawing, origin }] of own.entries()) {
    if (n % every !== 0) continue;
    const subject = await subjectOf(drawing, origin);
    const { truth } = subject;
    const isBanded = BANDED.has(drawing.name.split("-")[1] ?? "");
    const bands = isBanded ? bandsOfTile(subject.tile, drawing) : null;
    const runs =
      !isBanded && truth.form === "lattice" ? runsOfTile(subject.tile, truth.basis) : null;
    if (bands === null && runs === null) continue;
    for (const level of LEVELS) {
      for (const i of shots) {
        const trial = await tryOn(subject, level, firstSeed + 1000 * n + i, sizeOf(subject, i));
        const { pattern } = trial.measure;
        if (offBy(pattern.repeat, trial.truth) > 0.02) continue;
        if (bands) {
          count(`bands told ${level}`, pattern.bands.length > 0);
          if (pattern.bands.length > 0)
            count(
              `bands ${level}`,
              pattern.bands.every((one) => isSequence(one, bands)),
            );
        }
        if (runs === null) continue;
        count(`runs told ${level}`, pattern.runs !== null);
        if (pattern.runs !== null) count(`runs ${level}`, pattern.runs === runs);
      }
    }
  }
}
