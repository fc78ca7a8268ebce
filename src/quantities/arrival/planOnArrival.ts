import { type Diagnostic, diagnostic, hasErrors } from "../../diagnostics/diagnostic.ts";
import type { ClothFacts } from "../../items/itemKind.ts";
import type { ProjectRecord } from "../../records/records.ts";
import { Length } from "../../units/length.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import { beforeWashing } from "../../units/washing.ts";
import type { ClothGroup } from "../clothGroups.ts";
import { type PlannedCloth, plannedCloth, type RoomCut } from "../cutPieces.ts";
import { grainsDown, lengthOfGrains } from "../grains.ts";
import { planOverLots } from "../lots/planOverLots.ts";
import { roomsShort } from "../lots/roomsShort.ts";
import { type GroupPlan, planGroup } from "../planGroup.ts";
import type { LotUse } from "../quantityTypes.ts";
import { clothText } from "../text/clothText.ts";
import { flawFaults, repeatFaults } from "./receiptFaults.ts";
import {
  type ArrivedLot,
  arrivedLots,
  clearOf,
  factsOnArrival,
  lengthsAtHand,
  sameMeasures,
} from "./receiptsFor.ts";
import { asWashed } from "./washed.ts";

/** The plan on the cloth that has arrived; without a plan, nothing has, or no one lot is enough, which is said. */
export interface Arrival {
  readonly plan: GroupPlan | null;
  readonly lots: readonly LotUse[];
  readonly facts: ClothFacts | null;
  readonly cloth: PlannedCloth | null;
  /** The receipts of the lots that are planned on; of all lots where they are not enough. */
  readonly receipts: readonly number[];
  /** True where something came, enough or not. */
  readonly came: boolean;
  readonly diagnostics: readonly Diagnostic[];
}

export interface ArrivalContext {
  readonly units: UnitSystem;
  readonly shared: (cloth: string) => boolean;
  /** The same group with its items worked out anew on the cloth as it came. */
  readonly remade: (group: ClothGroup, facts: ClothFacts) => ClothGroup;
}

/** One lot tried: its plan, or what does not fit on it. */
interface Tried {
  readonly lot: ArrivedLot;
  readonly plan: GroupPlan | null;
  readonly facts: ClothFacts;
  readonly cloth: PlannedCloth | null;
  readonly diagnostics: readonly Diagnostic[];
  readonly needed: Length | null;
  readonly misfits: readonly string[];
}

/**
 * Plans again on what arrived, lot by lot, the longest first. Only where no lot holds all that a maker cuts is it divided over several:
 * room by room, as `planOverLots` says.
 */
export function planOnArrival(
  group: ClothGroup,
  facts: ClothFacts,
  context: ArrivalContext,
  project: ProjectRecord,
): Arrival {
  const shared = context.shared(group.cloth);
  const asCame = arrivedLots(project, group.cloth, group.maker, shared);
  const lots = asCame.map((lot) => asWashed(lot, facts));
  const unsaid = shared ? whoseIsIt(group.cloth, facts, project) : [];
  const nothing = { plan: null, lots: [], facts: null, cloth: null, receipts: [] };
  if (lots.length === 0 || group.cuts.length === 0)
    return { ...nothing, came: lots.length > 0, diagnostics: unsaid };
  const faults = [
    ...(facts.repeat ? repeatFaults(project, lots, facts.name) : []),
    ...asCame.flatMap((lot) =>
      lot.receipts.flatMap(({ index }) =>
        flawFaults(project, index, facts.name, lot.width ?? widthAsItCame(facts)),
      ),
    ),
  ];
  const failed: Tried[] = [];
  for (const lot of lots) {
    const tried = tryLot(lot, group, facts, context, project);
    if (!tried.plan) {
      failed.push(tried);
      continue;
    }
    return {
      plan: tried.plan,
      lots: [wholeLot(lot.lot, tried.plan)],
      facts: tried.facts,
      cloth: tried.cloth,
      receipts: lot.receipts.map(({ index }) => index),
      came: true,
      diagnostics: [...faults, ...tried.diagnostics],
    };
  }
  const over = planOverLots(group, facts, lots, context.remade, project);
  if (over) return { ...over, came: true, diagnostics: [...faults, ...over.diagnostics] };
  return {
    ...nothing,
    receipts: failed.flatMap(({ lot }) => lot.receipts.map(({ index }) => index)),
    came: true,
    diagnostics: [
      ...faults,
      ...(failed[0] as Tried).diagnostics,
      notEnough(failed, group, facts, project, context.units),
    ],
  };
}

/** The widest that a cloth may be when it comes; where it is washed first, before that. */
function widthAsItCame({ usableWidth, washing }: ClothFacts): Length | null {
  return usableWidth && washing ? beforeWashing(usableWidth, washing.across) : usableWidth;
}

/** Everything from one lot. */
function wholeLot(lot: string, { run }: GroupPlan): LotUse {
  const pieces = [...(run?.pieces.values() ?? [])].map(({ from }) => from);
  const rooms = [...new Set(pieces.map(({ room }) => room))];
  return {
    lot,
    lengths: (run?.plan.lengths ?? []).map((_, i) => i),
    rooms: rooms.map((room) => ({
      room,
      items: [...new Set(pieces.filter((each) => each.room === room).map(({ item }) => item))],
    })),
  };
}

function tryLot(
  lot: ArrivedLot,
  group: ClothGroup,
  facts: ClothFacts,
  context: ArrivalContext,
  project: ProjectRecord,
): Tried {
  const arrived = factsOnArrival(facts, lot, project);
  const width = arrived.facts.usableWidth as Length;
  const cloth = plannedCloth(arrived.facts, width, grainsDown(width));
  const same = sameMeasures(facts, arrived.facts);
  const now = same ? group : context.remade(group, arrived.facts);
  const tried = { lot, facts: arrived.facts, cloth, diagnostics: arrived.diagnostics };
  const unmade = now.users
    .filter(({ item }) => hasErrors(item.made.diagnostics))
    .map(({ item }) => {
      const first = item.made.diagnostics.find((each) => each.severity === "error");
      return `${item.record.title} (${first?.message.replace(/\.$/, "")})`;
    });
  const free = planGroup({ cloth, cuts: now.cuts, maxLength: null });
  const tooLarge = free.problems.map(({ from }) => pieceName(group, from));
  const misfits = [...new Set([...unmade, ...tooLarge])];
  const needed = free.run
    ? lengthOfGrains(free.run.plan.length + (cloth.pattern?.vertical ?? 0))
    : null;
  if (!free.run || misfits.length > 0) return { ...tried, plan: null, needed, misfits };
  const plan = planGroup({
    cloth,
    cuts: now.cuts,
    maxLength: null,
    lengths: lengthsAtHand(lot, cloth, free.run.plan.start),
    choices: free.choices,
  });
  const left = [
    ...plan.problems.map(({ from }) => pieceName(group, from)),
    ...plan.unplaced.map(({ from }) => pieceName(group, from)),
  ];
  const held = plan.run !== null && left.length === 0;
  return {
    ...tried,
    plan: held ? { ...plan, unchosen: null } : null,
    needed,
    misfits: counted(left),
  };
}

function pieceName(group: ClothGroup, from: RoomCut): string {
  const user = group.users.find(
    (each) => each.room === from.room && each.item.record.id === from.item,
  );
  return `${user?.item.record.title ?? from.item}, ${from.cut.piece}`;
}

/** `Settle, face; Settle, back (3)`. */
function counted(names: readonly string[]): string[] {
  return [...new Set(names)].map((name) => {
    const count = names.filter((each) => each === name).length;
    return count > 1 ? `${name} (${count})` : name;
  });
}

/** Receipts of a cloth that several makers cut, which do not say to whom they went; what went back is with none of them. */
function whoseIsIt(cloth: string, facts: ClothFacts, project: ProjectRecord): Diagnostic[] {
  return (project.fields.receipts ?? []).flatMap((receipt, index) =>
    receipt.cloth !== cloth || receipt.maker !== undefined || receipt.returned
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

const MOST_NAMED = 6;

/** What no longer fits on the lot that holds most, before anyone cuts. */
function notEnough(
  failed: readonly Tried[],
  group: ClothGroup,
  facts: ClothFacts,
  project: ProjectRecord,
  units: UnitSystem,
): Diagnostic {
  const { lot, misfits, cloth } = failed[0] as Tried;
  const down = (length: Length) => clothText(length, units, "down");
  const isExpected = facts.washing !== undefined;
  const came = `${failed.map((each) => `${down(each.lot.length)} of lot ${each.lot.lot}`).join(", ")}${isExpected ? ", washed" : ""}`;
  const needs = failed.flatMap((each) => each.needed ?? []);
  const clear = clearOf(lot);
  const flawed = clear.all.isLessThan(lot.length)
    ? ` Between its flaws ${clear.all.isZero() ? "nothing is left" : `${down(clear.all)} is left, at most ${down(clear.longest)} in one run`}.`
    : "";
  const shown = misfits.slice(0, MOST_NAMED).join("; ");
  const more = misfits.length > MOST_NAMED ? `; and ${misfits.length - MOST_NAMED} more` : "";
  const found = misfits.length > 0 ? ` No place is found for: ${shown}${more}.` : "";
  const need =
    needs.length > 0
      ? ` About ${clothText(Length.min(...needs), units)} of one lot${isExpected ? ", washed," : ""} without flaws would do${cloth?.pattern?.vertical ? ", with a repeat for where the pattern begins" : ""}.`
      : "";
  const name = (id: string) => project.rooms.find((room) => room.id === id)?.fields.room ?? id;
  const lots = failed.map((each) => each.lot);
  const rooms = cloth ? roomsShort(group, cloth, lots, name, units) : [];
  return diagnostic(
    project.place(["receipts", lot.receipts[0]?.index ?? 0]),
    "received-not-enough",
    `What arrived of ${facts.name} does not hold its pieces: ${came}.${flawed}${found}${rooms.map((each) => ` ${each}`).join("")}${need}`,
    {
      severity: "warning",
      hint:
        failed.length > 1
          ? "Nothing should be cut yet. Lots differ in colour, and no item is cut from two: ask the supplier for more of one lot."
          : "Nothing should be cut yet. Ask for more of the same lot, or make an item smaller; if the flaws are why, ask the supplier for another length.",
    },
  );
}
