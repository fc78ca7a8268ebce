import { type Money, money } from "../../units/money.ts";

/** What came in, or, below nothing, was given back. */
export interface PaidSum {
  readonly amount: Money;
  /** ISO date. */
  readonly on: string;
}

/** How far a part is paid. */
export interface Settled {
  readonly paid: Money;
  readonly open: Money;
  /** ISO date of the payment since which it is paid in full; null while it is not, and where it is nothing. */
  readonly paidOn: string | null;
  readonly state: "paid" | "part-paid" | "open";
}

/**
 * Puts what was paid, all in all, to the parts in their order: each is filled before the next begins. What was given back is taken from
 * the last that was filled. The order in which payments are written does not matter.
 */
export function settle(parts: readonly Money[], payments: readonly PaidSum[]): Settled[] {
  const running = runningSums(payments);
  const net = running.at(-1)?.sum ?? 0n;
  let before = 0n;
  return parts.map(({ minor: due, currency }) => {
    const filled = net - before;
    const paid = filled < 0n ? 0n : filled > due ? due : filled;
    before += due;
    const open = due - paid;
    return {
      paid: money(paid, currency),
      open: money(open, currency),
      paidOn: open === 0n && due > 0n ? since(running, before) : null,
      state: open === 0n ? "paid" : paid === 0n ? "open" : "part-paid",
    };
  });
}

interface Running {
  readonly on: string;
  readonly sum: bigint;
}

/** What had come in by the end of each day on which something was paid. */
function runningSums(payments: readonly PaidSum[]): Running[] {
  const days = [...new Set(payments.map((p) => p.on))].sort();
  return days.map((on) => ({
    on,
    sum: payments.filter((p) => p.on <= on).reduce((sum, p) => sum + p.amount.minor, 0n),
  }));
}

/** The day from which on at least so much was there, to the end. */
function since(running: readonly Running[], least: bigint): string | null {
  const short = running.findLastIndex((r) => r.sum < least);
  return running[short + 1]?.on ?? null;
}
