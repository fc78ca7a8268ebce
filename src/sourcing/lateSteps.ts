import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import { isFitted } from "../records/hasReached.ts";
import type { Schedule, ScheduleInput, Step, StepKind } from "./scheduleTypes.ts";

const SAYS: Readonly<Record<StepKind, { readonly said: string; readonly hint: string }>> = {
  approval: {
    said: "the client's approval was to be there by now",
    hint: "Ask for it, and write it under approvals; or agree on a later fitting.",
  },
  sample: {
    said: "these samples were to be approved by now",
    hint: "Write approved: and the day under sample on the card, or agree on a later fitting.",
  },
  order: {
    said: "these were to be ordered by now",
    hint: "Order them and write it under orders, ask for a quicker delivery (lead: on the cloth's card), or agree on a later fitting.",
  },
  bought: {
    said: "these pieces that are bought ready were to be ordered by now",
    hint: "Order them and write ordered: and the day at the item’s hardware (of an object, at the item), ask for a quicker delivery, or agree on a later fitting.",
  },
  cloth: {
    said: "these were to be with their makers by now, or come too late",
    hint: "Ask the supplier for the day and the maker for time, and write under receipts what has come; or agree on a later fitting.",
  },
  work: {
    said: "this work was to be begun by now",
    hint: "Ask the maker. Once it is begun write status: making; or agree on a later fitting.",
  },
  there: {
    said: "these pieces that are bought ready were to be here by now, or come too late",
    hint: "Ask the supplier for the day, and write arrived: and the day where ordered: stands once they are here; or agree on a later fitting.",
  },
};

/**
 * What is late as of the documents' date: a warning for each kind of step, at the line of the fitting, with the day of each; and one where
 * the fitting itself falls on a closed day. Nothing once the project is fitted.
 */
export function lateSteps(schedule: Schedule, input: ScheduleInput): Diagnostic[] {
  const late = schedule.steps.filter((step) => step.daysLate > 0);
  const kinds = [...new Set(late.map((step) => step.kind))];
  const said = kinds.map((kind) => {
    const own = late.filter((step) => step.kind === kind);
    const names = own.map((step) => `${nameOf(step, input)} (${step.on})`);
    const list = kind === "approval" ? ` (${own[0]?.on})` : `: ${[...new Set(names)].join(", ")}`;
    return diagnostic(
      input.project.place(["fitting"]),
      "schedule-late",
      `To be fitted on ${schedule.fitting}, ${SAYS[kind].said}${list}.`,
      { severity: "warning", actual: schedule.asOf, hint: SAYS[kind].hint },
    );
  });
  return [...fittingClosed(schedule, input), ...said];
}

/** A warning where nobody works on the day of the fitting. */
function fittingClosed({ fitting, closedAtFitting: closed }: Schedule, input: ScheduleInput) {
  if (closed === null || isFitted(input.project)) return [];
  const what = closed.what === null ? "" : `: ${closed.what}`;
  return [
    diagnostic(
      input.project.place(["fitting"]),
      "fitting-closed",
      `The fitting is on ${fitting}, which is a closed day${what}.`,
      {
        severity: "warning",
        actual: fitting,
        hint: "Agree on another day, or mend the line under closed in studio.md.",
      },
    ),
  ];
}

/** A card's or piece's name; of a maker's work the maker's. */
function nameOf(step: Step, { records, studio }: ScheduleInput): string {
  if (step.bought !== null) return step.bought.what;
  if (step.cloth !== null) return records.cloths.get(step.cloth)?.fields.cloth ?? step.cloth;
  const [maker] = step.makers;
  return maker === undefined ? "" : (studio.fields.makers?.[maker]?.name ?? maker);
}
