import { daysBetween } from "./calendar.ts";
import { leadBook } from "./leadBook.ts";
import { needsOf } from "./needs.ts";
import type { Draft, Schedule, ScheduleInput, Step, StepKind } from "./scheduleTypes.ts";
import { approvalStep, arrivalSteps, orderSteps, workSteps } from "./steps.ts";
import { isFitted } from "./whatIsDone.ts";

const ORDER: readonly StepKind[] = ["approval", "sample", "order", "cloth", "work"];

/**
 * The days of a project, reckoned back from its fitting: work begins, cloth is with its maker, cloth is ordered, its sample and the whole
 * are approved. Only times that the studio wrote are reckoned with; where one is missing, what hangs on it has no day.
 */
export function scheduleOf(input: ScheduleInput): Schedule {
  const { project, records, quantities, dated } = input;
  const fitting = project.fields.fitting ?? null;
  const book = leadBook();
  if (fitting === null) {
    const of = project.fields.project;
    book.lacks({ file: project.path, under: [], line: "fitting: …", of }, "every date");
    return { fitting, asOf: dated, steps: [], ...book.found(), isOpenEnded: false };
  }
  const needs = needsOf(quantities, records);
  const work = workSteps(input, fitting, book);
  const arrivals = arrivalSteps(input, needs, work);
  const { steps: orders, isOpenEnded } = orderSteps(input, needs, arrivals, book);
  const drafts = [...approvalStep(input, [...orders, ...work]), ...orders, ...arrivals, ...work];
  const steps = drafts.map((s): Step => ({ ...s, daysLate: daysLate(s, input) }));
  return {
    fitting,
    asOf: dated,
    steps: steps.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : byKind(a, b))),
    ...book.found(),
    isOpenEnded,
  };
}

const byKind = (a: Step, b: Step): number => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind);

function daysLate(step: Draft, { project, dated }: ScheduleInput): number {
  if (step.done || isFitted(project)) return 0;
  const past = daysBetween(step.on, dated);
  const comes = step.expected === null ? 0 : daysBetween(step.on, step.expected);
  return Math.max(0, past, comes);
}
