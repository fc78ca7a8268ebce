import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import { isFitted } from "../records/hasReached.ts";
import { isAhead } from "../records/isAhead.ts";
import type { ProjectRecord } from "../records/records.ts";
import {
  compareMoney,
  type Money,
  money,
  printMoney,
  subtractMoney,
  timesMoney,
} from "../units/money.ts";
import { type PriceLine, type TaxedLine, wholeLine } from "./lines.ts";
import type { MoneyInput } from "./moneyInput.ts";
import { payable } from "./payable.ts";
import { type TaxRates, taxOnLines } from "./tax.ts";
import { toMoney } from "./toMoney.ts";

/** What is kept for the unforeseen, and what became of it; all with the tax that comes on top. */
export interface Reserve {
  /** The studio's share of all else that the client pays. */
  readonly kept: Money;
  /** What was taken out of it, as the client pays it. */
  readonly used: Money;
  /** What is left of it; nothing where all or more was used. */
  readonly left: Money;
  /** True of the last account: what is left is not charged. */
  readonly isFinal: boolean;
}

/** True of the line of what is left of the reserve: it is a share of all else, and grows with prices that are still to come. */
export function isKept({ what }: Pick<PriceLine, "what">): boolean {
  return what === "reserve";
}

/** True of what is left of the reserve and of what was taken out of it. */
export function isReserve(line: Pick<PriceLine, "what">): boolean {
  return isKept(line) || line.what === "reserve-used";
}

const zeroOf = (currency: string): Money => money(0, currency);

type ReserveUse = NonNullable<ProjectRecord["fields"]["reserve-used"]>[number];

/** What was taken out of the reserve by a day, each with its place in the file: what is dated ahead is not counted before its day. */
export function reserveUses(
  project: ProjectRecord,
  today: string,
): { readonly use: ReserveUse; readonly at: number }[] {
  return (project.fields["reserve-used"] ?? [])
    .map((use, at) => ({ use, at }))
    .filter(({ use }) => !isAhead(use.on, today));
}

/** What was taken out of the reserve, a line each, with its tax; reckoned apart from all else, so that no other sum moves by it. */
function usedLines(
  { project, today }: Pick<MoneyInput, "project" | "today">,
  rates: TaxRates,
  currency: string,
  found: Diagnostic[],
): TaxedLine[] {
  const lines = reserveUses(project, today).map(({ use, at }) => {
    const read = (key: "amount" | "trade") => {
      const typed = use[key];
      const place = project.place(["reserve-used", at, key]);
      return typed ? toMoney(typed, currency, place, found) : zeroOf(currency);
    };
    const label = `${use.what}, from the reserve`;
    return wholeLine("reserve-used", label, read("trade"), read("amount"), use.kind ?? "services");
  });
  const taxes = taxOnLines(lines, rates, currency);
  return lines.map((each, at) => ({ ...each, tax: taxes[at] as Money, unchosen: false }));
}

/**
 * The reserve for the unforeseen: a share of all that the client pays else, untaxed. What was used is charged as what it was. What is left
 * stands in the total until everything is fitted, and is not charged in the last account (common practice, no source). `lines` are all others.
 */
export function reserveOf(
  input: Pick<MoneyInput, "project" | "studio" | "today">,
  lines: readonly TaxedLine[],
  rates: TaxRates,
  found: Diagnostic[],
): { readonly reserve: Reserve; readonly lines: readonly TaxedLine[] } {
  const { project } = input;
  const { currency, contingency, language } = input.studio.fields;
  const zero = zeroOf(currency);
  const hasReserve = contingency !== undefined && contingency.compare(0) > 0;
  const kept = hasReserve
    ? timesMoney(payable(lines, rates.included, currency), contingency)
    : zero;
  const uses = usedLines(input, rates, currency, found);
  const used = payable(uses, rates.included, currency);
  const isMore = compareMoney(used, kept) > 0;
  const left = isMore ? zero : subtractMoney(kept, used);
  const reserve = { kept, used, left, isFinal: isFitted(project) };
  if (isMore) found.push(overused(project, reserve, language));
  found.push(...usedAhead(input));
  const rest = {
    ...wholeLine("reserve", "Kept in reserve", zero, left, "none"),
    tax: zero,
    unchosen: false,
  };
  const isCharged = hasReserve && !reserve.isFinal && !(uses.length > 0 && left.minor === 0n);
  return { reserve, lines: isCharged ? [...uses, rest] : uses };
}

function usedAhead({ project, today }: Pick<MoneyInput, "project" | "today">): Diagnostic[] {
  return (project.fields["reserve-used"] ?? []).flatMap(({ on }, at) =>
    isAhead(on, today)
      ? diagnostic(
          project.place(["reserve-used", at, "on"]),
          "reserve-use-ahead",
          `This is dated ${on}, and today is ${today}: it is not taken out of the reserve before its day.`,
          {
            severity: "warning",
            actual: on,
            hint: "Write the day on which it was agreed with the client or done.",
          },
        )
      : [],
  );
}

function overused(project: ProjectRecord, { kept, used }: Reserve, language: string): Diagnostic {
  const print = (sum: Money): string => printMoney(sum, language);
  return diagnostic(
    project.place(["reserve-used"]),
    "reserve-overused",
    kept.minor === 0n
      ? `${print(used)} was used of the reserve, and none is kept.`
      : `${print(used)} was used of a reserve of ${print(kept)}: ${print(subtractMoney(used, kept))} more than there is.`,
    {
      severity: "warning",
      actual: print(used),
      expected: print(kept),
      hint: "All of it is charged: agree on the rest with the client, and write the approval. A reserve is kept by contingency: in studio.md.",
    },
  );
}
