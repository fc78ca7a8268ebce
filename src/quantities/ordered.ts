import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ProjectRecord, Records } from "../records/records.ts";
import { Length } from "../units/length.ts";
import type { UnitSystem } from "../units/printLength.ts";
import { countsAsOrdered } from "./arrival/returned.ts";
import { materialLength } from "./materialLength.ts";
import type { ClothQuantity, RoomMaterial, SharedBuy, TrimBuy } from "./quantityTypes.ts";
import { lengthOrRolls } from "./text/rollsIn.ts";
import { isTrim } from "./trimBuys.ts";

/** What was ordered of one card, and what is still to be ordered of it. */
export interface Ordered {
  readonly orders: NonNullable<ProjectRecord["fields"]["orders"]>;
  /** Ordered less needed, without what went back and was credited; below nothing where too little was ordered. */
  readonly over: Length;
  /** True where all that was ordered went back and was credited. */
  readonly isAnew: boolean;
}

/** The needs of a project that an order can be held against. */
export interface Needs {
  readonly cloths: readonly ClothQuantity[];
  readonly together: readonly SharedBuy[];
  readonly materials: readonly RoomMaterial[];
  readonly trims: readonly TrimBuy[];
}

/** What is bought of a card for all makers and rooms, the client's own cloth left out. */
export function needOf(card: string, needs: Needs, records: Records): Length {
  const roll = records.cloths.get(card)?.fields.roll?.length ?? null;
  const once = needs.together.find((each) => each.cloth === card);
  const alone = needs.cloths.filter((c) => c.cloth === card && !c.clientsOwn);
  return Length.sum([
    ...(once ? [once.buy.length] : alone.map((c) => c.buy.length)),
    ...needs.materials
      .filter((m) => m.cloth === card && !isTrim(m))
      .map((m) => materialLength(m, roll)),
    ...needs.trims.filter((t) => t.cloth === card).map((t) => t.buy.length),
  ]);
}

/** What the project's file says was ordered of a card; null where it says nothing. */
export function orderedOf(
  card: string,
  project: ProjectRecord,
  needs: Needs,
  records: Records,
): Ordered | null {
  const orders = (project.fields.orders ?? []).filter((order) => order.cloth === card);
  if (orders.length === 0) return null;
  const ordered = countsAsOrdered(card, project);
  const isAnew = !ordered.isMoreThan(Length.zero);
  return { orders, over: ordered.minus(needOf(card, needs, records)), isAnew };
}

/** More than twice what is to be bought, and so much more, is a slip of the point, or was taken out of the rooms since. */
const FAR_MORE = Length.cm(500);

/** A warning at the last order of each card of which less was ordered than is needed now, or far more. */
export function orderedAmiss(
  project: ProjectRecord,
  needs: Needs,
  records: Records,
  units: UnitSystem,
): Diagnostic[] {
  const all = project.fields.orders ?? [];
  return [...new Set(all.map((order) => order.cloth))].flatMap((card): Diagnostic[] => {
    const found = orderedOf(card, project, needs, records);
    if (!found || found.isAnew) return [];
    const need = needOf(card, needs, records);
    const isShort = found.over.isLessThan(Length.zero);
    // What no room takes any more is told where the card is not used.
    const isFar = !need.isZero() && found.over.isMoreThan(Length.max(need, FAR_MORE));
    if (!isShort && !isFar) return [];
    const last = all.findLastIndex((order) => order.cloth === card);
    const record = records.cloths.get(card);
    const name = record?.fields.cloth ?? card;
    const ordered = lengthOrRolls(need.plus(found.over), record, units, "down");
    const needed = lengthOrRolls(need, record, units);
    return [
      diagnostic(
        project.place(["orders", last, "length"]),
        isShort ? "ordered-too-little" : "ordered-far-more",
        `Of ${name} ${ordered} was ordered; ${needed} is needed.`,
        {
          severity: "warning",
          actual: ordered,
          expected: needed,
          hint: isShort
            ? "Before anything is cut ask the supplier for the rest from the same lot, and write that order below; or make an item smaller."
            : "Look at its point and its unit; if so much was ordered, ask the supplier whether what is over can still be taken off.",
        },
      ),
    ];
  });
}
