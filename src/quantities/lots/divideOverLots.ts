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

/** What the division asks about cloth and lots. */
export interface LotPlanner {
  /** A plan of these pieces on one lot, or null where it does not hold them. */
  readonly onLot: (lot: ArrivedLot, cuts: readonly RoomCut[]) => GroupPlan | null;
  /** The area of a lot, and the least that a cut's pieces take of it, in one unit: a quick no, which is no try. */
  readonly areaOfLot: (lot: ArrivedLot) => number;
  readonly areaOfCut: (cut: RoomCut) => number;
}

/** Plans that may be tried in all. */
const MOST_TRIED = 100;

/**
 * Divides a cloth's pieces over lots where no lot holds them all: each room whole from one lot, as few lots as will do. Where that
 * cannot be, one room is divided, item by item, the others stay whole, again over as few lots as will do; an item is never divided. Null
 * where neither is found. The tries are counted, so that the answer is the same on every machine.
 */
export function divideOverLots(
  cuts: readonly RoomCut[],
  lots: readonly ArrivedLot[],
  planner: LotPlanner,
): readonly LotPart[] | null {
  const rooms = [...new Set(cuts.map((cut) => cut.room))];
  const whole = rooms.map((room) => roomUnit(room, cuts));
  const tries = new Tries(planner);
  if (rooms.length > 1) {
    for (let most = 1; most <= lots.length; most++) {
      const found = assign(whole, lots, most, tries);
      if (found) return found;
    }
  }
  // A room that no lot holds is the one to divide; else the smallest first, where least is seen of it.
  const tooLarge = whole.filter((unit) => lots.every((lot) => !tries.plan(lot, [unit])));
  if (tooLarge.length > 1) return null;
  const candidates =
    tooLarge.length === 1 ? tooLarge : [...whole].sort((a, b) => tries.area(a) - tries.area(b));
  for (let most = 2; most <= lots.length; most++) {
    for (const mixed of candidates) {
      const others = whole.filter((unit) => unit !== mixed);
      const found = assign([...others, ...itemUnits(mixed)], lots, most, tries);
      if (found) return found;
    }
  }
  return null;
}

/** Counts the plans tried and remembers what they came to. */
class Tries {
  private readonly known = new Map<string, GroupPlan | null>();
  /** By lot: what it was found not to hold. */
  private readonly tooMuch = new Map<ArrivedLot, ReadonlySet<RoomCut>[]>();
  private readonly areas = new Map<Unit, number>();

  constructor(private readonly planner: LotPlanner) {}

  plan(lot: ArrivedLot, units: readonly Unit[]): GroupPlan | null {
    const names = units.map((unit) => `${unit.room}/${unit.item ?? ""}`).sort();
    const key = JSON.stringify([lot.lot, names]);
    const before = this.known.get(key);
    if (before !== undefined) return before;
    const cuts = new Set(cutsOf(units));
    const tooMuch = this.tooMuch.get(lot) ?? [];
    // What holds more than what was too much is too much.
    if (tooMuch.some((each) => [...each].every((cut) => cuts.has(cut)))) return null;
    if (units.reduce((sum, unit) => sum + this.area(unit), 0) > this.room(lot)) return null;
    if (this.known.size >= MOST_TRIED) return null;
    const plan = this.planner.onLot(lot, [...cuts]);
    this.known.set(key, plan);
    if (!plan) this.tooMuch.set(lot, [...tooMuch, cuts]);
    return plan;
  }

  room(lot: ArrivedLot): number {
    return this.planner.areaOfLot(lot);
  }

  area(unit: Unit): number {
    const known = this.areas.get(unit);
    if (known !== undefined) return known;
    const area = unit.cuts.reduce((sum, cut) => sum + this.planner.areaOfCut(cut), 0);
    this.areas.set(unit, area);
    return area;
  }
}

/**
 * Over at most `most` lots. Largest unit first, each to the first lot that holds it beside what it has; goes back where a later unit finds
 * none, or where the lots that may be used have not the area for the rest.
 */
function assign(
  units: readonly Unit[],
  lots: readonly ArrivedLot[],
  most: number,
  tries: Tries,
): LotPart[] | null {
  const order = [...units].sort((a, b) => tries.area(b) - tries.area(a));
  const held = lots.map((): Unit[] => []);
  const areaLeft = (lot: ArrivedLot, l: number) =>
    tries.room(lot) - (held[l] as Unit[]).reduce((sum, unit) => sum + tries.area(unit), 0);
  const hasRoom = (at: number): boolean => {
    const isUsed = (l: number) => (held[l] as Unit[]).length > 0;
    const unused = lots.flatMap((lot, l) => (isUsed(l) ? [] : tries.room(lot)));
    const opened = unused.sort((a, b) => b - a).slice(0, most - (lots.length - unused.length));
    const left = lots.flatMap((lot, l) => (isUsed(l) ? areaLeft(lot, l) : []));
    const rest = order.slice(at).reduce((sum, unit) => sum + tries.area(unit), 0);
    return [...opened, ...left].reduce((sum, each) => sum + each, 0) >= rest;
  };
  const place = (at: number): boolean => {
    const unit = order[at];
    if (!unit) return true;
    if (!hasRoom(at)) return false;
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
  if (!place(0)) return null;
  return lots.flatMap((lot, l) => {
    const mine = held[l] as Unit[];
    const plan = mine.length > 0 ? tries.plan(lot, mine) : null;
    return plan ? [{ lot, cuts: cutsOf(mine), plan }] : [];
  });
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
