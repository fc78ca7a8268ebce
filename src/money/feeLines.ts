import type Fraction from "fraction.js";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Amount } from "../fields/amountField.ts";
import type { ProjectRecord } from "../records/records.ts";
import { type Money, money, sumMoney, timesMoney } from "../units/money.ts";
import type { LineKind, PriceLine } from "./lines.ts";
import { toMoney } from "./toMoney.ts";

const FEES = [
  ["design", "Design fee"],
  ["survey", "Survey and measuring"],
  ["management", "Managing the work"],
  ["fitting", "Fitting"],
] as const;

type Share = { readonly share: Fraction; readonly of?: "all" | "cloth" | "goods" | "making" };
type Hours = { readonly hours: Fraction; readonly rate: Amount };
type Fee = Amount | Hours | Share;

const CLOTH: readonly LineKind[] = ["cloth", "wallcovering", "lining", "trim"];

function counts(line: PriceLine, of: Share["of"]): boolean {
  if (line.item === null) return false;
  if (of === "cloth") return CLOTH.includes(line.what);
  if (of === "goods") return line.taxKind === "goods";
  if (of === "making") return line.what === "making";
  return true;
}

/** What a fee comes to: a sum, hours at a rate, or a share of the client's prices before tax, rounded to the nearest minor unit. */
function feeOf(
  fee: Fee,
  key: (typeof FEES)[number][0],
  project: ProjectRecord,
  lines: readonly PriceLine[],
  currency: string,
  found: Diagnostic[],
): { readonly sum: Money; readonly open: boolean } {
  if ("hours" in fee) {
    const rate = toMoney(fee.rate, currency, project.place(["fees", key, "rate"]), found);
    return { sum: timesMoney(rate, fee.hours), open: false };
  }
  if ("share" in fee) {
    const base = lines.filter((l) => counts(l, fee.of));
    const sum = sumMoney(
      base.map((l) => l.client),
      currency,
    );
    // A share of what is not priced yet is not known yet either.
    return { sum: timesMoney(sum, fee.share), open: base.some((l) => l.open) };
  }
  return { sum: toMoney(fee, currency, project.place(["fees", key]), found), open: false };
}

/**
 * The project's fees as services, fixed, by the hour or as a share of the other lines. A fee is the studio's own work, so its trade
 * price is nothing, but for fitting, which it pays.
 */
export function feeLines(
  project: ProjectRecord,
  lines: readonly PriceLine[],
  currency: string,
  found: Diagnostic[],
): PriceLine[] {
  const fees = project.fields.fees;
  return FEES.flatMap(([key, label]): PriceLine[] => {
    const fee = fees?.[key];
    if (!fee) return [];
    const { sum: client, open } = feeOf(fee, key, project, lines, currency, found);
    return [
      {
        room: null,
        item: null,
        what: "fee",
        label,
        cloth: null,
        maker: null,
        phase: null,
        trade: key === "fitting" ? client : money(0, currency),
        client,
        taxKind: "services",
        open,
      },
    ];
  });
}
