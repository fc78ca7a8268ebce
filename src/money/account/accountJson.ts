import type { Money } from "../../units/money.ts";
import type { Account } from "./account.ts";

const minor = (sum: Money): number => Number(sum.minor);
const orNull = (sum: Money | null): number | null => (sum ? minor(sum) : null);

/** The machine form of an account: sums in minor units of its currency, days as ISO dates. */
export function accountJson(account: Account) {
  const { last } = account;
  return {
    asOf: account.asOf,
    total: minor(account.total),
    priceToCome: account.priceToCome,
    unchosen: minor(account.unchosen),
    reserve: minor(account.reserve.kept),
    reserveUsed: minor(account.reserve.used),
    reserveLeft: minor(account.reserve.left),
    approvals: account.approvals.map(({ revision, by, on, total }) => ({
      revision,
      by,
      on,
      total: orNull(total),
    })),
    // Which approval the parts stand by; null where they are parts of today's total.
    standsAs: last?.total
      ? { revision: last.revision, on: last.on, total: minor(last.total) }
      : null,
    change: orNull(account.change),
    unapproved: account.unapproved,
    instalments: account.parts.map((part) => ({
      name: part.name,
      due: part.due,
      dueOn: part.dueOn,
      agreed: minor(part.agreed),
      amount: minor(part.sum),
      paid: minor(part.paid),
      open: minor(part.open),
      paidOn: part.paidOn,
      state: part.state,
    })),
    payments: account.payments.map(({ amount, on, what, counts, beforeApproval }) => ({
      amount: minor(amount),
      on,
      what,
      counts,
      beforeApproval,
    })),
    paid: minor(account.paid),
    remaining: minor(account.remaining),
    dueNow: minor(account.dueNow),
    kinds: account.kinds.map(({ kind, net, tax, sum }) => ({
      kind,
      net: minor(net),
      tax: minor(tax),
      sum: minor(sum),
    })),
    taxes: account.taxes.map(({ kind, rate, net, tax }) => ({
      kind,
      rate: rate.valueOf(),
      net: minor(net),
      tax: minor(tax),
    })),
  };
}
