import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ClothFacts } from "../items/itemKind.ts";
import type { ProjectRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import type { UnitSystem } from "../units/printLength.ts";
import type { ClothGroup } from "./clothGroups.ts";
import { clothText } from "./clothText.ts";
import { type PlannedCloth, plannedCloth } from "./cutPieces.ts";
import { grainsDown, lengthOfGrains } from "./grains.ts";
import { type GroupPlan, planGroup } from "./planGroup.ts";
import { type ArrivedLot, arrivedLots, factsOnArrival, lengthsAtHand } from "./receiptsFor.ts";

/** The plan on the cloth that has arrived; without a plan, nothing has, or no one lot is enough, which is said. */
export interface Arrival {
  readonly plan: GroupPlan | null;
  readonly lot: string | null;
  readonly facts: ClothFacts | null;
  readonly cloth: PlannedCloth | null;
  readonly diagnostics: readonly Diagnostic[];
}

const NOTHING: Arrival = { plan: null, lot: null, facts: null, cloth: null, diagnostics: [] };

/** Plans again on what arrived, lot by lot, the longest first: pieces of one maker are never cut from two lots unasked. */
export function planOnArrival(
  group: ClothGroup,
  facts: ClothFacts,
  context: { readonly units: UnitSystem; readonly shared: (cloth: string) => boolean },
  project: ProjectRecord,
): Arrival {
  const shared = context.shared(group.cloth);
  const lots = arrivedLots(project, group.cloth, group.maker, shared);
  const unsaid = shared ? whoseIsIt(group.cloth, facts, project) : [];
  if (lots.length === 0 || group.cuts.length === 0) return { ...NOTHING, diagnostics: unsaid };
  let shortest: Length | null = null;
  for (const lot of lots) {
    const arrived = factsOnArrival(facts, lot, project);
    const width = arrived.facts.usableWidth as Length;
    const cloth = plannedCloth(arrived.facts, width, grainsDown(width));
    const free = planGroup({ cloth, cuts: group.cuts, maxLength: null });
    if (!free.run || free.problems.length > 0) continue;
    const needed = lengthOfGrains(free.run.plan.length + (cloth.pattern?.vertical ?? 0));
    shortest = shortest === null ? needed : Length.min(shortest, needed);
    const lengths = lengthsAtHand(lot, cloth, free.run.plan.start);
    const plan = planGroup({
      cloth,
      cuts: group.cuts,
      maxLength: null,
      lengths,
      choices: free.choices,
    });
    if (plan.run && plan.problems.length === 0) {
      return {
        plan: { ...plan, unchosen: null },
        lot: lot.lot,
        facts: arrived.facts,
        cloth,
        diagnostics: arrived.diagnostics,
      };
    }
  }
  return { ...NOTHING, diagnostics: [notEnough(lots, facts, shortest, project, context.units)] };
}

/** Receipts of a cloth that several makers cut, which do not say to whom they went. */
function whoseIsIt(cloth: string, facts: ClothFacts, project: ProjectRecord): Diagnostic[] {
  return (project.fields.receipts ?? []).flatMap((receipt, index) =>
    receipt.cloth !== cloth || receipt.maker !== undefined
      ? []
      : [
          diagnostic(
            project.place(["receipts", index]),
            "receipt-without-maker",
            `More than one maker cuts ${facts.name}, and this receipt does not say to whom it went.`,
            {
              severity: "warning",
              hint: "Add maker: … to it, one receipt for each. Until then it is not planned on.",
            },
          ),
        ],
  );
}

function notEnough(
  lots: readonly ArrivedLot[],
  facts: ClothFacts,
  needed: Length | null,
  project: ProjectRecord,
  units: UnitSystem,
): Diagnostic {
  const first = lots[0] as ArrivedLot;
  const came = lots
    .map((lot) => `${clothText(lot.length, units, "down")} of lot ${lot.lot}`)
    .join(", ");
  return diagnostic(
    project.place(["receipts", first.receipts[0]?.index ?? 0]),
    "received-not-enough",
    `What arrived of ${facts.name} does not hold its pieces: ${came}${needed ? `; about ${clothText(needed, units)} of one lot is needed, with a repeat for where the pattern begins` : ""}.`,
    {
      severity: "warning",
      hint:
        lots.length > 1
          ? "Lots differ in colour: ask the supplier for one lot, or give each maker its own by `maker` in the receipt."
          : "Order more of the same lot before anything is cut, or make an item smaller. Flaws and the arrived width count too.",
    },
  );
}
