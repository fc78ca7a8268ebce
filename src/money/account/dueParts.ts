import type { ProjectRecord } from "../../records/records.ts";
import { type Money, money, subtractMoney, sumMoney, timesMoney } from "../../units/money.ts";
import { type InstalmentAsked, isAmount } from "../instalments.ts";
import { instalmentsAsked } from "../instalmentsAsked.ts";
import { toMoney } from "../toMoney.ts";
import type { Agreed } from "./agreed.ts";

/** A part of what is to be paid, as it stands today. */
export interface DuePart {
  readonly name: InstalmentAsked["name"];
  /** As it is written: approval, order, fitting, a date, or words of her own. */
  readonly due: string;
  /** The ISO date on which it falls due; null while that is not known. */
  readonly dueOn: string | null;
  /** What it came to by the total that it was approved with; by today's where none is written. */
  readonly agreed: Money;
  /** What it comes to with what has changed since. */
  readonly sum: Money;
  /** True where it grows with prices that are still to come. */
  readonly isShare: boolean;
}

/**
 * Each part of a total: shares of it, rounded to the nearest minor unit, and sums as they are written; what takes the rest, else the
 * last one, is the total less the others. They always add up to the total.
 */
export function partsOf(asked: readonly InstalmentAsked[], total: Money): Money[] {
  const { currency } = total;
  const rest = asked.findIndex((a) => a.part === "rest");
  const taker = rest < 0 ? asked.length - 1 : rest;
  const parts = asked.map(({ part, place }, at) =>
    at === taker || part === "rest"
      ? money(0, currency)
      : isAmount(part)
        ? toMoney(part, currency, place, [])
        : timesMoney(total, part),
  );
  if (parts.length > 0) parts[taker] = subtractMoney(total, sumMoney(parts, currency));
  return parts;
}

/** The part that takes what changes after the approval: the last balance, else the last part. */
function balanceAt(asked: readonly InstalmentAsked[]): number {
  const at = asked.findLastIndex((a) => a.name === "balance");
  return at < 0 ? asked.length - 1 : at;
}

/** Takes what a part is below nothing off the parts before it, and, where they cannot bear it, off those after. The sum stays. */
function withoutLess(parts: readonly Money[]): Money[] {
  const out = parts.map((p) => p.minor);
  const backwards = out.map((_, at) => out.length - 1 - at);
  let less = 0n;
  for (const at of [...backwards, ...out.keys()]) {
    const left = (out[at] as bigint) - less;
    out[at] = left < 0n ? 0n : left;
    less = left < 0n ? -left : 0n;
  }
  // Only of a total below nothing there is something left over.
  if (out.length > 0) out[out.length - 1] = (out.at(-1) as bigint) - less;
  return out.map((minor, at) => money(minor, (parts[at] as Money).currency));
}

/**
 * The parts as they stand today: as they were approved, since that is what the client signed, and what has changed since falls into the
 * balance (common practice, no source). A reduction that is more than the balance is taken off the parts before it. Their sum is today's
 * total to the last minor unit.
 */
export function standing(
  asked: readonly InstalmentAsked[],
  approved: Money,
  total: Money,
): { readonly agreed: readonly Money[]; readonly today: readonly Money[] } {
  const agreed = partsOf(asked, approved);
  const change = subtractMoney(total, approved);
  const balance = balanceAt(asked);
  const today = agreed.map((part, at) =>
    at === balance ? money(part.minor + change.minor, part.currency) : part,
  );
  return { agreed, today: withoutLess(today) };
}

/**
 * True of the part that grows with prices that are still to come: of what was approved the balance alone, since the others stand; else
 * every share of the total, and what takes the rest of it.
 */
function isShare(asked: readonly InstalmentAsked[], at: number, isApproved: boolean): boolean {
  if (isApproved) return at === balanceAt(asked);
  const part = asked[at]?.part;
  const takesRest = at === asked.length - 1 && !asked.some((a) => a.part === "rest");
  return part === undefined || part === "rest" || !isAmount(part) || takesRest;
}

const ISO_DATE = /^\d{4}-\d{2}-\d{2}$/;

/** When a part falls due: at the last approval, the first order, the fitting, or its own date; null where that is not known yet. */
function dueDate(due: string, project: ProjectRecord, { last }: Agreed): string | null {
  switch (due.trim().toLowerCase()) {
    case "approval":
      return last?.on ?? null;
    case "order":
      return (project.fields.orders ?? []).map((order) => order.on).sort()[0] ?? null;
    case "fitting":
      return project.fields.fitting ?? null;
    default:
      return ISO_DATE.test(due.trim()) ? due.trim() : null;
  }
}

/** What a project is to be paid in parts, with their dates; empty where its file names none. */
export function duePartsOf(project: ProjectRecord, agreed: Agreed, total: Money): DuePart[] {
  const asked = instalmentsAsked(project);
  const sums = standing(asked, agreed.last?.total ?? total, total);
  return asked.map(({ name, due }, at) => ({
    name,
    due,
    dueOn: dueDate(due, project, agreed),
    agreed: sums.agreed[at] as Money,
    sum: sums.today[at] as Money,
    isShare: isShare(asked, at, Boolean(agreed.last?.total)),
  }));
}
