/** Front matter that YAML would misread, and exactly what is said of it: place, code, message, and how to mend it. */
export interface Trap {
  readonly name: string;
  readonly yaml: string;
  readonly says: readonly string[];
}
