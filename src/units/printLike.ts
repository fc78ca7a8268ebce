import type { Length } from "./length.ts";
import { printLength } from "./printLength.ts";

const INCHES = /["'”″’′]|\b(?:in|ins|inch|inches|ft|foot|feet|yd|yds|yards?)\b|\d(?:in|ft|yd)\b/i;

/**
 * A computed length in the units in which a person typed others that it comes from: in inches where the first of them that was typed
 * says so, else in centimetres. For messages about a file, which may be read before the studio's own units are.
 */
export function printLike(length: Length, ...like: readonly (Length | null | undefined)[]): string {
  const typed = like.find((each) => each?.typed)?.typed ?? "";
  return printLength(length, INCHES.test(typed) ? "inches" : "centimetres");
}
