import type { ClosedDays } from "../../fields/closedField.ts";
import { isFitted } from "../../records/hasReached.ts";
import type { Closing } from "../../sourcing/closings.ts";
import type { Schedule } from "../../sourcing/scheduleTypes.ts";
import type { ProjectData } from "../projectData.ts";
import { daysInWords, shortDate } from "../words/dates.ts";

/** The closed days in the time of a schedule, each once, with whose they are and what, as they follow one another. */
export function closedWords(data: ProjectData, { closings }: Schedule): string[] {
  const { language } = data.studio.fields;
  return closings.map((closing) => {
    const whose = whoseOf(data, closing);
    return `${whose === "" ? "" : `${whose} `}${withName(closing, daysInWords(closing.from, closing.to, language))}`;
  });
}

function whoseOf({ studio }: ProjectData, { of }: Closing): string {
  if (of === null) return "";
  const { makers, suppliers } = studio.fields;
  return "maker" in of
    ? (makers?.[of.maker]?.name ?? of.maker)
    : (suppliers?.[of.supplier]?.name ?? of.supplier);
}

const withName = ({ what }: ClosedDays, days: string): string =>
  what === null ? days : `${days} (${what})`;

/** From when on nobody has written which days are closed; empty where that reaches beyond the fitting, or all is over. */
export function unwrittenWords(data: ProjectData, schedule: Schedule): string {
  const { closedUntil, fitting, steps } = schedule;
  if (fitting === null || steps.length === 0 || isFitted(data.project)) return "";
  if (closedUntil === null)
    return "No closed days are written: put holidays, and the weeks in which all are closed, under closed in studio.md, and a maker’s or supplier’s own with them.";
  if (closedUntil >= fitting) return "";
  const last = shortDate(closedUntil, data.studio.fields.language);
  return `After ${last} no closed day is written in studio.md.`;
}
