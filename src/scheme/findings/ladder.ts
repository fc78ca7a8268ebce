import { lightReflectance } from "../../colour/luminance.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { CLOSE_RUNGS, type Ladder } from "../ladder.ts";
import { finding, listed } from "./make.ts";

/** Points of light reflectance by which two cloths of one size are told apart by value; borrowed from BS 8300-2:2018 (large areas: 20). */
export const APART_IN_VALUE = 20;

/** Points of light reflectance between the averages of two cloths, or null where one has no colours. */
function valueApart(input: FindingInput, step: Ladder["steps"][number]): number | null {
  const [one, two] = [step.larger, step.smaller].map(
    (r) => input.swatches.get(r.cloth)?.average ?? null,
  );
  return one && two ? Math.abs(lightReflectance(one) - lightReflectance(two)) : null;
}

/** Motif sizes as a ladder: neighbours whose ratio is under 1.5 are hard to tell apart; common practice. */
export function ladderFindings(input: FindingInput): Finding[] {
  const { steps, rungs } = input.ladder;
  const { say, room } = input;
  const { approach } = room.fields;
  if (rungs.length < 2 || approach === "free") return [];
  // In a restrained scheme value tells apart what scale does not.
  const close = steps.filter(
    (s) => s.close && !(approach === "restrained" && (valueApart(input, s) ?? 0) >= APART_IN_VALUE),
  );
  const size = (mm: number): string => printLength(Length.mm(Math.round(mm)), input.units);
  if (close.length === 0) {
    if (steps.some((s) => s.ratio < CLOSE_RUNGS)) return [];
    const least = Math.min(...steps.map((s) => s.ratio));
    return [
      finding(
        room,
        "ladder-holds",
        "works",
        {
          message: say`The motif sizes step down clearly: ${listed(rungs.map((r) => r.name))}, each at least ${least.toFixed(1)} times the next.`,
          reason: say`Sizes that differ by ${CLOSE_RUNGS} times or more read as different (common practice).`,
        },
        { leastRatio: least, rungs: rungs.length },
        rungs.map((r) => r.cloth),
      ),
    ];
  }
  return close.map((s) =>
    finding(
      room,
      "rungs-close",
      "worth-a-look",
      {
        message: say`${s.larger.name} and ${s.smaller.name} are close in size: ${size(s.larger.motifMm)} against ${size(s.smaller.motifMm)}, ${s.ratio.toFixed(1)} times.`,
        reason: say`Motifs under ${CLOSE_RUNGS} times one another look like a mistake side by side (common practice). Keep them apart in the room, or change one.`,
      },
      { ratio: s.ratio, largerMm: s.larger.motifMm, smallerMm: s.smaller.motifMm },
      [s.larger.cloth, s.smaller.cloth],
    ),
  );
}
