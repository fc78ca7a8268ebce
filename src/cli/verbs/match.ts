import { spellColourName } from "../../colour/colourName.ts";
import { diagnosticJson } from "../../diagnostics/report.ts";
import { readLibrary } from "../../site/readLibrary.ts";
import { type Match, match as nearestTo } from "../../swatches/match.ts";
import type { Outcome } from "../outcome.ts";
import { failed, measurePhoto } from "./swatch.ts";
import type { SwatchOptions } from "./swatchOptions.ts";

/** The cloths of the library nearest to a photograph, remnants in hand first. Colours need no scale. */
export async function match(
  contentDir: string,
  photo: string,
  options: SwatchOptions,
  isScaled: boolean,
): Promise<Outcome> {
  const { measured, diagnostics } = await measurePhoto(contentDir, photo, options);
  if (measured === null) return failed(photo, diagnostics);
  const library = await readLibrary(contentDir);
  const cards = [...library.records.cloths.values()].flatMap((card) => {
    const swatch = library.swatches.cloths.get(card.id);
    return swatch ? [{ card, swatch }] : [];
  });
  const { colours, pattern } = measured.measure;
  const units = library.records.studio?.fields.units ?? options.units;
  const language = library.records.studio?.fields.language ?? "en-US";
  const nearest = nearestTo({ colours, kind: isScaled ? pattern.kind : null }, cards, units);
  const all = [...diagnostics, ...library.diagnostics];
  const shown = nearest.map(({ cloth, distance, remnant, why }) => ({
    cloth,
    distance,
    remnant,
    why,
  }));
  return {
    // Errors elsewhere in the studio do not touch the comparison.
    exit: nearest.length === 0 && library.diagnostics.length > 0 ? 1 : 0,
    json: { photo, nearest: shown, diagnostics: all.map(diagnosticJson) },
    text:
      nearest.length === 0
        ? "The library has no cloth with colours."
        : textOf(photo, nearest, language),
    diagnostics: all,
  };
}

function textOf(photo: string, nearest: readonly Match[], language: string): string {
  return [
    `Nearest to ${photo}, by colours and their shares (0: the same):`,
    ...nearest.map(
      ({ cloth, name, distance, why }) =>
        `  ${distance.toFixed(1).padStart(5)}  ${name} (${cloth}): ${spellColourName(why, language)}`,
    ),
  ].join("\n");
}
