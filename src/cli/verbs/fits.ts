import { diagnosticJson } from "../../diagnostics/report.ts";
import { ITEM_KINDS } from "../../items/kinds.ts";
import { commonItemsOf, commonProject } from "../../quantities/commonItems.ts";
import { clothFits } from "../../quantities/fits/clothFits.ts";
import { type FitsAsked, fitsJson, fitsText } from "../../quantities/fits/fitsReport.ts";
import type { RemnantInHand } from "../../quantities/fits/found.ts";
import type { ProjectRecord } from "../../records/records.ts";
import { readLibrary } from "../../site/readLibrary.ts";
import { clothFacts } from "../../swatches/clothFacts.ts";
import { exitOf, type Outcome, UsageError } from "../outcome.ts";

/** What is asked of a remnant: one project or all, and whether the common items are all that is asked. */
export interface FitsScope {
  readonly project: string | null;
  readonly commonOnly: boolean;
}

const EVERYTHING: FitsScope = { project: null, commonOnly: false };

/**
 * What a remnant of a cloth can make of what the rooms need and, where no project is named, of the studio's common items, with the
 * plans that show it.
 */
export async function fits(
  contentDir: string,
  id: string,
  remnant: RemnantInHand,
  scope: FitsScope = EVERYTHING,
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
  const whole = records.projects.filter(
    (project) => !project.broken && (scope.project === null || project.id === scope.project),
  );
  if (scope.project !== null && whole.length === 0) {
    const known = records.projects.map((project) => project.id).join(", ");
    throw new UsageError(
      `There is no project "${scope.project}" that can be read. Projects: ${known}.`,
    );
  }
  const found = (projects: readonly ProjectRecord[]) =>
    clothFits(records, projects, ITEM_KINDS, lookUps, facts, remnant);
  const usual = commonItemsOf(records.studio);
  // Paper and braid make no cushion.
  const isAsked = facts.type === "cloth" && (scope.commonOnly || scope.project === null);
  const common = isAsked ? commonProject(usual.items, id, ITEM_KINDS) : null;
  const asked: FitsAsked = {
    rooms: scope.commonOnly ? null : found(whole),
    common: common ? found([common]) : null,
    isWashed: facts.washing !== undefined,
    ownList: usual.own,
  };
  if (asked.rooms === null && asked.common === null) {
    throw new UsageError(
      facts.usableWidth === null && remnant.width === null
        ? `The card of ${id} gives no width: say how wide the remnant is, --width 54in.`
        : `None of the common items is made of ${facts.name}.`,
    );
  }
  const units = records.studio?.fields.units ?? "inches";
  const json = fitsJson(id, remnant, asked);
  return {
    exit: 0,
    json: { ...(json as object), diagnostics: diagnostics.map(diagnosticJson) },
    text: fitsText(facts.name, remnant, asked, units),
    diagnostics,
  };
}
