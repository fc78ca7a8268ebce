import type { Length } from "../../units/length.ts";

/** `5 rolls` of a length that is whole rolls of that length; null where it is not, or where nothing is sold by the roll. */
export function rollsIn(length: Length, roll: Length | null): string | null {
  if (roll === null || roll.isZero() || length.isZero()) return null;
  const count = length.over(roll);
  if (!count.equals(count.floor())) return null;
  const whole = Number(count.valueOf());
  return `${whole} ${whole === 1 ? "roll" : "rolls"}`;
}
