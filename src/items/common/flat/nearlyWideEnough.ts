import { Length } from "../../../units/length.ts";
import { printLength, type UnitSystem } from "../../../units/printLength.ts";

/** So little wider than its cloth a piece may be made narrower rather than joined: both sides together (common practice, no source). */
const LITTLE = { inches: Length.inches(4), centimetres: Length.cm(10) };

/**
 * Asked of a piece that is joined for a few inches: strips so narrow would hardly be seen, and cost a width. Sizes as cut, across the
 * cloth. Null where it is wider than that, or not joined at all.
 */
export function nearlyWideEnough(
  piece: string,
  across: Length,
  cloth: { readonly name: string; readonly usable: Length },
  units: UnitSystem,
): string | null {
  const over = across.minus(cloth.usable);
  if (over.isNegative() || over.isZero() || over.isMoreThan(LITTLE[units])) return null;
  return `As cut the ${piece} is ${printLength(over, units)} wider than ${cloth.name}: made so much narrower, or with narrower turnings, it needs no join and a width less. Is that better?`;
}
