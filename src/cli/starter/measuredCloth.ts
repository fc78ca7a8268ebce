import { isPlainKind } from "../../cloth/clothMeasure.ts";
import { measureCloth } from "../../cloth/measureCloth.ts";
import type { MeasureSettings } from "../../cloth/measureSettings.ts";
import type { Checked } from "../../diagnostics/diagnostic.ts";
import { readPhoto } from "../../images/photo/readPhoto.ts";
import { measuredLength, patternFacts, sizeWord } from "../../swatches/measureText.ts";
import { parseLength } from "../../units/parseLength.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import type { Filling } from "./fieldLines.ts";

/** What a photograph gives a new card: fields, and sentences for her to look at. */
export interface MeasuredCard {
  readonly filling: Filling;
  readonly notes: readonly string[];
}

/**
 * Measures a photograph for a new card. Kind and repeat are filled in where the measurement is sure of
 * them; what it is not sure of, and the colours, stand as notes. Without the length that the picture shows
 * there is no scale, and no size is made up.
 */
export async function measuredCloth(
  photo: string,
  shows: string | null,
  settings: MeasureSettings,
): Promise<Checked<MeasuredCard>> {
  const place = { file: photo, line: null, column: null, keyPath: null };
  const read = await readPhoto(photo, { place });
  if (read.value === null) return { value: null, diagnostics: read.diagnostics };
  const length = shows === null ? null : parseLength(shows);
  const showsMm = length?.ok ? length.length.toMm() : null;
  const { value, diagnostics } = measureCloth(read.value.pixels, showsMm ?? 1000, {
    place,
    ...settings,
  });
  const found = [...read.diagnostics, ...diagnostics];
  if (value === null) return { value: null, diagnostics: found };
  const colours = value.colours.map(
    ({ name, hex, share }) => `${name} ${hex} ${Math.round(share * 100)}%`,
  );
  const notes = [`colours: ${colours.join(", ")}`];
  if (showsMm === null) return { value: { filling: {}, notes }, diagnostics: found };
  const units: UnitSystem = /["'”″’′]|in|ft|yd|feet|foot|yard/i.test(shows ?? "")
    ? "inches"
    : "centimetres";
  const say = (mm: number): string => measuredLength(mm, units);
  const { kind, repeat, motifMm, readsPlainFromM } = value.pattern;
  const filling: Record<string, string | Filling> = {};
  if (kind !== null && !value.confirm.some((one) => one.what === "pattern.kind"))
    filling.kind = kind;
  if (value.pattern.runs !== null && repeat?.sure) filling.runs = value.pattern.runs;
  // What stands on the card is matched: of what may be a weave she is asked first.
  if (
    repeat?.sure &&
    !isPlainKind(kind) &&
    repeat.verticalMm !== null &&
    repeat.match !== "other"
  ) {
    filling.repeat = {
      up: say(repeat.verticalMm),
      ...(repeat.horizontalMm === null ? {} : { across: say(repeat.horizontalMm) }),
      match: repeat.match,
    };
    notes.push(
      "please look: the repeat above was measured in the photograph and may be off by a part in a hundred; write the supplier's in its place before you order",
    );
  } else if (kind === "stripe" && repeat?.sure && repeat.horizontalMm !== null) {
    filling.repeat = { across: say(repeat.horizontalMm) };
    notes.push(
      "please look: the repeat across was measured in the photograph and may be off by a part in a hundred; write the supplier's in its place before you order",
    );
  } else if (repeat !== null) {
    const ways = [repeat.verticalMm, repeat.horizontalMm].map((mm) =>
      mm === null ? "none" : say(mm),
    );
    notes.push(`repeat, perhaps: ${ways[0]} up, ${ways[1]} across, ${repeat.match}`);
  }
  if (value.pattern.bands.length > 0) {
    const bands = patternFacts(value.pattern, units).filter(({ what }) => what.startsWith("bands"));
    notes.push(...bands.map((fact) => `${fact.what}: ${fact.value}`));
  }
  const sized = sizeWord(kind);
  if (motifMm !== null) notes.push(`${sized}: ${say(motifMm)}${sized === "motif" ? " high" : ""}`);
  if (readsPlainFromM !== null) notes.push(`reads as a plain from ${readsPlainFromM.toFixed(1)} m`);
  notes.push(...value.confirm.map((one) => `please look: ${one.why}`));
  return { value: { filling, notes }, diagnostics: found };
}
