import { clothWaitsFor, isUnchosen } from "../../quantities/unchosen.ts";
import { isFitted } from "../../records/hasReached.ts";
import { sampleState } from "../../sourcing/samples.ts";
import type { Schedule, Step } from "../../sourcing/scheduleTypes.ts";
import type { ProjectData } from "../projectData.ts";
import { dayInWords, daysWords } from "../words/dates.ts";
import { itemsPhrases, type Language, listed } from "../words/phrases.ts";
import { titleOf } from "./orderRows.ts";

/** A row of the schedule: what falls on one day for one supplier or maker. */
export interface ScheduleRow {
  /** The day by which it must have happened; of what is done the day on which it was, where the files say it. */
  readonly day: string;
  /** The day at a weekend from which it was moved; else empty. */
  readonly moved: string;
  readonly what: string;
  readonly cloths: readonly string[];
  /** What is bought ready, each name once. */
  readonly pieces: readonly string[];
  /** Whose work waits for an order; what is made, of the work itself. */
  readonly whose: string;
  readonly state: string;
}

/** The steps as rows: those of one day, supplier or maker, and state together, in the order of their days. */
export function scheduleRows(data: ProjectData, steps: readonly Step[]): ScheduleRow[] {
  const rows = new Map<string, [Step, ...Step[]]>();
  for (const step of steps) {
    const key = [dayOf(data, step), movedOf(data, step), whatOf(data, step), stateOf(data, step)];
    const same = rows.get(key.join("\n"));
    if (same) same.push(step);
    else rows.set(key.join("\n"), [step]);
  }
  return [...rows.values()].map((own): ScheduleRow => {
    const [first] = own;
    const cloths = [...new Set(own.flatMap((s) => s.cloth ?? []))];
    return {
      day: dayOf(data, first),
      moved: movedOf(data, first),
      what: whatOf(data, first),
      cloths: cloths.map((id) => data.records.cloths.get(id)?.fields.cloth ?? id),
      pieces: [...new Set(own.flatMap((s) => s.bought?.what ?? []))],
      whose: whoseOf(data, own),
      state: stateOf(data, first),
    };
  });
}

/** What is done, by the day on which it was; what has no day comes last. */
export function byDayDone(steps: readonly Step[]): Step[] {
  const day = (step: Step): string => step.done?.on ?? "9999";
  return [...steps].sort((a, b) => (day(a) < day(b) ? -1 : day(a) > day(b) ? 1 : 0));
}

function dayOf(data: ProjectData, step: Step): string {
  const day = step.done ? step.done.on : step.on;
  return day === null ? "" : dayInWords(day, data.studio.fields.language);
}

function movedOf(data: ProjectData, { done, movedFrom }: Step): string {
  if (done || movedFrom === null) return "";
  return `moved from ${dayInWords(movedFrom, data.studio.fields.language)}`;
}

const makerOf = (data: ProjectData, key: string): string =>
  data.studio.fields.makers?.[key]?.name ?? key;

function whatOf(data: ProjectData, step: Step): string {
  const maker = makerOf(data, step.makers[0] ?? "");
  switch (step.kind) {
    case "approval":
      return data.project.fields.revision
        ? `Client’s approval of revision ${data.project.fields.revision}`
        : "Client’s approval";
    case "sample":
      return "Sample approved";
    case "order":
      return `Order from ${supplierOf(data, step)}`;
    case "cloth":
      return `Cloth is with ${maker}`;
    case "work":
      return `Work begins: ${maker}`;
    case "bought":
      return `Order from ${supplierOf(data, step)}, bought ready`;
    case "there":
      return `Here from ${supplierOf(data, step)}`;
  }
}

function supplierOf(data: ProjectData, step: Step): string {
  const key = step.bought?.supplier ?? data.records.cloths.get(step.cloth ?? "")?.fields.supplier;
  return key === undefined
    ? "no supplier named"
    : (data.studio.fields.suppliers?.[key]?.name ?? key);
}

/** Of an order its makers; of the work what is made, room by room; else nothing. */
function whoseOf(data: ProjectData, steps: readonly Step[]): string {
  const [first] = steps;
  if (first?.kind === "order") {
    const makers = [...new Set(steps.flatMap((s) => s.makers))];
    return `for ${listed(makers.map((key) => makerOf(data, key)))}`;
  }
  if (first?.kind !== "work") return "";
  const of = new Set(steps.flatMap((s) => s.items.map(({ room, item }) => `${room}/${item}`)));
  const rooms = data.rooms.flatMap((room) => {
    const own = room.items.filter((i) => of.has(`${room.record.id}/${i.record.id}`));
    const words = listed(itemsPhrases(own, data.studio.fields.language as Language));
    return own.length > 0 ? [`${room.record.fields.room}: ${words}`] : [];
  });
  return rooms.join(". ");
}

const SAMPLES = {
  "to-ask-for": "to be asked for",
  ordered: "sample is on its way",
  here: "sample is here",
  approved: "",
  returned: "sample went back",
} as const;

/** What has come of a step, in words; what is only not yet due has none, but of a sample where it is. */
function stateOf(data: ProjectData, step: Step): string {
  const { language } = data.studio.fields;
  if (step.done) return "";
  const card = data.records.cloths.get(step.cloth ?? "");
  const words = [
    step.daysLate > 0 ? lateWords(data, step) : "",
    step.kind === "sample" && card && !isFitted(data.project) ? SAMPLES[sampleState(card)] : "",
    step.kind === "order" || step.kind === "bought" ? choiceWords(data, step) : "",
    step.inPart && step.kind === "order" ? "not enough was ordered" : "",
    step.inPart && step.kind === "cloth" ? "too little has come" : "",
    step.expected !== null ? `expected ${dayInWords(step.expected, language)}` : "",
  ];
  return words.filter((w) => w !== "").join("; ");
}

/** What the client has still to choose before a cloth or a piece is ordered. */
function choiceWords(data: ProjectData, { cloth, items }: Step): string {
  const { quantities } = data;
  const open =
    cloth === null
      ? items.flatMap(({ room, item }) =>
          isUnchosen(quantities, room, item) ? [titleOf(data, room, item)] : [],
        )
      : clothWaitsFor(quantities, cloth).map((u) => u.title);
  return open.length === 0 ? "" : `after the client’s choice: ${listed([...new Set(open)])}`;
}

function lateWords(data: ProjectData, step: Step): string {
  const comesTooLate = step.expected !== null && step.on >= data.dated;
  return `${daysWords(step.daysLate)} ${comesTooLate ? "too late" : "late"}`;
}

/** The first thing that is still to be done. */
export function nextOf({ steps }: Schedule): Step | null {
  return steps.find((step) => step.done === null && step.daysLate === 0) ?? null;
}
