/** The source of what the trade does and no book was found to say. */
export const PRACTICE = "common practice, no source";

/** One allowance of a kind of item: what it is, the trade's usual value in each unit system, and where that value comes from. */
export interface AllowanceDefinition {
  readonly is: "length" | "ratio" | "count" | "percent";
  readonly description: string;
  /** As a person would type it; the studio's units decide which is used. */
  readonly usual: { readonly inches: string; readonly centimetres: string };
  /** A published source, or `PRACTICE`. */
  readonly source: string;
}

/** A kind's allowances by name, in the words of `studio.md`. */
export type AllowanceTable = Readonly<Record<string, AllowanceDefinition>>;
