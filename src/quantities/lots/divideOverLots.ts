import type { ArrivedLot } from "../arrival/receiptsFor.ts";
import { type RoomCut, seriesKey } from "../cutPieces.ts";
import type { GroupPlan } from "../planGroup.ts";

/** What is cut from one lot: a room, whole or only some of its items. */
interface Unit {
  readonly room: string;
  readonly item: string | null;
  readonly cuts: readonly RoomCut[];
}

export interface LotPart {
  readonly lot: ArrivedLot;
  readonly cuts: readonly RoomCut[];
  readonly plan: GroupPlan;
}

/** A plan of these pieces on one lot, or null where it does not hold them. */
export type OnLot = (lot: ArrivedLot, cuts: readonly RoomCut[]) => GroupPlan | null;

/** Plans that may be tried in all. */
const MOST_TRIED = 60;

/**
 * Divides a cloth's pieces over lots where no lot holds them all: each room whole from one lot, as few lots as will do. Where that
 * cannot be, one room is divided, item by item, the others stay whole; an item is never divided. Null where neither is found. The
 * tries are counted, so that the answer is the same on every machine.
 */
export function divideOverLots(
  cuts: readonly RoomCut[],
  lots: readonly ArrivedLot[],
  onLot: OnLot,
): readonly LotPart[] | null {
  const rooms = [...new Set(cuts.map((cut) => cut.room))];
  const whole = rooms.map((room) => roomUnit(room, cuts));
  const tries = new Tries(onLot);
  if (rooms.length > 1) {
    const found = assign(whole, lots, tries);
    if (found) return found;
  }
  // A room that no lot holds is the one to divide; else the smallest first, where least is seen of it.
  const tooLarge = whole.filter((unit) => lots.every((lot) => !tries.plan(lot, [unit])));
  if (tooLarge.length > 1) return null;
  const candidates = tooLarge.length === 1 ? tooLarge : [...whole].sort(byArea);
  for (const mixed of candidates) {
    const others = whole.filter((unit) => unit !== mixed);
    const found = assign([...others, ...itemUnits(mixed)], lots, tries);
    if (found) return found;
  }
  return null;
}

/** Counts the plans tried and remembers what they came to. */
class Tries {
  private readonly known = new Map<string, GroupPlan | null>();

  constructor(private readonly onLot: OnLot) {}

  plan(lot: ArrivedLot, units: readonly Unit[]): GroupPlan | null {
    const names = units.map((unit) => `${unit.room}/${unit.item ?? ""}`).sort();
    const key = JSON.stringify([lot.lot, names]);
    const before = this.known.get(key);
    if (before !== undefined) return before;
    if (this.known.size >= MOST_TRIED) return null;
    const plan = this.onLot(lot, cutsOf(units));
    this.known.set(key, plan);
    return plan;
  }
}

/** Largest unit first, each to the first lot that holds it beside what it has; goes back where a later unit finds none. */
function assign(
  units: readonly Unit[],
  lots: readonly ArrivedLot[],
  tries: Tries,
): LotPart[] | null {
  const order = [...units].sort((a, b) => byArea(b, a));
  for (let most = 1; most <= lots.length; most++) {
    const held = lots.map((): Unit[] => []);
    const place = (at: number): boolean => {
      const unit = order[at];
      if (!unit) return true;
      const used = held.filter((each) => each.length > 0).length;
      return lots.some((lot, l) => {
        const mine = held[l] as Unit[];
        if (mine.length === 0 && used === most) return false;
        mine.push(unit);
        if (tries.plan(lot, mine) && place(at + 1)) return true;
        mine.pop();
        return false;
      });
    };
    if (!place(0)) continue;
    return lots.flatMap((lot, l) => {
      const mine = held[l] as Unit[];
      const plan = mine.length > 0 ? tries.plan(lot, mine) : null;
      return plan ? [{ lot, cuts: cutsOf(mine), plan }] : [];
    });
  }
  return null;
}

function roomUnit(room: string, cuts: readonly RoomCut[]): Unit {
  return { room, item: null, cuts: cuts.filter((cut) => cut.room === room) };
}

/** Items with pieces that must stand level with each other go together. */
function itemUnits({ room, cuts }: Unit): Unit[] {
  const units: RoomCut[][] = [];
  for (const item of new Set(cuts.map((cut) => cut.item))) {
    const mine = cuts.filter((cut) => cut.item === item);
    const series = new Set(mine.flatMap((cut) => seriesKey(cut) ?? []));
    const isTied = (unit: RoomCut[]) => unit.some((cut) => series.has(seriesKey(cut) ?? ""));
    const tied = units.filter(isTied);
    for (const each of tied) units.splice(units.indexOf(each), 1);
    units.push([...tied.flat(), ...mine]);
  }
  return units.map((own) => ({
    room,
    item: [...new Set(own.map((cut) => cut.item))].join(),
    cuts: own,
  }));
}

function cutsOf(units: readonly Unit[]): RoomCut[] {
  return units.flatMap((unit) => unit.cuts);
}

function byArea(a: Unit, b: Unit): number {
  return areaOf(a) - areaOf(b);
}

function areaOf({ cuts }: Unit): number {
  return cuts.reduce((sum, { cut }) => sum + cut.width.toMm() * cut.height.toMm() * cut.count, 0);
}
