/** One square yard in square metres, and one ounce in grams (international avoirdupois): exact. */
const G_PER_OZ = 28.349523125;
const M2_PER_YD2 = 0.83612736;

function figure(text: string, unit: RegExp): number | null {
  const found = new RegExp(`([\\d][\\d., ]*)\\s*(?:${unit.source})`, "i").exec(text);
  if (!found) return null;
  const digits = (found[1] as string).trim();
  // A comma, point or space before three figures groups thousands.
  const plain = digits.replace(/[., ](?=\d{3}(?!\d))/g, "").replace(",", ".");
  const value = Number(plain);
  return Number.isFinite(value) && value > 0 ? value : null;
}

/** `25000 martindale` as a number of Martindale cycles, or null for another test or no figure. */
export function martindale(text: string | undefined): number | null {
  return figure(text ?? "", /(?:martindale|cycles)/);
}

/** `30000 wyzenbeek` or `30,000 double rubs` as a number of double rubs, or null. It does not convert into Martindale cycles. */
export function wyzenbeek(text: string | undefined): number | null {
  return figure(text ?? "", /(?:wyzenbeek|double\s+rubs)/);
}

/** A weight in grams a square metre: `290 g/m2`, `290 gsm`, `8 oz/yd2`, `8 oz a square yard`; null where it cannot be read. */
export function gramsPerM2(text: string | undefined): number | null {
  const said = text ?? "";
  const grams = figure(
    said,
    /g\s*\/\s*m(?:2|²)|gsm|g\s*\/\s*sq\.?\s*m|grams?\s+(?:a|per)\s+square\s+met(?:re|er)/,
  );
  if (grams !== null) return grams;
  const decimal =
    /(\d+(?:\.\d+)?)\s*oz\s*(?:\/|a|per)\s*(?:yd(?:2|²)|sq(?:uare|\.)?\s*(?:yd|yard))/i.exec(said);
  return decimal ? (Number(decimal[1]) * G_PER_OZ) / M2_PER_YD2 : null;
}

/** Cleaning codes of upholstery cloth (trade codes, see the reference beside the tests). */
export type CleaningCode = "W" | "S" | "WS" | "X";

/**
 * What a card's care bears, as a cleaning code: the code itself where it gives one alone (W, S, WS, also SW and W-S, X), or its plain
 * words: dry clean (only) bears solvent alone; wash bears water, and solvent unless that is refused, so that the strictest of washed
 * layers and one that is dry cleaned is dry cleaning; brush or vacuum only bears neither. Null where the words say none of these.
 */
export function cleaningCode(text: string | undefined): CleaningCode | null {
  const clean = (text ?? "")
    .trim()
    .toUpperCase()
    .replace(/[\s/-]/g, "");
  if (clean === "W" || clean === "S" || clean === "X") return clean;
  if (clean === "WS" || clean === "SW") return "WS";
  return codeOfWords((text ?? "").toLowerCase());
}

const NOT = "(?:do not|don't|never|not to be|no)";

function codeOfWords(words: string): CleaningCode | null {
  if (
    /\b(?:brush|vacuum)\w*(?: or (?:brush|vacuum)\w*)? only\b|\bonly (?:brush|vacuum)/.test(words)
  )
    return "X";
  const dryRefused = new RegExp(`\\b${NOT} dry[- ]?clean`).test(words);
  const washRefused = new RegExp(`\\b${NOT} (?:\\w+ )?wash`).test(words);
  const dry = !dryRefused && /\bdry[- ]?clean/.test(words);
  const dryOnly = dry && /\bdry[- ]?clean(?:ed|ing)?(?: |-)only\b/.test(words);
  const wash = !washRefused && !dryOnly && /\b(?:hand|machine|)[- ]?wash/.test(words);
  if (dryRefused && washRefused) return "X";
  if (wash) return dryRefused ? "W" : "WS";
  return dry ? "S" : null;
}

/** What a made-up item bears: every layer must bear it. */
export interface Cleaning {
  readonly water: boolean;
  readonly solvent: boolean;
}

/** The strictest care of all the layers of one item: what every one of them bears (common practice, no source). */
export function strictest(codes: readonly CleaningCode[]): Cleaning {
  return {
    water: codes.every((c) => c === "W" || c === "WS"),
    solvent: codes.every((c) => c === "S" || c === "WS"),
  };
}
