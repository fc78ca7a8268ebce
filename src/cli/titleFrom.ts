import { capital } from "../units/capital.ts";

/** A title made from a file name: `fern-trellis` is Fern trellis. */
export function titleFrom(name: string): string {
  return capital(name.replace(/[-_]+/g, " ").trim());
}
