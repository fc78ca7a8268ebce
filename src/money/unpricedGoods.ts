import type { ProjectQuantities, RoomMaterial } from "../quantities/quantityTypes.ts";
import type { ProjectRecord } from "../records/records.ts";

/** Something that the studio buys ready for an item, and that no price is written for. */
export interface UnpricedGood {
  readonly room: string;
  readonly item: string;
  /** How many and how large: `3 feather inserts 20″ × 20″`. */
  readonly text: string;
  /** What one of it is called, as it can stand in the item's hardware: `feather insert`. */
  readonly name: string;
  readonly count: number;
}

/**
 * What people write for a good, by the last word of its name. Of a door's own rod the word rod alone is not enough: curtains have
 * a pole beside it. What stands here not goes by its last word.
 */
const CALLED: Readonly<Record<string, RegExp>> = {
  insert: /\b(?:insert|pad|inner|form|filling|cushion|pillow|foam|feather|fib(?:re|er)|down)s?\b/iu,
  headrail: /\b(?:head ?rail|rail|track|mechanism|cassette|headbox|kit|system)s?\b/iu,
  rod: /\b(?:rising|door)\b|porti[eè]re/iu,
};

/** A piece of an item's hardware, as far as it says what it is. */
interface Hardware {
  readonly what: string;
  readonly count?: number;
}

/** True of what the studio buys ready for an item, from no card: an insert, a headrail. */
function isReady(need: RoomMaterial): boolean {
  return need.by === "studio" && need.cloth === null && need.unit === "piece";
}

/** The name of one of it, without its size: `headrails of 35 1/2″, cordless` is a headrail. */
function nameOf(what: string): string {
  const name = what.split(/,| of |\s(?=\d)/u)[0] ?? what;
  return name.replace(/(?<=[^s])s$/u, "");
}

/** True where a piece of hardware is such a good. */
function isNamed(name: string, { what }: Hardware): boolean {
  const last = name.split(" ").at(-1) ?? name;
  const own = CALLED[last];
  return own ? own.test(what) : what.toLowerCase().includes(last.toLowerCase());
}

/** Which piece of its item's hardware a good is, as many as there are of it; -1 where it is none, or the counts differ. */
export function pieceOf(need: RoomMaterial, hardware: readonly Hardware[]): number {
  if (!isReady(need)) return -1;
  const name = nameOf(need.what);
  return hardware.findIndex(
    (piece) => isNamed(name, piece) && need.amount.equals(piece.count ?? 1),
  );
}

/**
 * What the studio must buy ready (a cushion's insert, a blind's headrail) and nobody is charged for: it comes from no card, and the
 * hardware of its item does not name it. A price of nothing there is a price: it says that the making holds it. Paint has its own price.
 */
export function unpricedGoods(
  quantities: ProjectQuantities,
  project: ProjectRecord,
): UnpricedGood[] {
  return quantities.materials.flatMap((need): UnpricedGood[] => {
    if (!isReady(need)) return [];
    const item = project.rooms
      .find(({ id }) => id === need.room)
      ?.items.find(({ id }) => id === need.item);
    const { hardware = [] } = (item?.fields ?? {}) as {
      readonly hardware?: readonly Hardware[];
    };
    const name = nameOf(need.what);
    if (hardware.some((piece) => isNamed(name, piece))) return [];
    const { room, text, amount } = need;
    return [{ room, item: need.item, text, name, count: Number(amount.valueOf()) }];
  });
}
