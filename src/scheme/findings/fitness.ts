import { martindale, wyzenbeek } from "../cardFigures.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { UPHOLSTERED } from "../satOn.ts";
import type { ClothUse } from "../schemeInput.ts";
import { finding } from "./make.ts";

/**
 * The words under `suits` of which a kind of item asks one; the first is its own, the others are cloths that are usual for it too
 * (common practice, no source): a coverlet is often made of curtain cloth, a throw or a cushion of what covers a chair.
 */
const NEEDS: Readonly<Record<string, readonly [string, ...string[]]>> = {
  curtains: ["curtains"],
  pelmet: ["curtains"],
  valance: ["curtains"],
  tieback: ["curtains"],
  blind: ["blinds"],
  "roller-blind": ["blinds"],
  cushion: ["cushions", "upholstery"],
  ...Object.fromEntries([...UPHOLSTERED].map((kind): [string, [string]] => [kind, ["upholstery"]])),
  "seat-pad": ["cushions", "upholstery"],
  wallpaper: ["walls"],
  coverlet: ["bedding", "curtains"],
  "bed-skirt": ["bedding", "curtains"],
  runner: ["bedding", "curtains", "cushions", "upholstery"],
  throw: ["bedding", "cushions", "upholstery", "loose-covers"],
  tablecloth: ["table-linen"],
  "table-skirt": ["table-linen", "curtains"],
  lampshade: ["lampshades", "curtains", "blinds"],
};

/** What a loose cover asks for: cloth sold for it, or any that stands up to a fixed one. */
const LOOSE: readonly [string, ...string[]] = ["loose-covers", "upholstery"];

/** Martindale cycles (ISO 12947) usual for upholstery in a home: the guideline for private spaces of the Association for Contract Textiles. */
export const LEAST_MARTINDALE = 20_000;
/** Wyzenbeek double rubs (ASTM D4157) of the same guideline. The two tests do not convert into each other. */
export const LEAST_WYZENBEEK = 15_000;

/** The cloths that show and wear of each item, each once: a lining suits whatever it lines, a platform lies under the mattress, a welt follows its cover. */
export function wornUses(input: FindingInput): ClothUse[] {
  const hidden = new Set(["welt", "lining", "interlining", "trim", "platform"]);
  const done = new Set<string>();
  return input.uses.filter((use) => {
    const key = `${use.item} ${use.cloth}`;
    if (hidden.has(use.surface) || done.has(key)) return false;
    done.add(key);
    return true;
  });
}

/** True where a cloth stands the rubs of a seat: either test's figure is enough; null where the card gives neither. */
export function standsRubs(rubs: string | undefined): boolean | null {
  const one = martindale(rubs);
  const other = wyzenbeek(rubs);
  if (one === null && other === null) return null;
  return (one ?? 0) >= LEAST_MARTINDALE || (other ?? 0) >= LEAST_WYZENBEEK;
}

/** Fitness: a cloth used for what its card does not name, and upholstery cloth with few rubs. Problems, since they spoil the job. */
export function fitnessFindings(input: FindingInput): Finding[] {
  const { say } = input;
  return wornUses(input).flatMap((use): Finding[] => {
    const card = input.cloths.get(use.cloth);
    const isLoose = input.items.some((each) => each.item === use.item && each.isLoose);
    const needs = isLoose ? LOOSE : NEEDS[use.kind];
    if (!card || !needs) return [];
    const [need] = needs;
    const out: Finding[] = [];
    const suits = card.fields.suits;
    if (suits && !suits.some((s) => needs.includes(s))) {
      out.push(
        finding(
          input.room,
          "not-suited",
          "problem",
          {
            message: say`${card.fields.cloth} is used for ${use.title}, but its card does not name ${need}.`,
            reason: say`Its card says that it suits ${suits.join(", ")}. Ask its supplier before it is ordered.`,
          },
          { suits: suits.join(", ") },
          [use.item, card.id],
          ["items"],
        ),
      );
    }
    if ((need === "upholstery" || isLoose) && standsRubs(card.fields.rubs) === false) {
      const cycles = martindale(card.fields.rubs);
      const double = wyzenbeek(card.fields.rubs);
      const said =
        cycles === null
          ? say`${double ?? 0} Wyzenbeek double rubs`
          : say`${cycles} Martindale rubs`;
      out.push(
        finding(
          input.room,
          "rubs-low",
          "problem",
          {
            message: say`${card.fields.cloth} stands ${said}; on ${use.title} ${cycles === null ? LEAST_WYZENBEEK : LEAST_MARTINDALE} or more is usual.`,
            reason: say`The guideline of the Association for Contract Textiles for private spaces: 20000 Martindale cycles or 15000 Wyzenbeek double rubs. Take the figure as a band; the supplier's advice goes before it.`,
          },
          {
            rubs: cycles ?? double ?? 0,
            usual: cycles === null ? LEAST_WYZENBEEK : LEAST_MARTINDALE,
          },
          [use.item, card.id],
          ["items"],
        ),
      );
    }
    return out;
  });
}
