import { type Money, money, printMoney } from "../../units/money.ts";
import type { Account } from "./account.ts";
import { moreOrLess } from "./checkAccount.ts";

/** The account as a few lines of plain text: what was agreed, how far each part is paid, and what remains. */
export function accountText(account: Account, language: string): string[] {
  const print = (sum: Money): string => printMoney(sum, language);
  const { last, change, parts, payments, remaining } = account;
  const isUnpriced = account.pricesIn === "none";
  const soFar = account.pricesIn === "some" ? " so far" : "";
  const today = isUnpriced
    ? "no price is in yet"
    : `today ${print(account.total)}${soFar}${change && change.minor !== 0n ? `, ${moreOrLess(change, language)}` : ""}`;
  const agreed = !last
    ? `nothing is approved yet; ${today}`
    : last.total
      ? `approved ${print(last.total)} (revision ${last.revision}, ${last.on}); ${today}`
      : `revision ${last.revision} was approved on ${last.on}, its total is not written; ${today}`;
  const rest =
    remaining.minor < 0n
      ? `${print(money(-remaining.minor, account.currency))} in credit`
      : `${print(remaining)} remains${parts.length > 0 ? `, of it ${print(account.dueNow)} due by now` : ""}`;
  const ahead = payments.filter((p) => !p.counts).length;
  return [
    "",
    `Account on ${account.asOf}: ${agreed}.`,
    ...reserveText(account, print, soFar),
    // What was approved is owed whatever has a price today; else parts of nothing would read as paid.
    ...(isUnpriced && !last?.total ? [] : parts).map((part) => {
      const paid =
        part.state === "paid"
          ? part.paidOn
            ? `paid ${part.paidOn}`
            : "nothing to pay"
          : part.state === "part-paid"
            ? `${print(part.paid)} paid, ${print(part.open)} open`
            : "open";
      return `  ${part.name}, due ${dueWords(part)}: ${print(part.sum)}${part.isShare ? soFar : ""}, ${paid}.`;
    }),
    `Paid ${print(account.paid)}${ahead > 0 ? ` (${ahead} dated ahead, not counted)` : ""}${isUnpriced ? "" : `; ${rest}`}.`,
  ];
}

/** What became of the reserve; nothing where there is none. */
function reserveText(
  { reserve: { kept, used, left, isFinal } }: Account,
  print: (sum: Money) => string,
  soFar: string,
): string[] {
  if (kept.minor === 0n && used.minor === 0n) return [];
  const rest = isFinal ? "not used, and not charged" : "left, and in the total";
  return [`Reserve ${print(kept)}${soFar}: ${print(used)} used, ${print(left)} ${rest}.`];
}

/** `at approval, 2026-10-21`; a date by itself, and words of her own as they are. */
function dueWords({ due, dueOn }: Account["parts"][number]): string {
  if (due === dueOn) return due;
  const known = ["approval", "order", "fitting"].includes(due.toLowerCase())
    ? `at ${due.toLowerCase()}`
    : due;
  return dueOn ? `${known}, ${dueOn}` : known;
}
