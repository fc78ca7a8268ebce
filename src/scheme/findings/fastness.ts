import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { wornUses } from "./fitness.ts";
import { finding } from "./make.ts";

/** Blue wool grades (ISO 105-B02) usual at a window, and elsewhere; common practice, no source. */
export const LEAST_AT_WINDOW = 5;
export const LEAST_ELSEWHERE = 4;

/** A cloth that fades sooner than its place asks: at a window 5 of the blue wool scale, elsewhere 4. */
export function fastnessFindings(input: FindingInput): Finding[] {
  const { say } = input;
  return wornUses(input).flatMap((use): Finding[] => {
    const card = input.cloths.get(use.cloth);
    const grade = card?.fields.light;
    if (!card || grade === undefined) return [];
    const atWindow = input.items.find((i) => i.item === use.item)?.atWindow ?? false;
    const least = atWindow ? LEAST_AT_WINDOW : LEAST_ELSEWHERE;
    if (grade >= least) return [];
    return [
      finding(
        input.room,
        "light-low",
        atWindow && grade < LEAST_ELSEWHERE ? "problem" : "worth-a-look",
        {
          message: atWindow
            ? say`${card.fields.cloth} has grade ${grade} of 8 for light; at the window of ${use.title} ${least} or more is usual.`
            : say`${card.fields.cloth} has grade ${grade} of 8 for light; for ${use.title} ${least} or more is usual.`,
          reason: say`Each grade of the blue wool scale (ISO 105-B02) lasts about twice the one before. Curtains ask for more than seats (common practice); a lining helps.`,
        },
        { light: grade, usual: least },
        [use.item, card.id],
        ["items"],
      ),
    ];
  });
}
