import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { isAhead } from "../../records/isAhead.ts";
import type { ProjectRecord, StudioRecord } from "../../records/records.ts";
import { type Money, subtractMoney, sumMoney } from "../../units/money.ts";
import { isToCome, type PricesIn, pricesIn } from "../pricesIn.ts";
import { type ProjectMoney, taxRates } from "../projectMoney.ts";
import type { Reserve } from "../reserve.ts";
import { toMoney } from "../toMoney.ts";
import { type Agreed, agreedOf, type SentTotals } from "./agreed.ts";
import { type KindSum, sumsByKind, type TaxOfKind, taxesOf } from "./byKind.ts";
import { checkAccount } from "./checkAccount.ts";
import { type DuePart, duePartsOf } from "./dueParts.ts";
import { type Settled, settle } from "./settle.ts";

/** A payment as it is written; what was given back is below nothing. */
export interface Payment {
  readonly amount: Money;
  /** ISO date. */
  readonly on: string;
  readonly what: string | null;
  /** False of a payment that is dated ahead: it is not there yet. */
  readonly counts: boolean;
  /** True where nothing had been approved on its day. */
  readonly beforeApproval: boolean;
}

/** What was agreed, what is due when, what was paid and what remains, all with tax and exact to the minor unit. */
export interface Account extends Agreed {
  readonly project: string;
  readonly currency: string;
  /** The ISO date as on which it stands. */
  readonly asOf: string;
  /** What everything comes to today. Lines without a price stand in it at nothing, and are named in `priceToCome`. */
  readonly total: Money;
  readonly priceToCome: readonly string[];
  readonly pricesIn: PricesIn;
  /** How much of the total is for what the client has still to choose, and what became of the reserve. */
  readonly unchosen: Money;
  readonly reserve: Reserve;
  readonly parts: readonly (DuePart & Settled)[];
  /** By date; those of one day as they are written. */
  readonly payments: readonly Payment[];
  readonly paid: Money;
  /** The total less what was paid; below nothing where the client is in credit. */
  readonly remaining: Money;
  /** What of the parts that have fallen due by now is not paid. */
  readonly dueNow: Money;
  readonly kinds: readonly KindSum[];
  readonly taxes: readonly TaxOfKind[];
  readonly diagnostics: readonly Diagnostic[];
}

/** The payments by date. Sums that cannot be read are said where they are read. */
function paymentsOf(
  project: ProjectRecord,
  agreed: Agreed,
  currency: string,
  today: string,
): Payment[] {
  const first = agreed.approvals[0];
  return (project.fields.payments ?? [])
    .map(({ amount, on, what }, at) => ({
      amount: toMoney(amount, currency, project.place(["payments", at, "amount"]), []),
      on,
      what: what ?? null,
      counts: !isAhead(on, today),
      beforeApproval: first === undefined || on < first.on,
    }))
    .sort((a, b) => a.on.localeCompare(b.on));
}

/**
 * The account of a project as on a day. Parts stand as the client approved them; what has changed since falls into the balance. Payments
 * fill the parts in their order. The parts make the total, and what was paid and what remains make it too, to the last minor unit.
 */
export function accountOf(
  project: ProjectRecord,
  studio: StudioRecord,
  money: ProjectMoney,
  today: string,
  sent: SentTotals = new Map(),
): Account {
  const { currency, lines, totals } = money;
  const { total } = totals;
  const agreed = agreedOf(project, total, sent, money.reserve);
  const payments = paymentsOf(project, agreed, currency, today);
  const counted = payments.filter((p) => p.counts);
  const due = duePartsOf(project, agreed, total);
  const settled = settle(
    due.map((part) => part.sum),
    counted,
  );
  const parts = due.map((part, at) => ({ ...part, ...(settled[at] as Settled) }));
  const paid = sumMoney(
    counted.map((p) => p.amount),
    currency,
  );
  const account = {
    ...agreed,
    project: project.id,
    currency,
    asOf: today,
    total,
    priceToCome: [...new Set(lines.filter(isToCome).map((l) => l.label))],
    pricesIn: pricesIn(lines, [totals.client]),
    unchosen: totals.unchosen,
    reserve: money.reserve,
    parts,
    payments,
    paid,
    remaining: subtractMoney(total, paid),
    dueNow: sumMoney(
      parts.filter((p) => p.dueOn !== null && p.dueOn <= today).map((p) => p.open),
      currency,
    ),
    kinds: sumsByKind(lines, money.taxIncluded, currency),
    taxes: taxesOf(lines, taxRates(studio), currency),
  };
  return { ...account, diagnostics: checkAccount(project, studio, account) };
}
