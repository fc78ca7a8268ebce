import type Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { Amount, Rate } from "../fields/amountField.ts";
import type { ProjectRecord, StudioRecord } from "../records/records.ts";
import { type Money, money, timesMoney } from "../units/money.ts";
import { markupOf } from "./clothPrice.ts";
import { clientSum, type LineKind, type PriceLine, wholeLine } from "./lines.ts";
import { toMoney } from "./toMoney.ts";

const FEES = [
  ["design", "Design fee"],
  ["survey", "Survey and measuring"],
  ["management", "Managing the work"],
  ["fitting", "Fitting"],
] as const;

/** What a share is of: all that is bought and made, or a part of it. */
export type ShareOf = "all" | "cloth" | "goods" | "making";
type Share = { readonly share: Fraction; readonly of?: ShareOf };
type Hours = { readonly hours: Fraction; readonly rate?: Amount };
type Fee = Amount | Hours | Share;

const CLOTH: readonly LineKind[] = ["cloth", "wallcovering", "lining", "trim"];

/** Whether a line is of that of which a share is taken; all that is bought and made where nothing is said. */
export function counts(line: PriceLine, of: ShareOf | undefined): boolean {
  if (line.item === null) return false;
  if (of === "cloth") return CLOTH.includes(line.what);
  if (of === "goods") return line.taxKind === "goods";
  if (of === "making") return line.what === "making";
  return true;
}

interface FeeContext {
  readonly project: ProjectRecord;
  readonly studio: StudioRecord;
  readonly lines: readonly PriceLine[];
  readonly currency: string;
  readonly found: Diagnostic[];
}

interface FeeSum {
  readonly sum: Money;
  readonly open: boolean;
  /** What the studio pays of it; null where a typed fee says nothing of that. */
  readonly trade: Money | null;
}

/** The maker who fits, with an hourly rate: the first that the studio names, or null. */
function fitterOf(studio: StudioRecord): { readonly maker: string; readonly rate: Rate } | null {
  for (const [maker, card] of Object.entries(studio.fields.makers ?? {})) {
    const rate = card.rates?.fitting;
    if (rate?.per === "hour") return { maker, rate };
  }
  return null;
}

/** Hours of fitting without a rate: at the fitter's own rate and the studio's markup; without a fitter an error at their line. */
function fittingHours(fee: Hours, { project, studio, currency, found }: FeeContext): FeeSum {
  const fitter = fitterOf(studio);
  if (fitter) {
    const place = studio.place(["makers", fitter.maker, "rates", "fitting"]);
    const trade = timesMoney(toMoney(fitter.rate, currency, place, found), fee.hours);
    return { sum: timesMoney(trade, markupOf(studio, "fitting")), open: false, trade };
  }
  found.push(
    diagnostic(
      project.place(["fees", "fitting", "hours"]),
      "fee-without-rate",
      "The hours of fitting have no rate, and no maker in studio.md has one for fitting by the hour.",
      {
        expected: "rate: … beside the hours",
        hint: "Write rate: … beside the hours, or give the fitter in studio.md rates: { fitting: … per hour }.",
      },
    ),
  );
  return { sum: money(0, currency), open: true, trade: null };
}

/** What a fee comes to: a sum, hours at a rate, or a share of the client's prices before tax, rounded to the nearest minor unit. */
function feeOf(fee: Fee, key: (typeof FEES)[number][0], context: FeeContext): FeeSum {
  const { project, lines, currency, found } = context;
  if ("hours" in fee) {
    if (!fee.rate) return fittingHours(fee, context);
    const rate = toMoney(fee.rate, currency, project.place(["fees", key, "rate"]), found);
    return { sum: timesMoney(rate, fee.hours), open: false, trade: null };
  }
  if ("share" in fee) {
    const base = lines.filter((l) => counts(l, fee.of));
    const sum = clientSum(base, currency);
    // A share of what is not priced yet is not known yet either.
    return { sum: timesMoney(sum, fee.share), open: base.some((l) => l.open), trade: null };
  }
  const sum = toMoney(fee, currency, project.place(["fees", key]), found);
  return { sum, open: false, trade: null };
}

/**
 * The project's fees as services, fixed, by the hour or as a share of the other lines. A fee is the studio's own work, so its trade
 * price is nothing, but for fitting, which it pays: as it is charged, or, where only the hours are said, at the fitter's own rate.
 */
export function feeLines(
  project: ProjectRecord,
  studio: StudioRecord,
  lines: readonly PriceLine[],
  currency: string,
  found: Diagnostic[],
): PriceLine[] {
  const fees = project.fields.fees;
  return FEES.flatMap(([key, label]): PriceLine[] => {
    const fee = fees?.[key];
    if (!fee) return [];
    const context = { project, studio, lines, currency, found };
    const { sum: client, open, trade } = feeOf(fee, key, context);
    const paid = key === "fitting" ? (trade ?? client) : money(0, currency);
    return [{ ...wholeLine("fee", label, paid, client, "services"), open }];
  });
}
