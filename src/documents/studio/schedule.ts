import { isFitted } from "../../records/hasReached.ts";
import { scheduleOf } from "../../sourcing/schedule.ts";
import type { Schedule } from "../../sourcing/scheduleTypes.ts";
import { small } from "../../units/capital.ts";
import type { Page } from "../page.ts";
import type { ProjectData } from "../projectData.ts";
import { dateInWords, dayInWords, longDay } from "../words/dates.ts";
import { countWord, listed } from "../words/phrases.ts";
import { closedWords, unwrittenWords } from "./closedWords.ts";
import { byDayDone, nextOf, scheduleRows } from "./scheduleRows.ts";
import { studioPage } from "./studioPage.ts";

/** The schedule of a project, reckoned back from its fitting, what is late first: for the studio alone. */
export function schedulePage(data: ProjectData): Page {
  const schedule = scheduleOf(data);
  const late = schedule.steps.filter((s) => s.daysLate > 0);
  const open = schedule.steps.filter((s) => s.daysLate === 0 && s.done === null);
  const done = schedule.steps.filter((s) => s.done !== null);
  const parts = [
    { name: "Late", day: "By", rows: scheduleRows(data, late) },
    {
      // Once it is fitted nothing is to come; what was never written is shown as that.
      name: isFitted(data.project) ? "Never written as done" : "To come",
      day: "By",
      rows: scheduleRows(data, open),
    },
    { name: "Done", day: "On", rows: scheduleRows(data, byDayDone(done)) },
  ];
  return studioPage(data, "schedule", {
    to: ["orders", "receiving", "samples", "findings", "account"],
    model: {
      fitted: fittedWords(data, schedule),
      lead: leadWords(data, schedule),
      parts: parts
        .filter((p) => p.rows.length > 0)
        .map((p) => ({ ...p, hasStates: p.rows.some((r) => r.state !== "") })),
      missing: schedule.missing.map((m) => ({
        of: m.of,
        // Of many orders that wait for one supplier the list would be longer than it helps.
        stops: listed(m.for),
        where: [m.file, ...m.under].join(", "),
        line: m.line,
      })),
      times: timesWords(data, schedule),
      closed: closedWords(data, schedule),
      unwritten: unwrittenWords(data, schedule),
      note: NOTE,
      openEnded: openEndedWords(schedule),
    },
  });
}

function fittedWords(
  { project, studio }: ProjectData,
  { fitting, closedAtFitting }: Schedule,
): string {
  if (fitting === null) return "No day of fitting is named.";
  const day = longDay(fitting, studio.fields.language);
  if (isFitted(project)) return `It was fitted on ${day}.`;
  return `To be fitted on ${day}${closedAtFitting ? ", which is a closed day" : ""}.`;
}

/** How things stand, in a sentence or two: what is late, and what is to be done next. */
function leadWords(data: ProjectData, schedule: Schedule): string {
  const { language } = data.studio.fields;
  const asOf = dateInWords(schedule.asOf, language);
  if (schedule.fitting === null || isFitted(data.project)) return "";
  if (schedule.steps.length === 0) return "Nothing can be reckoned yet: see what is missing.";
  const late = scheduleRows(
    data,
    schedule.steps.filter((s) => s.daysLate > 0),
  ).length;
  const said =
    late === 0
      ? `On ${asOf} nothing is late`
      : `On ${asOf} ${late === 1 ? "one thing is" : `${countWord(late)} things are`} late`;
  const next = nextOf(schedule);
  const due = next ? dayInWords(next.on, language) : "";
  const [row] = next
    ? scheduleRows(
        data,
        schedule.steps.filter((s) => s === next),
      )
    : [];
  const what = row ? small(row.what) : "";
  return `${said}.${row ? ` Next, by ${due}: ${what}.` : ""}`;
}

/** What it was reckoned with: makers, suppliers, and the time that the studio keeps between. */
function timesWords({ studio }: ProjectData, { times }: Schedule): string[] {
  const { ready, checking, ordering } = studio.fields.schedule ?? {};
  return [
    ...times.map(({ of, span }) => `${of} ${span.text}`),
    ...(ready ? [`made things ready ${ready.text} before the fitting`] : []),
    ...(checking ? [`cloth there ${checking.text} before the work, to be checked`] : []),
    ...(ordering ? [`approval ${ordering.text} before the first order`] : []),
  ];
}

/** What every reader of a schedule must know of its days. */
const NOTE =
  "Each day is the last on which it can be done. A day that falls on a weekend or on a closed day is moved to the working day before. A time in weeks or days is taken to hold single holidays already; a closing of five working days or more makes it longer. Paint, and what is bought ready from no named supplier, is not in the schedule.";

/** Said where an order has no day: the earliest may be among those. */
function openEndedWords({ isOpenEnded, steps }: Schedule): string {
  return isOpenEnded && steps.length > 0
    ? "Of some cloths the day of the order is not known: the client’s approval may be needed earlier than it says above."
    : "";
}
