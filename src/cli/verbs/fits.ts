import { diagnosticJson } from "../../diagnostics/report.ts";
import { ITEM_KINDS } from "../../items/kinds.ts";
import { clothFits, type RemnantInHand } from "../../quantities/clothFits.ts";
import { fitsJson, fitsText } from "../../quantities/fitsReport.ts";
import { readLibrary } from "../../site/readLibrary.ts";
import { clothFacts } from "../../swatches/clothFacts.ts";
import { exitOf, type Outcome, UsageError } from "../outcome.ts";

/** What a remnant of a cloth can make of what the rooms need, with the plans that show it. */
export async function fits(
  contentDir: string,
  id: string,
  remnant: RemnantInHand,
): Promise<Outcome> {
  const { records, swatches, diagnostics } = await readLibrary(contentDir);
  const card = records.cloths.get(id);
  if (!card) {
    if (records.cloths.size === 0)
      return { exit: exitOf(diagnostics) || 1, json: null, text: "", diagnostics };
    const known = [...records.cloths.keys()].sort().join(", ");
    throw new UsageError(`There is no cloth "${id}". Cloths: ${known}.`);
  }
  const lookUps = {
    cloth: (of: string) => {
      const own = records.cloths.get(of);
      return own ? clothFacts(own, swatches.cloths.get(of) ?? null) : null;
    },
    objectColours: (of: string) => (swatches.objects.get(of)?.colours ?? []).map((c) => c.hex),
  };
  const facts = clothFacts(card, swatches.cloths.get(id) ?? null);
  const whole = records.projects.filter((project) => !project.broken);
  const found = clothFits(records, whole, ITEM_KINDS, lookUps, facts, remnant);
  if (found === null) {
    throw new UsageError(
      `The card of ${id} gives no width: say how wide the remnant is, --width 54in.`,
    );
  }
  const units = records.studio?.fields.units ?? "inches";
  const json = fitsJson(id, remnant, found);
  return {
    exit: 0,
    json: { ...(json as object), diagnostics: diagnostics.map(diagnosticJson) },
    text: fitsText(facts.name, remnant, found, units),
    diagnostics,
  };
}
