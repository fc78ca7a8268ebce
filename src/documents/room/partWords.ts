import { layingOf } from "../../swatches/period.ts";
import type { Swatch } from "../../swatches/swatch.ts";
import { listed } from "../words/phrases.ts";

/**
 * What a drawing must say of cloths whose photograph shows less than one whole step of the pattern and is laid at its place in each all
 * the same: what lies between is not the cloth. Nothing where there is none.
 */
export function partWords(swatches: readonly Swatch[]): string {
  const names = [
    ...new Set(swatches.filter((s) => layingOf(s) === "part").map((s) => s.name)),
  ].sort();
  if (names.length === 0) return "";
  const many = names.length > 1;
  return ` The ${many ? "pictures" : "picture"} of ${listed(names)} ${many ? "show" : "shows"} less than ${many ? "their repeats" : "its repeat"}: the plain bands between are not in the cloth.`;
}
