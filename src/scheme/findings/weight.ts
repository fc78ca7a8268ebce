import { gramsPerM2 } from "../cardFigures.ts";
import type { Finding, Level } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { UPHOLSTERED } from "../satOn.ts";
import { wornUses } from "./fitness.ts";
import { finding } from "./make.ts";

/** Usual weights by use, g/m2; from memory. Dress cloth is about 90 to 150, curtain cloth 150 to 350, upholstery 300 to 800 or backed. */
const DRESS_MOST = 150;
const UPHOLSTERY_LEAST = 300;
const CURTAIN_MOST = 350;

interface Said {
  readonly level: Level;
  readonly words: string;
  readonly usual: string;
}

/**
 * What a weight says of a use. Tests go before weight: an upholstery cloth whose card names upholstery or gives its rubs is not held
 * to its weight, unless it is as light as dress cloth.
 */
function judged(
  kind: string,
  grams: number,
  tested: boolean,
  say: FindingInput["say"],
): Said | null {
  if (UPHOLSTERED.has(kind)) {
    if (grams < DRESS_MOST)
      return { level: "problem", words: say`as light as dress cloth`, usual: "300 to 800" };
    return grams < UPHOLSTERY_LEAST && !tested
      ? { level: "worth-a-look", words: say`light for a seat`, usual: "300 to 800" }
      : null;
  }
  if (kind === "curtains" && grams > CURTAIN_MOST)
    return { level: "worth-a-look", words: say`heavy to gather and to hang`, usual: "150 to 350" };
  if (kind === "roller-blind" && grams > CURTAIN_MOST)
    return { level: "worth-a-look", words: say`heavy to roll`, usual: "150 to 350" };
  if (kind === "blind" && grams > CURTAIN_MOST)
    return {
      level: "worth-a-look",
      words: say`heavy for the folds of a blind`,
      usual: "150 to 350",
    };
  return null;
}

/** A cloth whose weight does not suit its use. */
export function weightFindings(input: FindingInput): Finding[] {
  const { say } = input;
  return wornUses(input).flatMap((use): Finding[] => {
    const card = input.cloths.get(use.cloth);
    const grams = gramsPerM2(card?.fields.weight);
    if (!card || grams === null) return [];
    const tested =
      card.fields.rubs !== undefined || card.fields.suits?.includes("upholstery") === true;
    const said = judged(use.kind, grams, tested, say);
    if (!said) return [];
    return [
      finding(
        input.room,
        "weight-unsuited",
        said.level,
        {
          message: say`${card.fields.cloth} weighs ${Math.round(grams)} g/m², ${said.words}: ${use.title}.`,
          reason: say`Usual for this use is ${said.usual} g/m² (common practice, from memory). Its tests say more than its weight: ask the maker, and for what hangs heavy let the fixer choose pole and fixings.`,
        },
        { grams, usual: said.usual },
        [use.item, card.id],
        ["items"],
      ),
    ];
  });
}
