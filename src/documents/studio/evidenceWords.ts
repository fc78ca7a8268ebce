import type { Finding } from "../../scheme/finding.ts";
import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import { spelled, wordsIn } from "../../units/spelling.ts";

/** What the numbers of a finding are called; a key that stands here not is printed as its own words. */
const NAMES: Readonly<Record<string, string>> = {
  distance: "from the palette (CIEDE2000)",
  knownFrom: "known from",
  motifMm: "motif",
  otherMotifMm: "other motif",
  centreMm: "its middle above the floor",
  cohesion: "in the palette",
  dominantShare: "share of the leading colour",
  first: "first colour",
  second: "second colour",
  known: "known of what is seen",
  leastRatio: "least ratio",
  plainShare: "plain",
  plainShareClosed: "plain with curtains closed",
  readsPlainFromM: "a plain from",
  rivalShare: "share of the second",
  strays: "stray colours",
  usualMm: "usual",
  doorM: "from the door",
};

/** Keys that are shares of one, and are printed in parts of a hundred. */
const SHARES = /^(?:share|cohesion|known|plainShare.*|rivalShare|dominantShare)$/;
/** Words that the sentence holds already. */
const SAID = new Set([
  "colour",
  "cloth",
  "animal",
  "cheapest",
  "operation",
  "suits",
  "codes",
  "range",
  "cloths",
  "goods",
  "complementOf",
]);

function nameOf(key: string): string {
  const plain = key.replace(/(?:Mm|M)$/, "");
  return NAMES[key] ?? plain.replace(/([A-Z])/g, " $1").toLowerCase();
}

/** The numbers that a finding rests on, each with its name, as one line; empty where its sentence holds them all. */
export function evidenceWords(finding: Finding, units: UnitSystem, language: string): string {
  const say = wordsIn(language);
  const shown = (key: string, value: number | string): string => {
    if (typeof value === "string") return value.replace(/-/g, " ");
    if (/Mm$/.test(key)) return printLength(Length.mm(Math.round(value)), units);
    if (/M$/.test(key) || finding.code === "reads-plain") return say`${value.toFixed(1)} metres`;
    if (SHARES.test(key)) return `${Math.round(value * 1000) / 10} %`;
    return String(Math.round(value * 10) / 10);
  };
  return Object.entries(finding.evidence)
    .filter(([key, value]) => value !== "" && !SAID.has(key))
    .map(([key, value]) => `${spelled(nameOf(key), language)} ${shown(key, value)}`)
    .join("; ");
}
