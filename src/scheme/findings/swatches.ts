import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { finding } from "./make.ts";

/** What the cards and photographs say of themselves: no photograph yet, a card and its photograph that differ, an animal marking. */
export function swatchFindings(input: FindingInput): Finding[] {
  const { say } = input;
  const free = input.room.fields.approach === "free";
  return input.roles.flatMap((role): Finding[] => {
    const swatch = input.swatches.get(role.cloth);
    if (!swatch) return [];
    const out: Finding[] = [];
    if (!swatch.photo) {
      out.push(
        finding(
          input.room,
          "no-photograph",
          "worth-a-look",
          {
            message: say`${swatch.name} has no photograph yet.`,
            reason: say`Colours, motif size and its place on the boards rest on the card alone.`,
          },
          {},
          [role.cloth],
        ),
      );
    }
    for (const d of swatch.disagreements) {
      out.push(
        finding(
          input.room,
          "card-and-photo-differ",
          "worth-a-look",
          {
            message: say`The card of ${swatch.name} says ${d.what} ${d.declared}, its photograph ${d.measured}.`,
            reason: say`The card's value is used. Measure the sample and correct whichever is wrong.`,
          },
          { declared: d.declared, measured: d.measured },
          [role.cloth],
        ),
      );
    }
    if (swatch.animal && !free) {
      out.push(
        finding(
          input.room,
          "animal-marking",
          "works",
          {
            message: say`${swatch.name} is an animal marking: neutral in colour, busy in pattern.`,
            reason: say`It goes with any palette, but counts as a pattern where it touches another (common practice).`,
          },
          { busyness: swatch.busyness ?? 0 },
          [role.cloth],
        ),
      );
    }
    return out;
  });
}
