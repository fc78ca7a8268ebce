import { layingOf, shownMm } from "../../swatches/period.ts";
import { isPlain, type Swatch } from "../../swatches/swatch.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { finding } from "./make.ts";

/** What a pattern's photograph leaves unseen, in a sentence; null for a plain, and where it shows a whole repeat. */
function shownInPart(swatch: Swatch, { say, units }: FindingInput): string | null {
  if (!swatch.photo || isPlain(swatch) || layingOf(swatch) === "whole") return null;
  const shown = shownMm(swatch.photo);
  const size = (mm: number): string => printLength(Length.mm(Math.round(mm)), units);
  if (!shown) return say`Nobody has said how much of ${swatch.name} its photograph shows.`;
  const { period } = swatch;
  if (!period)
    return say`The photograph of ${swatch.name} shows ${size(shown.across)} by ${size(shown.up)}; how its pattern repeats across and up is not known.`;
  const short = [
    period.upMm !== null && period.upMm > shown.up
      ? say`${size(shown.up)} of a repeat of ${size(period.upMm)} up`
      : null,
    period.acrossMm !== null && period.acrossMm > shown.across
      ? say`${size(shown.across)} of a repeat of ${size(period.acrossMm)} across`
      : null,
  ].filter((t) => t !== null);
  return say`The photograph of ${swatch.name} shows only ${short.join(say` and `)}.`;
}

/** What the cards and photographs say of themselves: no photograph yet, one that shows too little, a card and its photograph that differ, an animal marking. */
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
    const part = shownInPart(swatch, input);
    if (part) {
      out.push(
        finding(
          input.room,
          "photo-shows-part",
          "worth-a-look",
          {
            message: part,
            reason: say`It is never repeated where it cannot be: the boards show it as far as it goes, the drawings its average colour where too little is known. A photograph held square that shows one whole repeat and a little more mends it.`,
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
