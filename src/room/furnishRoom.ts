import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { HeightZone, ItemKind, Made, SeenSurface } from "../items/itemKind.ts";
import type { ItemRecord, Records, RoomRecord, StudioRecord } from "../records/records.ts";
import type { UsedAllowance } from "./allowances.ts";
import { commonFields } from "./commonFields.ts";
import { heightUnknown } from "./heightUnknown.ts";
import { hungBox } from "./hungBox.ts";
import { itemContext } from "./itemContext.ts";
import type { LookUps } from "./lookUps.ts";
import { objectFacts } from "./objectFacts.ts";
import { type RoomPlan, roomPlan } from "./roomPlan.ts";
import { withUnturned } from "./unturned.ts";
import { wallCounted } from "./wallCounted.ts";

/** A kind whose own types are its own affair: the table of kinds is a list of these. */
export type AnyKind = ItemKind;

/** One item worked out: what it comes to, what is seen of it, and the allowances that it used. */
export interface FurnishedItem {
  readonly record: ItemRecord;
  readonly kind: AnyKind;
  readonly maker: string | null;
  readonly made: Made;
  /** Its own surfaces, as if nothing stood before them. */
  readonly seen: readonly SeenSurface[];
  readonly zone: HeightZone;
  readonly allowances: readonly UsedAllowance[];
}

/** A room with its items worked out: the one input of scheme and of quantities. */
export interface FurnishedRoom {
  readonly plan: RoomPlan;
  readonly items: readonly FurnishedItem[];
  /** Of the plan and of all items. */
  readonly diagnostics: readonly Diagnostic[];
}

/** Faults of a room's walls that a kind may find too: the plan has said them once, at the better place. */
const SAID_BY_PLAN: ReadonlySet<string> = new Set(["room-without-walls", "wall-not-found"]);

/**
 * Places a room's items and works each out by its kind. An item of a kind that is not in the
 * table is passed over, since reading it has already complained.
 */
export function furnishRoom(
  records: Pick<Records, "studio" | "objects">,
  room: RoomRecord,
  kinds: readonly AnyKind[],
  lookUps: LookUps,
): FurnishedRoom {
  const plan = roomPlan(room, records.objects);
  const placements = new Map(plan.placements);
  const object = (id: string) => objectFacts(records.objects.get(id) ?? null, lookUps);
  const unseen: Diagnostic[] = [];
  const items = room.items.flatMap((record): FurnishedItem[] => {
    const kind = kinds.find((each) => each.kind === record.kind);
    if (!kind) return [];
    const maker = makerOf(record, kind, records.studio);
    const input = {
      item: record,
      kind,
      plan,
      studio: records.studio,
      maker,
      cloth: lookUps.cloth,
      object,
    };
    const { context, used } = itemContext(input);
    const fields = record.fields as never;
    // Worked out once more in a context of its own: what the other way asks for is no allowance of this one.
    const made = withUnturned(
      kind.make(fields, context),
      record,
      kind,
      () => itemContext(input).context,
    );
    const before = placements.get(record.id);
    const placement = before && hungBox(record, before, made, plan.walls);
    if (placement) placements.set(record.id, placement);
    if (placement && plan.walls)
      unseen.push(...heightUnknown(record, placement, made, context.hangsOn !== null));
    return [
      {
        record,
        kind,
        maker,
        made,
        seen: kind.seen(fields, made as never),
        // What hangs on a bed is seen away from the windows, and fades as what stands in the room does.
        zone: context.hangsOn ? "wall" : kind.zone(fields),
        allowances: used(),
      },
    ];
  });
  const ofItems = items.flatMap(({ record, kind, made }) => [
    ...wallCounted(record, kind),
    ...made.diagnostics,
  ]);
  const diagnostics = [
    ...plan.diagnostics,
    ...ofItems.filter((d) => !SAID_BY_PLAN.has(d.code)),
    ...unseen,
  ];
  return { plan: { ...plan, placements }, items, diagnostics };
}

/** Who makes an item: the maker that it names, else the studio's first maker of just its kind, of its trade, of what is made alike, else nobody yet. */
export function makerOf(
  record: ItemRecord,
  kind: AnyKind,
  studio: StudioRecord | null,
): string | null {
  const said = commonFields(record).maker;
  if (said !== undefined) return said;
  const makers = Object.entries(studio?.fields.makers ?? {});
  const firstOf = (words: readonly string[]) =>
    makers.find(([, maker]) =>
      maker.makes.some((word) => words.includes(word.trim().toLowerCase().replace(/\s+/g, "-"))),
    );
  // Who makes just this goes before who makes what is made alike, wherever the two stand.
  const first =
    firstOf([kind.kind, ...kind.synonyms]) ??
    firstOf([kind.trade]) ??
    firstOf(kind.alsoMadeAs ?? []);
  return first?.[0] ?? null;
}
