import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { CLOSE_RUNGS } from "../ladder.ts";
import { finding, listed } from "./make.ts";

/** Motif sizes as a ladder: neighbours whose ratio is under 1.5 are hard to tell apart; common practice. */
export function ladderFindings(input: FindingInput): Finding[] {
  const { steps, rungs } = input.ladder;
  if (rungs.length < 2 || input.room.fields.approach === "free") return [];
  const close = steps.filter((s) => s.close);
  if (close.length === 0) {
    const least = Math.min(...steps.map((s) => s.ratio));
    return [
      finding(
        input.room,
        "ladder-holds",
        "works",
        {
          message: `The motif sizes step down clearly: ${listed(rungs.map((r) => r.name))}, each at least ${least.toFixed(1)} times the next.`,
          reason: `Sizes that differ by ${CLOSE_RUNGS} times or more read as different (common practice).`,
        },
        { leastRatio: least, rungs: rungs.length },
        rungs.map((r) => r.cloth),
      ),
    ];
  }
  return close.map((s) =>
    finding(
      input.room,
      "rungs-close",
      "worth-a-look",
      {
        message: `${s.larger.name} and ${s.smaller.name} are close in size: ${Math.round(s.larger.motifMm)} mm against ${Math.round(s.smaller.motifMm)} mm, ${s.ratio.toFixed(1)} times.`,
        reason: `Motifs under ${CLOSE_RUNGS} times one another look like a mistake side by side (common practice). Keep them apart in the room, or change one.`,
      },
      {
        ratio: s.ratio,
        largerMm: s.larger.motifMm,
        smallerMm: s.smaller.motifMm,
      },
      [s.larger.cloth, s.smaller.cloth],
    ),
  );
}
