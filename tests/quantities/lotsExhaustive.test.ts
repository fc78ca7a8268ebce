import { expect, test } from "vitest";
import { RandomStream } from "../../src/cutplan/search/random.ts";
import type { ItemCut } from "../../src/items/itemKind.ts";
import type { ArrivedLot } from "../../src/quantities/arrival/receiptsFor.ts";
import type { RoomCut } from "../../src/quantities/cutPieces.ts";
import { divideOverLots, type LotPlanner } from "../../src/quantities/lots/divideOverLots.ts";
import type { GroupPlan } from "../../src/quantities/planGroup.ts";
import { Length } from "../../src/units/length.ts";

// Divisions of rooms over lots against all divisions there are, in seeded rooms of whole widths: what a lot holds is then one sum, and the
// answer of the enumeration is exact. No published source: this is common practice of the workroom.

interface Case {
  readonly cuts: readonly RoomCut[];
  readonly lots: readonly ArrivedLot[];
}

const mm = (value: number) => Length.mm(value);

function cutOf(room: string, item: string, height: number, count: number): RoomCut {
  const cut: ItemCut = {
    piece: item,
    surface: "face",
    cloth: "cloth",
    width: mm(1370),
    height: mm(height),
    count,
    mayTurn: false,
    across: { how: "whole-width" },
    along: { how: "free" },
    because: "",
  };
  return { room, item, at: 0, cut };
}

/** Up to `mostRooms` rooms of up to four items, and up to `mostLots` lots that together hold a little more or less than all of them. */
function caseOf(seed: number, mostRooms: number, mostLots: number): Case {
  const random = new RandomStream(seed);
  const rooms = 1 + random.below(mostRooms);
  const cuts: RoomCut[] = [];
  for (let r = 0; r < rooms; r++) {
    for (let i = 0; i <= random.below(4); i++) {
      cuts.push(cutOf(`room-${r}`, `item-${i}`, 500 + 50 * random.below(50), 1 + random.below(3)));
    }
  }
  const all = lengthOf(cuts);
  const count = 2 + random.below(mostLots - 1);
  const shares = Array.from({ length: count }, () => 2 + random.below(6));
  const sum = shares.reduce((a, b) => a + b, 0);
  const ample = 0.95 + 0.05 * random.below(9);
  const lots = shares.map((share, l) => {
    const length = mm(Math.round((all * ample * share) / sum));
    return { lot: `lot-${l}`, receipts: [], width: null, repeat: null, length };
  });
  return { cuts, lots: lots.sort((a, b) => b.length.compare(a.length)) };
}

const REPEAT_MM = 640;

/** Every piece takes whole repeats, of which its area knows nothing. */
function lengthOf(cuts: readonly RoomCut[]): number {
  return cuts.reduce(
    (sum, { cut }) => sum + Math.ceil(cut.height.toMm() / REPEAT_MM) * REPEAT_MM * cut.count,
    0,
  );
}

const planner: LotPlanner = {
  onLot: (lot, cuts) => (lengthOf(cuts) <= lot.length.toMm() ? ({} as GroupPlan) : null),
  areaOfLot: (lot) => lot.length.toMm(),
  areaOfCut: ({ cut }) => cut.height.toMm() * cut.count,
};

/** The fewest lots that hold all units, each whole on one, by trying every division; infinite if none does. */
function fewestLots(units: readonly number[], lots: readonly number[]): number {
  let best = Number.POSITIVE_INFINITY;
  const used = lots.map(() => 0);
  const place = (at: number): void => {
    const unit = units[at];
    if (unit === undefined) {
      best = Math.min(best, used.filter((each) => each > 0).length);
      return;
    }
    for (let l = 0; l < lots.length; l++) {
      if ((used[l] as number) + unit > (lots[l] as number)) continue;
      used[l] = (used[l] as number) + unit;
      place(at + 1);
      used[l] = (used[l] as number) - unit;
    }
  };
  place(0);
  return best;
}

/** [rooms divided, lots used] of the best division: whole rooms first, then one of them by its items, as few lots as will do. */
function exhaustive({ cuts, lots }: Case): [number, number] | null {
  const rooms = [...new Set(cuts.map((cut) => cut.room))];
  const own = (room: string) => cuts.filter((cut) => cut.room === room);
  const held = lots.map((lot) => lot.length.toMm());
  const whole = fewestLots(
    rooms.map((room) => lengthOf(own(room))),
    held,
  );
  if (Number.isFinite(whole)) return [0, whole];
  const mixed = rooms.map((room) =>
    fewestLots(
      [
        ...rooms.filter((other) => other !== room).map((other) => lengthOf(own(other))),
        ...own(room).map((cut) => lengthOf([cut])),
      ],
      held,
    ),
  );
  const least = Math.min(...mixed);
  return Number.isFinite(least) ? [1, least] : null;
}

function ours(one: Case): [number, number] | null {
  const parts = divideOverLots(one.cuts, one.lots, planner);
  if (!parts) return null;
  const lotsOf = (room: string) =>
    parts.filter(({ cuts }) => cuts.some((cut) => cut.room === room)).length;
  for (const { lot, cuts } of parts) expect(lengthOf(cuts)).toBeLessThanOrEqual(lot.length.toMm());
  expect(parts.flatMap(({ cuts }) => cuts).length).toBe(one.cuts.length);
  const rooms = [...new Set(one.cuts.map((cut) => cut.room))];
  const divided = rooms.filter((room) => lotsOf(room) > 1).length;
  return [divided, parts.length];
}

function compared(cases: readonly Case[]) {
  const count = { divisible: 0, missed: 0, moreRooms: 0, moreLots: 0 };
  for (const one of cases) {
    const best = exhaustive(one);
    const found = ours(one);
    if (!best) {
      expect(found).toBeNull();
      continue;
    }
    count.divisible++;
    if (!found) count.missed++;
    else if (found[0] > best[0]) count.moreRooms++;
    else if (found[1] > best[1]) count.moreLots++;
  }
  return count;
}

// Divisions that are there and are not found: none of 218, and 1 of 119, where the budget of plans ends first.
test("small projects: as few rooms divided and as few lots as in the best of all divisions", () => {
  const found = compared(Array.from({ length: 400 }, (_, i) => caseOf(1 + i, 4, 4)));
  expect(found).toEqual({ divisible: 218, missed: 0, moreRooms: 0, moreLots: 0 });
});

test("up to seven rooms: the same, but for those that the budget of plans ends", () => {
  const { missed, ...found } = compared(
    Array.from({ length: 200 }, (_, i) => caseOf(1001 + i, 7, 4)),
  );
  expect(found).toEqual({ divisible: 119, moreRooms: 0, moreLots: 0 });
  expect(missed).toBeLessThanOrEqual(1);
});
