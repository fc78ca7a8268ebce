import Fraction from "fraction.js";
import { US_GALLON, type VolumeUnit } from "../../units/volume.ts";

/** A tin: its size as typed and exactly in litres, with the unit that it is sold by. */
export interface Tin {
  readonly litres: Fraction;
  readonly amount: Fraction;
  readonly unit: VolumeUnit;
  /** `1 gal`, `2.5 l`. */
  readonly text: string;
}

/** An imperial gallon (4.54609 l) must be written as such. */
const IMPERIAL_GALLON = new Fraction("4.54609");
/** A square foot in square metres. */
export const SQUARE_FOOT = new Fraction("0.09290304");

const VOLUMES: readonly (readonly [RegExp, Fraction, Tin["unit"], Fraction])[] = [
  [/^(?:l|lt|ltr|litres?|liters?)$/, new Fraction(1), "litre", new Fraction(1)],
  [/^(?:ml|millilitres?|milliliters?)$/, new Fraction(1, 1000), "litre", new Fraction(1, 1000)],
  [/^(?:us )?(?:gal|gals|gallons?)$/, US_GALLON, "gallon", new Fraction(1)],
  [/^(?:qt|qts|quarts?)$/, US_GALLON.div(4), "quart", new Fraction(1)],
  [/^(?:pt|pts|pints?)$/, US_GALLON.div(8), "quart", new Fraction(1, 2)],
  [/^(?:imperial|imp|uk) (?:gal|gallons?)$/, IMPERIAL_GALLON, "litre", IMPERIAL_GALLON],
];

const NUMBER = /^(\d+(?:\.\d+)?|\.\d+|\d+\/\d+|\d+ \d+\/\d+)\s*/;

function clean(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\u00a0\u202f]/g, " ")
    .replace(/(\d),(\d)/g, "$1.$2")
    .replace(/\./g, (dot, at: number, all: string) => (/\d/.test(all[at + 1] ?? "") ? dot : ""))
    .replace(/\s+/g, " ");
}

/** Reads `1 gal`, `1 qt`, `2.5 l`, `750 ml`; null where it is no volume. */
export function parseTin(text: string): Tin | null {
  const words = clean(text);
  const number = NUMBER.exec(words);
  if (!number) return null;
  const value = new Fraction((number[1] as string).replace(/^\./, "0."));
  const unit = words.slice(number[0].length).trim();
  const found = VOLUMES.find(([spelt]) => spelt.test(unit));
  if (!found || value.compare(0) <= 0) return null;
  return {
    litres: value.mul(found[1]),
    amount: value.mul(found[3]),
    unit: found[2],
    text: text.trim(),
  };
}

/**
 * Reads a coverage, `12 m2/l`, `400 sq ft/gal`, `11 m² per litre`, as square metres a litre, exactly; null where it is none.
 * 1 m2/l is 40.75 sq ft a US gallon.
 */
export function parseCoverage(text: string): { readonly m2PerLitre: Fraction } | null {
  const words = clean(text);
  const number = NUMBER.exec(words);
  if (!number) return null;
  const [area, volume] = words
    .slice(number[0].length)
    .split(/\s*(?:\/|\bper\b|\ban?\b)\s*/)
    .map((w) => w.trim());
  if (!area || !volume) return null;
  const square = /^(?:m2|m²|sq m|sqm|square metres?|square meters?)$/.test(area)
    ? new Fraction(1)
    : /^(?:ft2|ft²|sq ft|sqft|square feet|square foot)$/.test(area)
      ? SQUARE_FOOT
      : null;
  const held = VOLUMES.find(([spelt]) => spelt.test(volume));
  const value = new Fraction((number[1] as string).replace(/^\./, "0."));
  if (square === null || !held || value.compare(0) <= 0) return null;
  return { m2PerLitre: value.mul(square).div(held[1]) };
}

/**
 * True where no paint goes so far, or so little way: labels and handbooks have 6 to 15 m2/l (250 to 600 sq ft a US gallon; TM 43-0139,
 * Table 3-2, and common practice). Then feet stand for metres, or a litre for a gallon.
 */
export function isUnlikelyCoverage({ m2PerLitre }: { readonly m2PerLitre: Fraction }): boolean {
  return m2PerLitre.compare(2) < 0 || m2PerLitre.compare(25) > 0;
}
