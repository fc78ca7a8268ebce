import { isFitted } from "../records/hasReached.ts";
import { daysBetween } from "./calendar.ts";
import { type Closing, closedAtFitting, closedUntil, closingsWithin } from "./closings.ts";
import { leadBook } from "./leadBook.ts";
import { needsOf } from "./needs.ts";
import { readySteps } from "./readySteps.ts";
import type { Draft, Schedule, ScheduleInput, Step, StepKind } from "./scheduleTypes.ts";
import { approvalStep, arrivalSteps, orderSteps, workSteps } from "./steps.ts";

const ORDER: readonly StepKind[] = [
  "approval",
  "sample",
  "order",
  "bought",
  "cloth",
  "work",
  "there",
];

/**
 * The days of a project, reckoned back from its fitting: work begins, cloth is with its maker, cloth is ordered, its sample and the whole
 * are approved. Only times that the studio wrote are reckoned with; where one is missing, what hangs on it has no day.
 */
export function scheduleOf(input: ScheduleInput): Schedule {
  const { project, studio, records, quantities, dated } = input;
  const fitting = project.fields.fitting ?? null;
  const book = leadBook();
  if (fitting === null) {
    const of = project.fields.project;
    book.lacks({ file: project.path, under: [], line: "fitting: …", of }, "every date");
    const none = { closings: [], closedUntil: null, closedAtFitting: null, isOpenEnded: false };
    return { fitting, asOf: dated, steps: [], ...book.found(), ...none };
  }
  const needs = needsOf(quantities, records);
  const work = workSteps(input, fitting, book);
  const arrivals = arrivalSteps(input, needs, work);
  const { steps: orders, isOpenEnded } = orderSteps(input, needs, arrivals, book);
  const ready = readySteps(input, fitting, book);
  const approval = approvalStep(input, [...orders, ...work, ...ready]);
  const drafts = [...approval, ...orders, ...arrivals, ...work, ...ready];
  const steps = drafts.map((s): Step => ({ ...s, daysLate: daysLate(s, input) }));
  return {
    fitting,
    asOf: dated,
    steps: steps.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : byKind(a, b))),
    ...book.found(),
    closings: closingsOf(input, steps, fitting),
    closedUntil: closedUntil(studio),
    closedAtFitting: closedAtFitting(studio, fitting),
    isOpenEnded,
  };
}

/** The closings from the first day that is still to be kept to the fitting, of the studio and of all who work or deliver for it. */
function closingsOf(
  { studio, records }: ScheduleInput,
  steps: readonly Step[],
  fitting: string,
): Closing[] {
  // What was ordered comes by the time that passes from its order on.
  const isOrder = ({ kind }: Step): boolean => kind === "order" || kind === "bought";
  const days = steps.flatMap((s) => (s.done ? (isOrder(s) && s.done.on) || [] : s.on));
  const from = days.sort()[0];
  if (from === undefined) return [];
  const makers = [...new Set(steps.flatMap((s) => s.makers))];
  const suppliers = steps
    .filter(isOrder)
    .flatMap((s) => s.bought?.supplier ?? records.cloths.get(s.cloth ?? "")?.fields.supplier ?? []);
  return closingsWithin(studio, from, fitting, makers, [...new Set(suppliers)]);
}

const byKind = (a: Step, b: Step): number => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind);

function daysLate(step: Draft, { project, dated }: ScheduleInput): number {
  if (step.done || isFitted(project)) return 0;
  const past = daysBetween(step.on, dated);
  const comes = step.expected === null ? 0 : daysBetween(step.on, step.expected);
  return Math.max(0, past, comes);
}
