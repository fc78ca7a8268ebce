import Fraction from "fraction.js";
import { Length } from "./length.ts";

/** Why a text is no length; the caller turns it into a diagnostic at its place. */
export type LengthFault =
  | "empty"
  | "no-unit"
  | "unknown-unit"
  | "not-a-number"
  | "negative"
  | "too-long"
  | "comma";

export type ParsedLength =
  | { readonly ok: true; readonly length: Length }
  | { readonly ok: false; readonly fault: LengthFault; readonly near: string };

const GLYPHS: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
  "⅕": "1/5",
  "⅖": "2/5",
  "⅗": "3/5",
  "⅘": "4/5",
  "⅙": "1/6",
  "⅚": "5/6",
};

/** Millimetres in one of each unit, as exact tenths, keyed by every way of writing it. */
const TENTHS: Readonly<Record<string, number>> = {
  mm: 10,
  millimetre: 10,
  millimetres: 10,
  millimeter: 10,
  millimeters: 10,
  cm: 100,
  centimetre: 100,
  centimetres: 100,
  centimeter: 100,
  centimeters: 100,
  m: 10000,
  metre: 10000,
  metres: 10000,
  meter: 10000,
  meters: 10000,
  '"': 254,
  in: 254,
  ins: 254,
  inch: 254,
  inches: 254,
  "'": 3048,
  ft: 3048,
  foot: 3048,
  feet: 3048,
  yd: 9144,
  yds: 9144,
  yard: 9144,
  yards: 9144,
};

/** Longest length that a room or a bolt can have: a kilometre. Above it a unit was mistyped. */
const LIMIT_MM = 1_000_000;

/** Straight marks, one space, fractions in figures, decimal comma as a point. */
export function normaliseLengthText(text: string): string {
  let out = text
    .replace(/[\u00a0\u2007\u2009\u202f\t]/g, " ")
    .replace(/[“”″〃]|''|’’|′′/g, '"')
    .replace(/[‘’′ʹ]/g, "'")
    .replace(/[⁄∕]/g, "/")
    .replace(/[−–]/g, "-");
  out = out.replace(/(\d?)([¼½¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚])/g, (_, digit: string, glyph: string) =>
    digit ? `${digit} ${GLYPHS[glyph]}` : (GLYPHS[glyph] as string),
  );
  // `5'-6"`: the hyphen of drawings parts feet from inches and takes nothing away.
  out = out.replace(/(['a-z])-(?=\d)/gi, "$1 ");
  return out
    .replace(/(\d),(\d)/g, "$1.$2")
    .replace(/\s+/g, " ")
    .trim();
}

const NUMBER = String.raw`(\d+\/\d+|\d+(?:\.\d+)?(?:[ -]+\d+\/\d+)?|\.\d+)`;
const TERM = new RegExp(String.raw`^${NUMBER}\s*("|'|[a-zA-Z]+)?\.?\s*`);

function exact(number: string): Fraction | null {
  const [whole, part] = number.includes("/") ? split(number) : [number, null];
  if (part) {
    const [over, under] = part.split("/");
    if (Number(under) === 0) return null;
    return new Fraction(whole || "0").add(new Fraction(Number(over), Number(under)));
  }
  return new Fraction(number.startsWith(".") ? `0${number}` : number);
}

function split(number: string): [string, string] {
  const at = number.search(/[ -]+\d+\/\d+$/);
  return at < 0 ? ["0", number] : [number.slice(0, at), number.slice(at).replace(/^[ -]+/, "")];
}

/**
 * Reads a length as people write it: `84 1/2"`, `84½ in`, `7' 2"`, `7 ft 2 in`, `2.14 m`, `2,14 m`, `214 cm`, `3 1/4 yd`, with
 * straight or curly marks. Exact. A bare number (other than 0) is the fault "no-unit"; a minus sign is "negative".
 */
export function parseLength(text: string): ParsedLength {
  const clean = normaliseLengthText(text);
  if (clean === "") return { ok: false, fault: "empty", near: text };
  if (/^-\s*[\d.]/.test(clean)) return { ok: false, fault: "negative", near: text };
  // `2,140 mm` may be two metres or two millimetres: ask, never guess. Only metres are written with three decimals.
  if (/\d,\d{3}(?!\d)(?!\s*(?:m\b|met))/i.test(text))
    return { ok: false, fault: "comma", near: text };
  if (/^0(\.0+)?$/.test(clean)) return { ok: true, length: Length.zero.withTyped(text.trim()) };
  let rest = clean;
  let sum = new Fraction(0);
  let previous = Number.POSITIVE_INFINITY;
  while (rest !== "") {
    const found = TERM.exec(rest);
    if (!found) return { ok: false, fault: "not-a-number", near: rest };
    const value = exact(found[1] as string);
    if (value === null) return { ok: false, fault: "not-a-number", near: rest };
    const unit = found[2];
    if (unit === undefined) return { ok: false, fault: "no-unit", near: found[1] as string };
    const tenths = TENTHS[unit] ?? TENTHS[unit.toLowerCase()];
    if (tenths === undefined) return { ok: false, fault: "unknown-unit", near: unit };
    if (tenths >= previous) return { ok: false, fault: "not-a-number", near: rest };
    previous = tenths;
    sum = sum.add(value.mul(tenths).div(10));
    rest = rest.slice(found[0].length);
  }
  if (sum.compare(LIMIT_MM) > 0) return { ok: false, fault: "too-long", near: text };
  return { ok: true, length: Length.mm(sum, text.trim()) };
}
