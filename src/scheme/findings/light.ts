import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { finding } from "./make.ts";

/**
 * Points of light reflectance between the lightest and darkest of what is seen. Thirty points is what BS 8300-2:2018 asks of
 * adjoining surfaces that must be told apart; here it is borrowed as a measure of contrast, from a photograph, so an estimate.
 */
const SPREAD = 30;

/** Light and dark: whether the room has both, by light reflectance. */
export function lightFindings(input: FindingInput): Finding[] {
  const lrvs = input.palette.colours.map((c) => c.lrv);
  if (lrvs.length < 2 || input.room.fields.approach === "free") return [];
  const spread = Math.max(...lrvs) - Math.min(...lrvs);
  const works = spread >= SPREAD;
  return [
    finding(
      input.room,
      "light-and-dark",
      works ? "works" : "worth-a-look",
      {
        message: works
          ? `The palette runs from light to dark: ${Math.round(Math.min(...lrvs))} to ${Math.round(Math.max(...lrvs))} points of light reflectance.`
          : `The palette is of one lightness: only ${Math.round(spread)} points of light reflectance between its colours.`,
        reason: `Colours that differ by ${SPREAD} points or more are told apart in any light (measure borrowed from BS 8300-2:2018).`,
      },
      { spread },
      [],
      ["colours"],
    ),
  ];
}
