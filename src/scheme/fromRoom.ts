import { phaseOf } from "../records/phaseOf.ts";
import type { Records } from "../records/records.ts";
import { commonFields } from "../room/commonFields.ts";
import type { FurnishedItem, FurnishedRoom } from "../room/furnishRoom.ts";
import { ceilingAreas, visibleAreas } from "../room/visibleAreas.ts";
import type { Swatch } from "../swatches/swatch.ts";
import { hungClosed } from "./hung.ts";
import type { ItemFacts, SchemeInput, SeenPart } from "./schemeInput.ts";
import { sizesOf } from "./sizesOf.ts";
import { viewsOf } from "./viewsOf.ts";

export interface FromRoom {
  readonly records: Records;
  readonly room: FurnishedRoom;
  readonly swatches: ReadonlyMap<string, Swatch>;
  readonly objects: ReadonlyMap<string, Swatch>;
  /** What is bought ready for the room's items and has no price. */
  readonly unpriced: readonly Omit<SchemeInput["unpriced"][number], "title">[];
  readonly language: string;
  /** The day, ISO. */
  readonly on: string;
}

/** What people call an item: its title, an object by its card's name; two of one title get their kind's word as well. */
function titles(from: FromRoom): ReadonlyMap<string, string> {
  const own = from.room.items.map((item) => {
    const object = commonFields(item.record).object;
    const name = object ? from.objects.get(object)?.name : undefined;
    return { item, title: name ?? item.record.title };
  });
  const word = (item: FurnishedItem): string =>
    item.kind.words[from.language === "en-US" ? "en-US" : "en-GB"].one;
  return new Map(
    own.map(({ item, title }) => {
      const twice = own.filter((o) => o.title.toLowerCase() === title.toLowerCase()).length > 1;
      return [item.record.id, twice ? `${title} ${word(item)}` : title];
    }),
  );
}

/** An item that is there already whatever is bought: an object that stays or is the client's, and what is said to exist and is not re-covered. */
function isThere(item: FurnishedItem, from: FromRoom): boolean {
  const fields = commonFields(item.record);
  const card = fields.object ? from.records.objects.get(fields.object) : undefined;
  if (card)
    return card.fields.stays === true || card.fields.owner === "client" || fields.existing === true;
  return fields.existing === true && item.zone !== "seat";
}

/** The objects of the room that are bought, each once, with the day of its price. */
function objectPrices(from: FromRoom): SchemeInput["objectPrices"] {
  const ids = new Set(
    from.room.items.flatMap((item) => {
      const { object } = commonFields(item.record);
      return object && !isThere(item, from) ? [object] : [];
    }),
  );
  return [...ids].flatMap((id) => {
    const card = from.records.objects.get(id);
    const price = card?.fields.price;
    return card && price ? [{ id, name: card.fields.object, on: price.on ?? null }] : [];
  });
}

/** Everything that the scheme looks at, out of a furnished room. */
export function schemeInputOf(from: FromRoom): SchemeInput {
  const { room, records } = from;
  const called = titles(from);
  const titleOf = (id: string): string => called.get(id) ?? id;
  const named = (part: SeenPart): SeenPart =>
    part.item ? { ...part, title: titleOf(part.item) } : part;
  const views = viewsOf(room);
  const large = records.studio?.fields["large-print"]?.motif;
  return {
    room: room.plan.room,
    cloths: records.cloths,
    swatches: from.swatches,
    objects: from.objects,
    seen: visibleAreas(room).map(named),
    closed: visibleAreas(hungClosed(room)).map(named),
    overhead: ceilingAreas(room).map(named),
    contacts: room.plan.contacts,
    uses: room.items.flatMap((item) =>
      item.kind.cloths(item.record.fields as never).map(({ surface, cloth }) => ({
        item: item.record.id,
        title: titleOf(item.record.id),
        kind: item.record.kind,
        surface,
        cloth,
      })),
    ),
    items: room.items.map((item): ItemFacts => {
      const { id } = item.record;
      const { operation, cover } = item.record.fields as { operation?: string; cover?: string };
      return {
        item: id,
        title: titleOf(id),
        kind: item.record.kind,
        atWindow: room.plan.placements.get(id)?.how === "window" || item.zone === "window",
        operation: operation ?? null,
        isLoose: cover === "loose",
        phase: isThere(item, from) ? 0 : phaseOf(item.record, records.studio, item.kind.phase),
        views: views.get(id) ?? { doorM: null, seatM: null },
      };
    }),
    sizes: sizesOf(room, titleOf),
    ...(large ? { largeMotifMm: large.toMm() } : {}),
    objectPrices: objectPrices(from),
    unpriced: from.unpriced.map((each) => ({ ...each, title: titleOf(each.item) })),
    language: from.language,
    units: records.studio?.fields.units ?? "inches",
    on: from.on,
  };
}
