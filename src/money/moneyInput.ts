import type { ProjectRecord, Records, StudioRecord } from "../records/records.ts";
import type { PricedItem, Purchase } from "./purchase.ts";

/** What money needs to know: the records, and what the quantities found is to be bought and made. */
export interface MoneyInput {
  readonly records: Records;
  readonly studio: StudioRecord;
  readonly project: ProjectRecord;
  readonly purchases: readonly Purchase[];
  readonly items: readonly PricedItem[];
  /** Cloths that were only considered: those of options that do not stand. Their samples may have cost something. */
  readonly considered: readonly string[];
  /** The day of the build, ISO: what is dated after it is not counted yet. */
  readonly today: string;
}
