import { parseLength } from "../units/parseLength.ts";

/** What parts a text of several measures and words: `22″ × 20″, centred`. */
const BETWEEN = /\s*×\s*|,\s+/;

/** The measure that a text is, in millimetres; null of any other. */
function millimetres(text: string): string | null {
  const read = parseLength(text);
  return read.ok ? read.length.mm.toFraction() : null;
}

/**
 * True where two texts of a record say the same: word for word, or in other signs and units, as `84 1/2″` and `84½″`, or `2 m` and `200 cm`.
 */
export function saysSame(one: string | null, other: string | null): boolean {
  if (one === other) return true;
  if (one === null || other === null) return false;
  const [left, right] = [one.split(BETWEEN), other.split(BETWEEN)];
  return (
    left.length === right.length &&
    left.every((part, at) => {
      const same = right[at] as string;
      if (part === same) return true;
      const long = millimetres(part);
      return long !== null && long === millimetres(same);
    })
  );
}
