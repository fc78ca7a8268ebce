import { hasReached } from "../records/hasReached.ts";
import type { Duration } from "../units/duration.ts";
import { openDaysOf } from "./closings.ts";
import type { LeadBook } from "./leadBook.ts";
import { boughtCards, isSampled, leadOfCloth, leadOfMaker, type MissingLine } from "./leadTimes.ts";
import { type Need, workOf } from "./needs.ts";
import { before, type OpenDays, type Reckoned } from "./openDays.ts";
import type { Draft, ScheduleInput } from "./scheduleTypes.ts";
import { approvalOf, arrivalState, orderState } from "./whatIsDone.ts";

const back = (day: string, span: Duration | undefined, open: OpenDays): Reckoned =>
  span ? before(day, span, open) : { on: day, movedFrom: null };

const NOTHING = { bought: null, inPart: false, expected: null } as const;

/** When each maker's work begins, so that it is ready for the fitting. */
export function workSteps(input: ScheduleInput, fitting: string, book: LeadBook): Draft[] {
  const { project, studio, quantities } = input;
  const ready = back(fitting, studio.fields.schedule?.ready, openDaysOf(studio)).on;
  return workOf(quantities).flatMap(({ maker, items }): Draft[] => {
    const lead = book.knows(
      leadOfMaker(maker, studio),
      "the beginning of the work and the orders for it",
    );
    if (!lead) return [];
    const done = hasReached(project, "making") ? { on: null } : null;
    const day = before(ready, lead.span, openDaysOf(studio, { maker }));
    return [{ kind: "work", cloth: null, makers: [maker], items, done, ...NOTHING, ...day }];
  });
}

/** When each cloth must be with its maker, so that the work can begin. */
export function arrivalSteps(
  input: ScheduleInput,
  needs: readonly Need[],
  work: readonly Draft[],
): Draft[] {
  const { studio } = input;
  return needs.flatMap((need): Draft[] => {
    const { cloth, maker, items } = need;
    const begin = work.find((w) => maker !== null && w.makers.includes(maker));
    if (maker === null || !begin) return [];
    const day = back(begin.on, studio.fields.schedule?.checking, openDaysOf(studio, { maker }));
    const state = arrivalState(need, needs, input);
    return [{ kind: "cloth", cloth, bought: null, makers: [maker], items, ...state, ...day }];
  });
}

/**
 * When each card must be ordered, and by then its sample approved. A cloth comes from one lot, so the first of its makers decides; while
 * one of them has no day nobody knows which is the first, and the order has none either: `isOpenEnded`.
 */
export function orderSteps(
  input: ScheduleInput,
  needs: readonly Need[],
  arrivals: readonly Draft[],
  book: LeadBook,
): { readonly steps: Draft[]; readonly isOpenEnded: boolean } {
  let isOpenEnded = false;
  const steps = boughtCards(needs, input.records).flatMap((card): Draft[] => {
    const what = `the order of ${card.fields.cloth}`;
    const lead = book.knows(leadOfCloth(card, input.studio), what);
    const mine = needs.filter((n) => n.cloth === card.id && !n.clientsOwn);
    for (const need of mine) if (need.maker === null) book.lacks(makerLine(need, input), what);
    const makers = mine.flatMap((n) => n.maker ?? []);
    const days = arrivals
      .filter((a) => a.cloth === card.id && makers.includes(a.makers[0] as string))
      .map((a) => a.on)
      .sort();
    if (!lead || days.length < mine.length) {
      isOpenEnded = true;
      return [];
    }
    const common = {
      cloth: card.id,
      makers,
      items: mine.flatMap((n) => n.items),
      ...NOTHING,
      ...before(days[0] as string, lead.span, openDaysOf(input.studio, card.fields)),
    };
    const order: Draft = { kind: "order", ...common, ...orderState(card.id, mine, needs, input) };
    const approved = card.fields.sample?.approved;
    const done = approved === undefined ? null : { on: approved };
    return isSampled(card) ? [{ kind: "sample", ...common, done }, order] : [order];
  });
  return { steps, isOpenEnded };
}

/** The client's approval, before whatever comes first: an order, or the work of who paints without any. */
export function approvalStep(input: ScheduleInput, others: readonly Draft[]): Draft[] {
  const first = others.map((step) => step.on).sort()[0];
  if (first === undefined) return [];
  const day = back(first, input.studio.fields.schedule?.ordering, openDaysOf(input.studio));
  const done = approvalOf(input.project);
  return [{ kind: "approval", cloth: null, makers: [], items: [], done, ...NOTHING, ...day }];
}

/** Where the maker of an item that nobody makes yet is written. */
function makerLine(need: Need, { project, quantities }: ScheduleInput): MissingLine {
  const [first] = need.items;
  const room = project.rooms.find((r) => r.id === first?.room);
  const found = quantities.items.find((i) => i.room === first?.room && i.item === first?.item);
  const of = found?.title ?? "the item";
  return { file: room?.path ?? project.path, under: ["items", of], line: "maker: …", of };
}
