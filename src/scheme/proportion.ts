/** How the shares of the first, the second and all other colours stand to the rule of thumb of 60, 30 and 10. */
export type Proportion = "on-the-rule" | "near-the-rule" | "one-leads" | "even" | "one-colour";

/**
 * Places three shares, in parts of a hundred, against 60, 30 and 10: within five points of each is on the rule, within ten near it.
 * Else an even split, nearly one colour alone, or a leader all the same. Common practice, no source; the limits are our own choice.
 */
export function proportionOf(first: number, second: number, others: number): Proportion {
  const off = Math.max(Math.abs(first - 60), Math.abs(second - 30), Math.abs(others - 10));
  if (off <= 5) return "on-the-rule";
  if (off <= 10) return "near-the-rule";
  if (first >= 85) return "one-colour";
  return first >= 40 && first > second * 1.25 ? "one-leads" : "even";
}
