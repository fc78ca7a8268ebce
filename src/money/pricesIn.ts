import type { Money } from "../units/money.ts";

/** How many of the prices are in: of what costs nothing so far while a price is still to come, or holds nothing, none is. */
export type PricesIn = "none" | "some" | "all";

/** How many prices of some lines are in, by the sums that they come to. A sum of nothing is no price while one is still to come. */
export function pricesIn(
  lines: readonly { readonly open: boolean }[],
  sums: readonly Money[],
): PricesIn {
  const isOpen = lines.some((line) => line.open);
  if (sums.every((sum) => sum.minor === 0n) && (isOpen || lines.length === 0)) return "none";
  return isOpen ? "some" : "all";
}

/** True of a line without any price yet. A share of prices of which some are in is open too, but it counts as far as it is known. */
export function isToCome(line: { readonly open: boolean; readonly client: Money }): boolean {
  return line.open && line.client.minor === 0n;
}
