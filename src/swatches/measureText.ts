import {
  type ClothMeasure,
  isPlainKind,
  type MeasuredPattern,
  type MeasuredRepeat,
  type Runs,
} from "../cloth/clothMeasure.ts";
import { colourName } from "../colour/colourName.ts";
import { Length } from "../units/length.ts";
import { NARROW, printLength, type UnitSystem } from "../units/printLength.ts";

/** Sizes read off a photograph as text, in the units that she uses. */
export function measuredLength(mm: number, units: UnitSystem): string {
  return printLength(Length.mm(mm.toFixed(3)), units)
    .replaceAll(NARROW, " ")
    .replace("\u2033", '"');
}

/** The measurement of a photograph as text: what it says, then what she should look at. */
export function measureText(
  photo: string,
  measure: ClothMeasure,
  notes: readonly string[],
  units: UnitSystem,
): string {
  const say = (mm: number) => measuredLength(mm, units);
  const colours = measure.colours.map(
    ({ share, hex, name, family, lrv }) =>
      `  ${percent(share).padStart(5)}  ${hex}  ${name} (${family === "none" ? "" : `${family}; `}reflects ${Math.round(lrv)} %)`,
  );
  const looks = measure.confirm.map(({ what, why }) => `  ${what}: ${why}`);
  return [
    `${photo}: shows ${say(measure.showsMm)} of cloth across, ${say(measure.showsDownMm)} down`,
    ...notes.map((note) => `  (${note})`),
    "COLOURS",
    ...colours,
    `  from afar ${measure.average}`,
    "PATTERN",
    ...patternFacts(measure.pattern, units).map(({ what, value }) => `  ${what}: ${value}`),
    ...(looks.length > 0 ? ["PLEASE LOOK", ...looks] : []),
  ].join("\n");
}

/** One thing that is known of a pattern, in words. */
export interface PatternFact {
  readonly what: string;
  readonly value: string;
}

/** What a measurement says of a pattern, line by line. */
export function patternFacts(pattern: MeasuredPattern, units: UnitSystem): PatternFact[] {
  const say = (mm: number) => measuredLength(mm, units);
  const { kind, repeat, motifMm, directionDeg, contrast, busyness, readsPlainFromM } = pattern;
  const isPlain = isPlainKind(kind);
  const fact = (what: string, value: string): PatternFact => ({ what, value });
  return [
    fact("kind", kind === null ? "cannot be told" : kind.replaceAll("-", " ")),
    ...(isPlain && repeat === null ? [] : [fact("repeat", repeatWords(repeat, say))]),
    ...(motifMm === null ? [] : [fact(sizeWord(kind), say(motifMm))]),
    ...(directionDeg === null ? [] : [fact("runs", runWords(directionDeg))]),
    ...bandFacts(pattern, say),
    ...(pattern.runs === null ? [] : [fact("upside down", TURNED_WORDS[pattern.runs])]),
    fact("contrast", `${contrast.toFixed(2)} (0 none, 1 black on white)`),
    ...(busyness === null
      ? []
      : [fact("busyness", `${busyness.toFixed(2)} (0 a plain, 1 the most)`)]),
    ...(kind === "plain"
      ? []
      : [fact("reads", distanceWords(pattern.patternToM, readsPlainFromM))]),
  ];
}

const TURNED_WORDS: Readonly<Record<Runs, string>> = {
  "one-way": "not the same: all pieces are cut one way up",
  "two-way": "the same",
};

/** The bands of stripes and checks in their order, a line for each way. */
function bandFacts({ bands }: MeasuredPattern, say: (mm: number) => string) {
  const hexes = [...new Set(bands.flatMap((way) => way.bands.map(({ hex }) => hex)))];
  const names = hexes.map((hex) => colourName(hex).name);
  const named = (hex: string) => {
    const { name } = colourName(hex);
    return names.filter((other) => other === name).length > 1 ? `${name} ${hex}` : name;
  };
  return bands.map(({ directionDeg, bands: all }) => ({
    what: bands.length === 1 ? "bands" : `bands ${runWords(directionDeg)}`,
    value: all.map(({ hex, widthMm }) => `${named(hex)} ${say(widthMm)}`).join(", "),
  }));
}

/** What the motif's size is the size of. */
const MOTIF_WORDS: Readonly<Record<string, string>> = {
  stripe: "width of a band",
  check: "side of a square",
};

/** What the size of a pattern's motif is called, by its kind. */
export function sizeWord(kind: MeasuredPattern["kind"]): string {
  return MOTIF_WORDS[kind ?? ""] ?? "motif";
}

function repeatWords(repeat: MeasuredRepeat | null, say: (mm: number) => string): string {
  if (repeat === null) return "cannot be told from this picture";
  const { verticalMm, horizontalMm, match } = repeat;
  const askew = match === "other" && repeat.lattice.length === 2;
  const ways = [
    verticalMm === null || askew ? null : `${say(verticalMm)} up`,
    horizontalMm === null || askew ? null : `${say(horizontalMm)} across`,
  ].filter((way) => way !== null);
  const [vector] = repeat.lattice;
  // There is no way straight up that could be cut by: the shortest ways from a motif to the next are said.
  if (askew) {
    const both = repeat.lattice.map((v) => say(Math.hypot(...v)));
    ways.push(`${both.join(" and ")} from a motif to the next`);
  }
  if (ways.length === 0 && vector) ways.push(`${say(Math.hypot(...vector))} from band to band`);
  const sure = repeat.sure ? "" : "; NOT SURE, measure it on the cloth";
  const how = repeat.lattice.length === 1 ? "" : `, ${match === "other" ? "set askew" : match}`;
  return `${ways.join(", ")}${how} (agrees with itself to ${percent(repeat.confidence)}${sure})`;
}

/** Nearer than this nobody looks at a cloth in a room. */
const AT_HAND_M = 0.3;

function distanceWords(patternToM: number | null, plainFromM: number | null): string {
  const m = (metres: number) => `${metres.toFixed(metres < 10 ? 1 : 0)} m`;
  if (plainFromM !== null && plainFromM < AT_HAND_M) return "as a plain";
  const quiet = patternToM !== null && patternToM < AT_HAND_M;
  const far = plainFromM === null ? "" : `as a plain from ${m(plainFromM)}`;
  if (quiet) return far === "" ? "as a texture in any room" : `as a texture, ${far}`;
  if (patternToM === null) return "as a pattern in any room";
  return `as a pattern up to ${m(patternToM)}, ${far === "" ? "beyond it as a texture" : far}`;
}

function runWords(degrees: number): string {
  const lean = Math.min(Math.abs(degrees - 90), 90);
  if (lean < 4) return "up and down";
  if (degrees < 4 || degrees > 176) return "across";
  return `at ${Math.round(degrees)} degrees, anticlockwise from level`;
}

function percent(share: number): string {
  return share > 0 && share < 0.01 ? "< 1 %" : `${Math.round(share * 100)} %`;
}
