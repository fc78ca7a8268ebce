import type { Swatch } from "../../swatches/swatch.ts";
import { wordsIn } from "../../units/spelling.ts";
import { type Language, listed } from "../words/phrases.ts";

/**
 * What a drawing must say of cloths that nobody has photographed yet: they are drawn flat, in the mixture of their declared colours,
 * or white where none is declared. Nothing where there is none.
 */
export function awaitedWords(swatches: readonly Swatch[], language: Language): string {
  const say = wordsIn(language);
  const awaited = [...new Set(swatches)].filter((s) => s.photo === null);
  const sentence = (all: readonly Swatch[], how: string): string => {
    const names = listed(all.map((s) => s.name).sort());
    const verb = all.length > 1 ? "are" : "is";
    return all.length > 0 ? say` ${names} ${verb} still to be photographed, and ${how}.` : "";
  };
  const known = awaited.filter((s) => s.average !== null);
  const single = known.filter((s) => s.colours.length === 1);
  const mixed = known.filter((s) => s.colours.length > 1);
  return [
    sentence(single, say`drawn in one flat colour`),
    sentence(
      mixed,
      say`drawn flat, in the mixture of ${mixed.length > 1 ? "their" : "its"} colours`,
    ),
    sentence(
      awaited.filter((s) => s.average === null),
      "left white",
    ),
  ].join("");
}
