import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { finding } from "./make.ts";

/** The word under `suits` that a kind of item asks of its cloth. */
const NEEDS: Readonly<Record<string, string>> = {
  curtains: "curtains",
  blind: "blinds",
  cushion: "cushions",
  armchair: "upholstery",
  wallpaper: "walls",
};

/** Martindale cycles usual for upholstery in a home; from memory (common bands), see the makers' own figures. */
const DOMESTIC_MARTINDALE = 20_000;

/** `25000 martindale` as a number of Martindale cycles, or null for another test or no figure. */
export function martindale(text: string | undefined): number | null {
  const found = /([\d., ]+)\s*martindale/i.exec(text ?? "");
  if (!found) return null;
  const value = Number((found[1] as string).replace(/[., ]/g, ""));
  return Number.isFinite(value) && value > 0 ? value : null;
}

/** Fitness: a cloth used for what its card does not name, and upholstery cloth with few rubs. Problems, since they spoil the job. */
export function fitnessFindings(input: FindingInput): Finding[] {
  const uses = input.seen.filter((s) => s.item !== null && s.cloth !== null);
  const done = new Set<string>();
  return uses.flatMap((use): Finding[] => {
    const key = `${use.item} ${use.cloth}`;
    const card = input.cloths.get(use.cloth as string);
    const need = NEEDS[use.kind];
    if (!card || !need || done.has(key) || use.surface === "welt") return [];
    done.add(key);
    const out: Finding[] = [];
    const suits = card.fields.suits;
    if (suits && !suits.some((s) => s === need)) {
      out.push(
        finding(
          input.room,
          "not-suited",
          "problem",
          {
            message: `${card.fields.cloth} is used for ${use.title}, but its card does not name ${need}.`,
            reason: `Its card says that it suits ${suits.join(", ")}. Ask its supplier before it is ordered.`,
          },
          { suits: suits.join(", ") },
          [use.item as string, card.id],
          ["items"],
        ),
      );
    }
    const cycles = martindale(card.fields.rubs);
    if (need === "upholstery" && cycles !== null && cycles < DOMESTIC_MARTINDALE) {
      out.push(
        finding(
          input.room,
          "rubs-low",
          "problem",
          {
            message: `${card.fields.cloth} stands ${cycles} Martindale rubs; for a seat in daily use ${DOMESTIC_MARTINDALE} or more is usual.`,
            reason:
              "A cloth that wears through on a seat is the studio's loss. The bands are common practice, from memory; the supplier's advice goes before them.",
          },
          { rubs: cycles, usual: DOMESTIC_MARTINDALE },
          [use.item as string, card.id],
          ["items"],
        ),
      );
    }
    return out;
  });
}
