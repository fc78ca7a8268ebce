import { type Diagnostic, diagnostic, type Place } from "../diagnostics/diagnostic.ts";
import { compareMoney, type Money } from "../units/money.ts";

/** A warning at a client price that is below what the studio pays; none where it is not. */
export function soldBelow(place: Place, what: string, client: Money, trade: Money): Diagnostic[] {
  if (compareMoney(client, trade) >= 0) return [];
  return [
    diagnostic(
      place,
      "client-below-trade",
      `The client price of ${what} is below its trade price.`,
      {
        severity: "warning",
        hint: "If that is meant, leave it; else correct one of the two.",
      },
    ),
  ];
}
