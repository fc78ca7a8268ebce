import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ProjectRecord } from "../records/records.ts";
import type { PriceLine } from "./lines.ts";
import { toMoney } from "./toMoney.ts";

const FEES = [
  ["design", "Design fee"],
  ["survey", "Survey and measuring"],
  ["management", "Managing the work"],
  ["fitting", "Fitting"],
] as const;

/** The project's fixed fees as services; a fee is the studio's own work, so its trade price is nothing, but for fitting, which it pays. */
export function feeLines(
  project: ProjectRecord,
  currency: string,
  found: Diagnostic[],
): PriceLine[] {
  const fees = project.fields.fees;
  return FEES.flatMap(([key, label]): PriceLine[] => {
    const amount = fees?.[key];
    if (!amount) return [];
    const client = toMoney(amount, currency, project.place(["fees", key]), found);
    const trade = key === "fitting" ? client : { minor: 0n, currency };
    return [
      {
        room: null,
        item: null,
        what: "fee",
        label,
        cloth: null,
        maker: null,
        phase: null,
        trade,
        client,
        taxKind: "services",
        open: false,
      },
    ];
  });
}
