import type { ClothMeasure, MeasuredPattern } from "../../src/cloth/clothMeasure.ts";
import { readRecords } from "../../src/records/readRecords.ts";
import type { ClothRecord } from "../../src/records/records.ts";
import { declaredColours } from "../../src/swatches/declaredColours.ts";

/** A card read by the program's own reader. */
export function card(text: string): ClothRecord {
  const records = readRecords({
    files: [{ path: "cloths/fern.md", text: `---\n${text}\n---\n` }],
    present: [],
    items: [],
  });
  const found = records.cloths.get("fern");
  if (!found) throw new Error(records.diagnostics.map((d) => d.message).join("\n"));
  return found;
}

const PATTERN: MeasuredPattern = {
  kind: "large-print",
  repeat: {
    verticalMm: 640,
    horizontalMm: 343,
    match: "straight",
    lattice: [
      [343, 0],
      [0, 640],
    ],
    confidence: 0.9,
    sure: true,
  },
  motifMm: 300,
  directionDeg: null,
  bands: [],
  runs: null,
  contrast: 0.4,
  busyness: 0.5,
  patternToM: null,
  readsPlainFromM: 6,
};

/** A measurement as a photograph might give it. */
export function measure(
  pattern: Partial<MeasuredPattern> = {},
  more: Partial<ClothMeasure> = {},
): ClothMeasure {
  return {
    showsMm: 685,
    showsDownMm: 700,
    colours: declaredColours([
      { colour: "#efe3c8" },
      { colour: "#3a5f4b" },
    ]) as unknown as ClothMeasure["colours"],
    average: "#99a08a",
    pattern: { ...PATTERN, ...pattern },
    quality: {} as ClothMeasure["quality"],
    confirm: [],
    ...more,
  };
}
