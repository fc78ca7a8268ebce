import type { z } from "zod";
import type { AllowanceTable } from "../fields/allowance.ts";

/** What records/ must know of a kind of item in order to read it; the table is handed in, so that records/ imports no item. */
export interface ItemEntry {
  /** The key that begins an item of this kind in a room file. */
  readonly kind: string;
  /** Other words for the key, of the other side's vocabulary. */
  readonly synonyms: readonly string[];
  readonly schema: z.ZodType;
  readonly allowances: AllowanceTable;
}

export type ItemTable = readonly ItemEntry[];
