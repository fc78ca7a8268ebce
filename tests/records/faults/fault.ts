/** A fault in the small studio's files, and exactly what is said of it. */
export interface Fault {
  readonly name: string;
  /** Whole files as they stand with the fault in them; null is a file that is not there. */
  readonly files: Readonly<Record<string, string | null>>;
  readonly says: readonly string[];
}
