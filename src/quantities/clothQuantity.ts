import Fraction from "fraction.js";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ClothFacts, WorkingLine } from "../items/itemKind.ts";
import { isClientsOwn } from "../records/clientsOwn.ts";
import { isOpen } from "../records/itemOptions.ts";
import type { ClothRecord, ProjectRecord, Records, RoomRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { printLength, type UnitSystem } from "../units/printLength.ts";
import { afterWashing, beforeWashing } from "../units/washing.ts";
import { planOnArrival } from "./arrival/planOnArrival.ts";
import { releaseOf } from "./arrival/release.ts";
import { washingLeft } from "./arrival/washed.ts";
import { type Buy, buyAlone, type Needed, saleOf } from "./buy.ts";
import {
  ownedInPart,
  problems,
  repeatLongerThanBolt,
  soldByWhat,
  washedWithoutLoss,
  washedWithoutLossAcross,
  withoutWidth,
} from "./clothFaults.ts";
import type { ClothGroup } from "./clothGroups.ts";
import { type PlannedCloth, plannedCloth } from "./cutPieces.ts";
import { clothDefaults, itemDefaults } from "./defaultsUsed.ts";
import { grainsDown, lengthOfGrains } from "./grains.ts";
import { type GroupPlan, planGroup } from "./planGroup.ts";
import { maxLengthOf, notForCutting, planOfCloth } from "./planOfCloth.ts";
import type { ClothQuantity, Estimate } from "./quantityTypes.ts";
import { clothText } from "./text/clothText.ts";
import { handbookWords } from "./text/handbookWords.ts";
import { clothOrigins } from "./text/origins.ts";
import { shrinkWorking, washedSum } from "./text/shrinkWords.ts";

/** What the line of a cloth's working is called that says how much of it is bought. */
export const TO_BUY = "To buy";

export interface ClothContext {
  readonly records: Pick<Records, "cloths">;
  readonly project: ProjectRecord;
  readonly units: UnitSystem;
  readonly cloth: (id: string) => ClothFacts | null;
  /** True where more than one maker cuts from this cloth: then a receipt must say whose it is. */
  readonly shared: (cloth: string) => boolean;
  /** The same group with its items worked out anew on the cloth as it came. */
  readonly remade: (group: ClothGroup, facts: ClothFacts) => ClothGroup;
}

export interface FoundQuantity {
  readonly quantity: ClothQuantity | null;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Plans what one maker cuts from one cloth and works out what to buy: the plan's length, up to one repeat for each length whose
 * pattern may begin anywhere, and what is only estimated; UP to the step in which it is sold. A card without a width stops this
 * cloth alone.
 */
export function clothQuantity(group: ClothGroup, context: ClothContext): FoundQuantity {
  const facts = context.cloth(group.cloth);
  if (!facts) return { quantity: null, diagnostics: [] };
  if (!facts.usableWidth)
    return { quantity: null, diagnostics: withoutWidth(group, facts, context.records.cloths) };
  const { units, project } = context;
  const card = context.records.cloths.get(group.cloth) ?? null;
  const cloth = plannedCloth(facts, facts.usableWidth, grainsDown(facts.usableWidth));
  const vertical = cloth.pattern?.vertical ?? 0;
  const unwashed = (length: Length) =>
    facts.washing ? beforeWashing(length, facts.washing.along) : length;
  const whole = card?.fields.price?.bolt?.length ?? null;
  const bolt = whole && facts.washing ? afterWashing(whole, facts.washing.along) : whole;
  const repeatOverBolt = repeatLongerThanBolt(card, group, cloth, bolt, units);
  // Said once at the card; the pieces are planned as on an endless length.
  const maxLength = repeatOverBolt.length > 0 ? null : maxLengthOf(bolt, vertical);
  const ordered = planGroup({ cloth, cuts: group.cuts, maxLength });
  const arrival = planOnArrival(group, facts, context, project);
  const used = arrival.plan ?? ordered;
  const usedCloth = arrival.cloth ?? cloth;
  const rooms = roomsOf(group, project);
  const washing =
    facts.washing && arrival.plan
      ? washingLeft(arrival.receipts, vertical > 0, facts.washing, project)
      : null;
  const why = notForCutting(
    arrival.plan ? "planned" : arrival.came ? "too little" : "no",
    rooms,
    group.estimates.length > 0,
    used.problems.length,
    group.users.filter(({ item }) => isOpen(item.record)).map(({ item }) => item.record.title),
    (arrival.facts ?? facts).repeatUnknown === true,
    washing,
  );
  const { cloth: id, maker } = group;
  const unreleased = planOfCloth(used, usedCloth, why, { cloth: id, maker, lots: arrival.lots });
  const release = releaseOf(unreleased, arrival.receipts, facts.name, project);
  const plan = { ...unreleased, released: release.released };
  const spare = spareOf(used, usedCloth);
  const orderedLength = lengthOfGrains(ordered.run?.plan.length ?? 0);
  const need = Length.sum([
    orderedLength,
    spareOf(ordered, cloth),
    ...group.estimates.map((e) => e.length),
  ]);
  const perLength = spareOf(ordered, cloth).isZero() ? Length.zero : lengthOfGrains(vertical);
  const sale = saleOf(
    card,
    units,
    vertical > 0 && cloth.repeatUp ? unwashed(cloth.repeatUp) : null,
  );
  const needed: Needed = {
    need: unwashed(need),
    lengths: (ordered.run?.plan.lengths ?? [])
      .filter((length) => length > 0)
      .map((length) => unwashed(lengthOfGrains(length).plus(perLength))),
    estimates: group.estimates.map(({ length }) => unwashed(length)),
  };
  const buy = buyAlone(needed, sale);
  const quantity: ClothQuantity = {
    cloth: group.cloth,
    maker: group.maker,
    lot: arrival.lots.length > 0 ? arrival.lots.map(({ lot }) => lot).join(" and ") : null,
    lots: arrival.lots,
    washing,
    receipts: arrival.receipts.length,
    facts: arrival.facts ?? facts,
    usableWidth: usedCloth.usableWidth,
    plan,
    estimates: group.estimates,
    spare,
    clientsOwn: group.users.every(({ item }) => isClientsOwn(item.record, group.cloth)),
    buy,
    needed,
    sale,
    handbook: group.handbook,
    handbookWords: handbookWords(planned(group), plan, units),
    defaultsUsed: [
      ...clothDefaults(facts, declaredBy(card), cloth, group.cuts, units),
      ...group.users.flatMap(({ room, item }) => itemDefaults(room, item)),
    ],
    origins: clothOrigins(arrival.facts ?? facts, card, arrival.facts !== null, units, washing),
    working: [
      ...workingOf(ordered, cloth, group.estimates, need, buy, units, facts.washing ?? null),
      ...shrinkWorking(group, facts, need, units),
    ],
    uses: usesOf(group, facts.usableWidth),
  };
  return {
    quantity,
    diagnostics: [
      ...ownedInPart(group, facts.name),
      ...repeatOverBolt,
      ...soldByWhat(card, vertical > 0),
      ...washedWithoutLoss(card, facts),
      // Washed and measured, its width is known.
      ...(arrival.plan && washing === null ? [] : washedWithoutLossAcross(card, facts, units)),
      ...problems(group, ordered, facts, units, maxLength),
      ...arrival.diagnostics,
      ...release.diagnostics,
    ],
  };
}

/** The handbook's figure for what is planned, what is only estimated taken off. */
function planned(group: ClothGroup): Length | null {
  const estimated = Length.sum(group.estimates.map((each) => each.length));
  return group.handbook === null ? null : group.handbook.minus(estimated);
}

function declaredBy(card: ClothRecord | null): { match: boolean; repeat: boolean } {
  const repeat = card?.fields.repeat;
  return { repeat: repeat !== undefined, match: repeat?.match !== undefined };
}

function roomsOf(group: ClothGroup, project: ProjectRecord): RoomRecord[] {
  const ids = new Set(group.users.map((user) => user.room));
  return project.rooms.filter((room) => ids.has(room.id));
}

/** One repeat for each length, if anything on it lies in register along it. */
function spareOf(group: GroupPlan, cloth: PlannedCloth): Length {
  const vertical = cloth.pattern?.vertical ?? 0;
  const run = group.run;
  if (!run || vertical === 0) return Length.zero;
  const inRegister = [...run.pieces.values()].some((each) => each.piece.along.rule === "register");
  const lengths = run.plan.lengths.filter((length) => length > 0).length;
  return inRegister ? lengthOfGrains(vertical * lengths) : Length.zero;
}

function workingOf(
  group: GroupPlan,
  cloth: PlannedCloth,
  estimates: readonly Estimate[],
  need: Length,
  buy: Buy,
  units: UnitSystem,
  washing: NonNullable<ClothFacts["washing"]> | null,
): WorkingLine[] {
  const lines: WorkingLine[] = [];
  const terms: string[] = [];
  // In the unit of the measures, so that the terms add up to the sixteenth or the millimetre.
  const add = (what: string, sum: string, length: Length) => {
    const result = printLength(length, units);
    lines.push({ what, sum, result, rounded: null });
    terms.push(result);
  };
  const run = group.run;
  if (run && run.pieces.size > 0) {
    const width = printLength(cloth.usableWidth, units);
    const n = run.pieces.size;
    const register = cloth.pattern ? ", in register" : "";
    add(
      "Cutting plan",
      `${n} ${n === 1 ? "piece" : "pieces"} on ${width} usable width${register}`,
      lengthOfGrains(run.plan.length),
    );
  }
  const spare = spareOf(group, cloth);
  if (!spare.isZero()) {
    const lengths = run?.plan.lengths.length ?? 1;
    const repeat = printLength(lengthOfGrains(cloth.pattern?.vertical ?? 0), units);
    add(
      "Start of the pattern",
      `up to one repeat of ${repeat}${lengths > 1 ? ` on each of ${lengths} lengths` : ""}, since the cloth may begin anywhere in it`,
      spare,
    );
  }
  for (const each of estimates) add(`Estimate, ${each.item}`, each.text, each.length);
  const why = buy.minimum ? `the supplier's minimum, up to ${buy.step}` : `up to ${buy.step}`;
  const all = printLength(need, units);
  const sum = terms.length > 1 ? `${terms.join(" + ")} = ${all}` : (terms[0] ?? all);
  const { sum: whole, length } = washing
    ? washedSum(sum, terms.length > 1, need, washing.along, units)
    : { sum, length: need };
  lines.push({
    what: TO_BUY,
    sum: `${whole}, ${clothText(length, units)}`,
    result: buy.text,
    rounded: why,
  });
  return lines;
}

function usesOf(group: ClothGroup, width: Length): ClothQuantity["uses"] {
  return group.users.map(({ room, item }) => {
    const mine = <T extends { room: string; item: string }>(all: readonly T[]) =>
      all.filter((each) => each.room === room && each.item === item.record.id);
    const cut = mine(group.cuts).map(({ cut: c }) => c.width.mm.mul(c.height.mm).mul(c.count));
    const guessed = mine(group.estimates).map((each) => each.length.mm.mul(width.mm));
    return {
      room,
      item: item.record.id,
      areaMm2: [...cut, ...guessed].reduce((sum, area) => sum.add(area), new Fraction(0)),
    };
  });
}
