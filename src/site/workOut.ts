import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { checkFixedPlaces } from "../documents/board/checkFixedPlaces.ts";
import type { ItemData, ProjectData, RoomData } from "../documents/projectData.ts";
import { checkLetters } from "../documents/words/checkLetters.ts";
import { ITEM_KINDS } from "../items/kinds.ts";
import { accountOf } from "../money/account/account.ts";
import type { SentTotals } from "../money/account/agreed.ts";
import { comparedCloths } from "../money/alternatives.ts";
import { type PriceContext, priceProject } from "../money/priceProject.ts";
import { type UnpricedGood, unpricedGoods } from "../money/unpricedGoods.ts";
import { phaseOf } from "../records/phaseOf.ts";
import type { ProjectRecord, Records, StudioRecord } from "../records/records.ts";
import { changesBetween, lastBefore } from "../revisions/changes.ts";
import { sentOf } from "../revisions/sentOf.ts";
import type { SentRevision } from "../revisions/sentRevision.ts";
import type { FurnishedRoom } from "../room/furnishRoom.ts";
import { schemeInputOf } from "../scheme/fromRoom.ts";
import { roomScheme } from "../scheme/roomScheme.ts";
import { datedAhead } from "../sourcing/datedAhead.ts";
import { lateSteps } from "../sourcing/lateSteps.ts";
import { orderedUnapproved } from "../sourcing/orderedUnapproved.ts";
import { scheduleOf } from "../sourcing/schedule.ts";
import { clothFacts } from "../swatches/clothFacts.ts";
import { money as minor } from "../units/money.ts";
import { choicesOf } from "./choices.ts";
import type { Swatches } from "./readSwatches.ts";

/** The colour that the board stands on: the first paint on walls, else the average of the first paper. */
function wallColour(room: FurnishedRoom, swatches: Swatches): string | null {
  for (const item of room.items) {
    const fields = item.record.fields as { on?: unknown; colour?: string };
    if (
      item.record.kind === "paint" &&
      fields.on !== "ceiling" &&
      fields.on !== "woodwork" &&
      fields.colour
    )
      return fields.colour;
  }
  for (const item of room.items) {
    const { cloth, on } = item.record.fields as { cloth?: string; on?: unknown };
    if (item.record.kind !== "wallpaper" || on === "ceiling") continue;
    if (cloth) return swatches.cloths.get(cloth)?.average ?? null;
  }
  return null;
}

export function roomData(
  records: Records,
  room: FurnishedRoom,
  swatches: Swatches,
  studio: StudioRecord,
  on: string,
  unpriced: readonly UnpricedGood[],
): { data: RoomData; diagnostics: readonly Diagnostic[] } {
  const scheme = roomScheme(
    schemeInputOf({
      records,
      room,
      swatches: swatches.cloths,
      objects: swatches.objects,
      unpriced: unpriced.filter((each) => each.room === room.plan.room.id),
      language: studio.fields.language,
      on,
    }),
  );
  const items = room.items.map(
    (item): ItemData => ({
      record: item.record,
      kind: item.kind,
      made: item.made,
      maker: item.maker,
      phase: phaseOf(item.record, studio, item.kind.phase),
    }),
  );
  return {
    data: {
      record: room.plan.room,
      plan: room.plan,
      scheme,
      items,
      wallColour: wallColour(room, swatches),
    },
    diagnostics: scheme.diagnostics,
  };
}

/** What was sent in this currency, by the names of its revisions. */
function totalsOf(sent: readonly SentRevision[], currency: string): SentTotals {
  const own = sent.filter((each) => each.currency === currency);
  return new Map(own.map((r) => [r.revision.toLowerCase(), minor(r.totalMinor, currency)]));
}

/** One project worked out from its records: rooms, quantities, scheme, money, and what its options and comparisons come to. */
export function projectData(
  records: Records,
  studio: StudioRecord,
  project: ProjectRecord,
  swatches: Swatches,
  today: string,
  sent: readonly SentRevision[],
): { data: ProjectData; diagnostics: readonly Diagnostic[] } {
  const context: PriceContext = {
    records,
    studio,
    kinds: ITEM_KINDS,
    today,
    lookUps: {
      cloth: (id: string) => {
        const card = records.cloths.get(id);
        return card ? clothFacts(card, swatches.cloths.get(id) ?? null) : null;
      },
      objectColours: (id: string) => (swatches.objects.get(id)?.colours ?? []).map((c) => c.hex),
    },
  };
  const dated = project.fields.dated ?? today;
  const priced = priceProject(context, project);
  const { quantities, money } = priced;
  const unpriced = unpricedGoods(quantities, project);
  const furnish = (room: FurnishedRoom) =>
    roomData(records, room, swatches, studio, dated, unpriced);
  const rooms = quantities.rooms.map(furnish);
  const choices = choicesOf(
    context,
    priced,
    rooms.map((r) => r.data),
    (room) => furnish(room).data,
  );
  const compared = project.rooms.flatMap((room) => comparedCloths(context, priced, room.id));
  const state = sentOf({ project, studio, records, quantities, money, dated, today });
  const before = lastBefore(sent, state);
  const account = accountOf(project, studio, money, today, totalsOf(sent, money.currency));
  const data: ProjectData = {
    studio,
    records,
    project,
    rooms: rooms.map((r) => r.data),
    swatches: swatches.cloths,
    objects: swatches.objects,
    quantities,
    money,
    account,
    choices: choices.value,
    compared,
    sent,
    state,
    changes: before && changesBetween(before, state),
    dated,
  };
  return {
    data,
    diagnostics: [
      ...quantities.diagnostics,
      ...rooms.flatMap((r) => r.diagnostics),
      ...money.diagnostics,
      ...account.diagnostics,
      ...choices.diagnostics,
      ...data.rooms.flatMap((room) => checkFixedPlaces(data, room)),
      ...checkLetters(data),
      ...orderedUnapproved(project, records),
      ...datedAhead(project, today),
      ...lateSteps(scheduleOf(data), data),
    ],
  };
}
