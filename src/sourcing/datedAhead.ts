import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import { isAhead } from "../records/isAhead.ts";
import type { ProjectRecord } from "../records/records.ts";

/** What each list tells that happened, and what is thought while its day is wrong. */
const TOLD = {
  orders: {
    what: "This order",
    taken: "it is taken as ordered all the same, and asked for no more",
  },
  receipts: { what: "This receipt", taken: "it is taken as here all the same" },
  approvals: { what: "This approval", taken: "it is taken as given all the same" },
  returned: { what: "This return", taken: "nothing is planned on it all the same" },
} as const;

/**
 * Warnings where an order, a receipt, a return or an approval is dated ahead of the day of the build, most often by its year: what is to
 * be ordered would never be.
 */
export function datedAhead({ fields, place }: ProjectRecord, today: string): Diagnostic[] {
  const fault = (
    day: string | undefined,
    path: readonly (string | number)[],
    told: { readonly code: string; readonly what: string; readonly taken: string },
  ): Diagnostic[] =>
    day && isAhead(day, today)
      ? [
          diagnostic(
            place(path),
            `${told.code}-ahead`,
            `${told.what} is dated ${day}, and today is ${today}: ${told.taken}.`,
            {
              severity: "warning",
              actual: day,
              hint: "Look at its year; what is still to be done does not stand here yet.",
            },
          ),
        ]
      : [];
  return [
    ...(["orders", "receipts", "approvals"] as const).flatMap((list) =>
      (fields[list] ?? []).flatMap(({ on }, at) =>
        fault(on, [list, at, "on"], { ...TOLD[list], code: list.slice(0, -1) }),
      ),
    ),
    ...(fields.receipts ?? []).flatMap(({ returned }, at) =>
      fault(returned?.on, ["receipts", at, "returned", "on"], { ...TOLD.returned, code: "return" }),
    ),
  ];
}
