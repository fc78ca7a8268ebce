import { returnedOf } from "../quantities/arrival/returned.ts";
import { orderedOf } from "../quantities/ordered.ts";
import { hasReached } from "../records/hasReached.ts";
import type { ProjectRecord } from "../records/records.ts";
import { sameRevision } from "../records/sameRevision.ts";
import { openDaysOf } from "./closings.ts";
import { leadOfCloth } from "./leadTimes.ts";
import { arrivedOf, type Need } from "./needs.ts";
import { after, openAfter } from "./openDays.ts";
import type { ScheduleInput, Step } from "./scheduleTypes.ts";

/** When the state that is now proposed was approved; null while it is not. */
export function approvalOf(project: ProjectRecord): Step["done"] {
  const { approvals, revision } = project.fields;
  const own = (approvals ?? []).filter(
    (a) => revision === undefined || sameRevision(a.revision, revision),
  );
  const last = own
    .map((a) => a.on)
    .sort()
    .at(-1);
  if (last !== undefined) return { on: last };
  return hasReached(project, "approved") ? { on: null } : null;
}

/** Done once as much was ordered as is needed, or once all of it has come; `mine` are the needs of the card. */
export function orderState(
  card: string,
  mine: readonly Need[],
  needs: readonly Need[],
  { project, records, quantities }: ScheduleInput,
): Pick<Step, "done" | "inPart"> {
  const found = orderedOf(card, project, quantities, records);
  const days = (found?.orders ?? []).map((o) => o.on).sort();
  const isEnough = found !== null && found.over.mm.compare(0) >= 0;
  const isHere = mine.every((need) => arrivedOf(need, needs, project)?.isAll);
  if (isEnough || isHere || hasReached(project, "making"))
    return { done: { on: days.at(-1) ?? null }, inPart: false };
  return { done: null, inPart: found !== null && !found.isAnew };
}

/** With its maker once all of it has come there, as far as the files say; then when, or when it is to come. */
export function arrivalState(
  need: Need,
  needs: readonly Need[],
  input: ScheduleInput,
): Pick<Step, "done" | "inPart" | "expected"> {
  const came = arrivedOf(need, needs, input.project);
  const isDone = came?.isAll || hasReached(input.project, "making");
  return {
    done: isDone ? { on: came?.on ?? null } : null,
    inPart: came !== null && !isDone,
    expected: isDone ? null : expectedOf(need, input),
  };
}

/** When a cloth that was ordered is there, by its last order and the time that it takes; null where that is not known. */
function expectedOf(need: Need, input: ScheduleInput): string | null {
  const { project, studio, records, quantities } = input;
  const card = records.cloths.get(need.cloth);
  const found = card ? orderedOf(card.id, project, quantities, records) : null;
  const lead = card ? leadOfCloth(card, studio) : null;
  // What was credited, and not ordered since, is not on its way.
  if (found?.isAnew) return null;
  // What went back to be replaced is ordered anew on that day.
  const again = returnedOf(need.cloth, project).flatMap(({ returned }) =>
    returned && returned.for !== "credit" ? [returned.on] : [],
  );
  const ordered = (found?.orders ?? []).map((o) => o.on);
  const last = [...ordered, ...(ordered.length > 0 ? again : [])].sort().at(-1);
  if (last === undefined || !card || !lead || !("lead" in lead)) return null;
  const comes = after(last, lead.lead.span, openDaysOf(studio, card.fields));
  // Where its maker is closed nobody takes it in.
  return openAfter(comes, openDaysOf(studio, { maker: need.maker }));
}
