import type { HardwareFields } from "../fields/itemBase.ts";
import { isFitted } from "../records/hasReached.ts";
import { openDaysOf } from "./closings.ts";
import type { LeadBook } from "./leadBook.ts";
import { leadOfSupplier } from "./leadTimes.ts";
import { after, before } from "./openDays.ts";
import type { Draft, ScheduleInput } from "./scheduleTypes.ts";

/** One piece that is bought ready, and what its files say has become of it. */
interface Piece extends Days {
  readonly room: string;
  readonly item: string;
  readonly supplier: string;
  readonly what: string;
}

/** The days that a piece may bear. */
interface Days {
  readonly ordered?: string | undefined;
  readonly arrived?: string | undefined;
}

/** Fields of an item that name what is bought ready for it. */
interface Buys extends Days {
  readonly object?: string;
  readonly hardware?: readonly HardwareFields[];
}

/**
 * When poles, tracks and objects that are bought must be ordered, so that they are there as early as what is made; of what was ordered, when
 * it must be there and when it comes. Only of suppliers whose time is written; once all is fitted, only what the files speak of.
 */
export function readySteps(input: ScheduleInput, fitting: string, book: LeadBook): Draft[] {
  const { studio } = input;
  const { ready } = studio.fields.schedule ?? {};
  const there = ready
    ? before(fitting, ready, openDaysOf(studio))
    : { on: fitting, movedFrom: null };
  const isOver = isFitted(input.project);
  return piecesOf(input).flatMap((piece): Draft[] => {
    const { supplier, what, ordered, arrived } = piece;
    const isOrdered = ordered !== undefined || arrived !== undefined;
    if (isOver && !isOrdered) return [];
    const lead = book.knows(leadOfSupplier(supplier, studio), `the order of ${what}`)?.span;
    if (!lead) return [];
    const open = openDaysOf(studio, { supplier });
    const common = {
      cloth: null,
      bought: { supplier, what, neededOn: there.on },
      makers: [],
      items: [{ room: piece.room, item: piece.item }],
      inPart: false,
    };
    const order: Draft = {
      ...common,
      kind: "bought",
      done: isOrdered ? { on: ordered ?? null } : null,
      expected: null,
      ...before(there.on, lead, open),
    };
    const arrival: Draft = {
      ...common,
      kind: "there",
      done: arrived === undefined ? null : { on: arrived },
      expected: arrived === undefined && ordered ? after(ordered, lead, open) : null,
      ...there,
    };
    return isOrdered ? [order, arrival] : [order];
  });
}

/** What is bought ready from a supplier, in the order of rooms and items. */
function piecesOf({ project, records }: ScheduleInput): Piece[] {
  return project.rooms.flatMap((room) =>
    room.items.flatMap((item): Piece[] => {
      const fields = item.fields as Buys;
      const { object, hardware } = fields;
      const of = { room: room.id, item: item.id };
      const card = item.kind === "object" ? records.objects.get(object ?? "")?.fields : undefined;
      const bought = card?.price && card.owner !== "client" && card.supplier;
      const { ordered, arrived } = fields;
      return [
        ...(card && bought
          ? [{ ...of, supplier: bought, what: card.object, ordered, arrived }]
          : []),
        ...(hardware ?? []).flatMap(({ supplier, ...each }) =>
          supplier ? [{ ...of, ...each, supplier }] : [],
        ),
      ];
    }),
  );
}
