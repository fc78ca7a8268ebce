import { Length } from "../../units/length.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import type { ArrivedLot } from "../arrival/receiptsFor.ts";
import type { ClothGroup } from "../clothGroups.ts";
import type { PlannedCloth } from "../cutPieces.ts";
import { lengthOfGrains } from "../grains.ts";
import { planGroup } from "../planGroup.ts";
import { clothText } from "../text/clothText.ts";

/**
 * Where several lots came and the rooms cannot be divided over them: which room is too large for any one lot, and by how much; or, if
 * each has its lot, by how much all together are. Estimates: each with a repeat for where the pattern begins. With one lot, nothing.
 */
export function roomsShort(
  group: ClothGroup,
  cloth: PlannedCloth,
  lots: readonly ArrivedLot[],
  roomName: (id: string) => string,
  units: UnitSystem,
): string[] {
  const longest = lots[0];
  if (!longest || lots.length < 2) return [];
  const rooms = [...new Set(group.cuts.map((cut) => cut.room))];
  const needs = rooms.map((room) => {
    const cuts = group.cuts.filter((cut) => cut.room === room);
    const { run } = planGroup({ cloth, cuts, maxLength: null });
    const need = (run?.plan.length ?? 0) + (cloth.pattern?.vertical ?? 0);
    return { room, need: lengthOfGrains(need) };
  });
  const up = (length: Length) => clothText(length, units);
  const has = clothText(longest.length, units, "down");
  const tooLarge = needs.filter(({ need }) => need.isMoreThan(longest.length));
  if (tooLarge.length > 0) {
    return tooLarge.map(
      ({ room, need }) =>
        `${roomName(room)} alone needs about ${up(need)} of one lot; the longest, lot ${longest.lot}, has ${has}: ${up(need.minus(longest.length))} too little.`,
    );
  }
  const all = Length.sum(needs.map(({ need }) => need));
  const came = Length.sum(lots.map(({ length }) => length));
  const short = all.isMoreThan(came) ? `: ${up(all.minus(came))} too little` : "";
  return [
    `No division of the rooms over the lots was found, each from one lot: they need about ${up(all)}, and ${clothText(came, units, "down")} came in ${lots.length} lots${short}.`,
  ];
}
