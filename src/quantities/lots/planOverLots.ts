import { type Diagnostic, hasErrors } from "../../diagnostics/diagnostic.ts";
import type { ClothFacts } from "../../items/itemKind.ts";
import type { ProjectRecord } from "../../records/records.ts";
import { Length } from "../../units/length.ts";
import {
  type ArrivedLot,
  factsOnArrival,
  lengthsAtHand,
  lotOf,
  sameMeasures,
} from "../arrival/receiptsFor.ts";
import type { ClothGroup } from "../clothGroups.ts";
import { cutKey, type PlannedCloth, piecesOf, plannedCloth, type RoomCut } from "../cutPieces.ts";
import { grainsDown } from "../grains.ts";
import { joinParts } from "../joinParts.ts";
import { type GroupPlan, planGroup } from "../planGroup.ts";
import type { LotUse } from "../quantityTypes.ts";
import { divideOverLots } from "./divideOverLots.ts";

export interface OverLots {
  readonly plan: GroupPlan;
  readonly lots: readonly LotUse[];
  readonly facts: ClothFacts;
  readonly cloth: PlannedCloth;
  readonly receipts: readonly number[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * A plan over several lots, none of which holds everything: each room from one lot, or, where that cannot be, one room divided by its
 * items. All are planned at the narrowest width; only lots of one repeat go together. Null where no division is found.
 */
export function planOverLots(
  group: ClothGroup,
  facts: ClothFacts,
  arrived: readonly ArrivedLot[],
  remade: (group: ClothGroup, facts: ClothFacts) => ClothGroup,
  project: ProjectRecord,
): OverLots | null {
  const lots = ofOneRepeat(arrived, facts);
  if (lots.length < 2) return null;
  const asOne = lotOf(
    (lots[0] as ArrivedLot).lot,
    lots.flatMap(({ receipts }) => receipts),
  );
  const came = factsOnArrival(facts, asOne, project).facts;
  const width = came.usableWidth as Length;
  const cloth = plannedCloth(came, width, grainsDown(width));
  const vertical = cloth.pattern?.vertical ?? 0;
  const now = sameMeasures(facts, came) ? group : remade(group, came);
  if (now.users.some(({ item }) => hasErrors(item.made.diagnostics))) return null;
  const all = planGroup({ cloth, cuts: now.cuts, maxLength: null });
  if (!all.run || all.problems.length > 0) return null;
  const areaOfCut = (cut: RoomCut) => leastArea(cut, cloth);
  // What would be planned without limits does not hang on the lot: it is made once.
  const freely = new Map<string, GroupPlan>();
  const onLot = (lot: ArrivedLot, cuts: readonly RoomCut[]): GroupPlan | null => {
    const key = cuts.map(cutKey).join("\n");
    const free = freely.get(key) ?? planGroup({ cloth, cuts, maxLength: null });
    freely.set(key, free);
    if (!free.run) return null;
    const plan = planGroup({
      cloth,
      cuts,
      maxLength: null,
      lengths: lengthsAtHand(lot, cloth, free.run.plan.start),
      choices: free.choices,
    });
    const isHeld = plan.run !== null && plan.problems.length + plan.unplaced.length === 0;
    return isHeld ? plan : null;
  };
  const areaOfLot = (lot: ArrivedLot) => grainsDown(lot.length) * cloth.usableWidthG;
  const parts = divideOverLots(now.cuts, lots, { onLot, areaOfLot, areaOfCut });
  if (!parts) return null;
  const { lowerBound } = all.run.plan;
  const area = [...all.run.pieces.values()].reduce(
    (sum, { piece }) => sum + piece.width * piece.height,
    0,
  );
  const byArea = Math.ceil(area / cloth.usableWidthG);
  // Lengths laid end to end in register lose less than a repeat at each join, however the rooms are divided.
  const joined = joinParts(parts, (lengths) =>
    Math.max(byArea, lowerBound - (lengths - 1) * vertical),
  );
  const used = parts.map(({ lot }) => lot);
  return {
    ...joined,
    facts: came,
    cloth,
    receipts: used.flatMap(({ receipts }) => receipts.map(({ index }) => index)),
    diagnostics: used.flatMap((lot) => factsOnArrival(facts, lot, project).diagnostics),
  };
}

/** The area of a cut's pieces, in square grains: of the rectangles that it may be, the least. */
function leastArea(cut: RoomCut, cloth: PlannedCloth): number {
  const areas = [-1, ...(cut.cut.instead ?? []).keys()].map((at) => {
    const choices = { phases: new Map(), instead: new Map([[cutKey(cut), at]]) };
    return piecesOf(cut, cloth, choices).reduce(
      (sum, { piece }) => sum + piece.width * piece.height,
      0,
    );
  });
  return Math.min(...areas);
}

/** The lots that came with one and the same repeat: of several repeats the one with most cloth. */
function ofOneRepeat(lots: readonly ArrivedLot[], facts: ClothFacts): readonly ArrivedLot[] {
  const repeatOf = (lot: ArrivedLot) =>
    facts.repeat ? (lot.repeat ?? facts.repeat.up).mm.toFraction() : "";
  const repeats = [...new Set(lots.map(repeatOf))];
  const classes = repeats.map((repeat) => lots.filter((lot) => repeatOf(lot) === repeat));
  const total = (each: readonly ArrivedLot[]) => Length.sum(each.map(({ length }) => length));
  return classes.reduce((best, each) => (total(each).isMoreThan(total(best)) ? each : best));
}
