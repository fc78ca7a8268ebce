import type { ClosedDays } from "../fields/closedField.ts";
import type { ProjectQuantities } from "../quantities/quantityTypes.ts";
import type { ProjectRecord, Records, StudioRecord } from "../records/records.ts";
import type { Closing } from "./closings.ts";
import type { LeadTime, MissingFor } from "./leadTimes.ts";
import type { ItemOf } from "./needs.ts";
import type { Reckoned } from "./openDays.ts";

/** What a schedule is reckoned from. */
export interface ScheduleInput {
  readonly project: ProjectRecord;
  readonly studio: StudioRecord;
  readonly records: Records;
  readonly quantities: ProjectQuantities;
  /** The documents' date, ISO. */
  readonly dated: string;
}

/** `bought` is the order of a piece that is bought ready, `there` the day on which such a piece must have come. */
export type StepKind = "approval" | "sample" | "order" | "bought" | "cloth" | "work" | "there";

/** One thing that must have happened by a day. */
export interface Step extends Reckoned {
  readonly kind: StepKind;
  /** The card; null of an approval, of a maker's work and of what is bought ready. */
  readonly cloth: string | null;
  /** The piece that is bought ready, its supplier's key, and the day on which it must be there; null of all else. */
  readonly bought: {
    readonly supplier: string;
    readonly what: string;
    readonly neededOn: string;
  } | null;
  /** Keys of the makers whose work waits for it. */
  readonly makers: readonly string[];
  readonly items: readonly ItemOf[];
  /** When it was done, where the files say so; null in it where they do not say on which day. */
  readonly done: { readonly on: string | null } | null;
  /** True where some of it was done, and more is needed. */
  readonly inPart: boolean;
  /** The day on which what was ordered comes, by its supplier's time; null of all else. */
  readonly expected: string | null;
  /** Days by which the documents' date is past its day, or by which what was ordered comes too late; 0 where neither is so. */
  readonly daysLate: number;
}

/** A step before it is held against the documents' date. */
export type Draft = Omit<Step, "daysLate">;

export interface Schedule {
  /** Null where the project's file names no day: then there are no steps. */
  readonly fitting: string | null;
  readonly asOf: string;
  /** In the order of their days. */
  readonly steps: readonly Step[];
  /** Lines that are missing in the files, with what has no day for want of them. */
  readonly missing: readonly MissingFor[];
  /** The makers' and suppliers' times that were reckoned with, each once. */
  readonly times: readonly LeadTime[];
  /** The closed days in the time of the schedule, each once, in the order of their days; only those of who works for it. */
  readonly closings: readonly Closing[];
  /** The last closed day that the studio wrote; null where it wrote none. */
  readonly closedUntil: string | null;
  /** The closed days in which the fitting falls; null where it does not. */
  readonly closedAtFitting: ClosedDays | null;
  /** True where the client's approval may be needed earlier: an order has no day yet. */
  readonly isOpenEnded: boolean;
}
