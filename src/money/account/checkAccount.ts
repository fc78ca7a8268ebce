import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { isAhead } from "../../records/isAhead.ts";
import type { ProjectRecord, StudioRecord } from "../../records/records.ts";
import { compareMoney, type Money, money, printMoney } from "../../units/money.ts";
import type { Reserve } from "../reserve.ts";
import { toMoney } from "../toMoney.ts";
import { type Agreed, saysApproved } from "./agreed.ts";
import { nextApproval } from "./pasteLines.ts";

/** What of an account can be at odds with what was approved. */
type Stands = Agreed & {
  readonly asOf: string;
  readonly total: Money;
  readonly priceToCome: readonly string[];
  readonly reserve: Reserve;
};

/** `$896.09 more`, `$20.00 less`. */
export function moreOrLess(change: Money, language: string): string {
  const size = money(change.minor < 0n ? -change.minor : change.minor, change.currency);
  return `${printMoney(size, language)} ${change.minor < 0n ? "less" : "more"}`;
}

/** `Revision A was approved at $10,940.00 on 2026-10-21; today's total is $11,836.09: $896.09 more.` Empty where both agree or nothing is known. */
function differenceWords(
  { last, change, total, priceToCome, reserve }: Stands,
  language: string,
): string {
  if (!last?.total || !change || change.minor === 0n) return "";
  const print = (sum: Money): string => printMoney(sum, language);
  const open =
    priceToCome.length > 0
      ? ` It leaves out what has no price yet: ${priceToCome.join(", ")}.`
      : "";
  const without =
    reserve.isFinal && reserve.left.minor > 0n
      ? `, without the ${print(reserve.left)} of the reserve that were not used`
      : "";
  return `Revision ${last.revision} was approved at ${print(last.total)} on ${last.on}; today's total is ${print(total)}${without}: ${moreOrLess(change, language)}.${open}`;
}

/** A total, or a revision, that is not the one that was last approved. While a revision lies with the client that is as it should be. */
function againstApproval(project: ProjectRecord, account: Stands, language: string): Diagnostic[] {
  const { status } = project.fields;
  const { last, unapproved, isProposing, priceToCome } = account;
  const line = nextApproval(project, account);
  const when =
    priceToCome.length > 0 ? "When all has its price, and it is approved" : "Once it is approved";
  const differs = differenceWords(account, language);
  const below = `${when}, write below the last line of approvals:\n${line}`;
  if (saysApproved(project) && !last)
    return [
      diagnostic(
        project.place(["status"]),
        "approval-missing",
        `The project is ${status}, but no approval is written.`,
        {
          severity: "warning",
          actual: status,
          hint: `Write what was approved, with its own day and total:\napprovals:\n${line}`,
        },
      ),
    ];
  if (saysApproved(project) && last && unapproved !== null)
    return [
      diagnostic(
        project.place(["revision"]),
        "revision-not-approved",
        `The project is ${status}, but revision ${unapproved} is not approved; the last that was is revision ${last.revision}, on ${last.on}.${differs ? ` ${differs}` : ""}`,
        { severity: "warning", actual: unapproved, expected: last.revision, hint: below },
      ),
    ];
  if (!last || differs === "" || isProposing) return [];
  return [
    diagnostic(project.place(["approvals", last.at, "total"]), "approved-total-differs", differs, {
      severity: "warning",
      actual: last.total ? printMoney(last.total, language) : null,
      expected: printMoney(account.total, language),
      hint: below,
    }),
  ];
}

/** True of a payment that stands before in the list with the same sum, day and words. */
function isWrittenTwice({ fields }: ProjectRecord, at: number): boolean {
  const all = fields.payments ?? [];
  const said = (n: number) =>
    [all[n]?.amount.decimal, all[n]?.on, all[n]?.what?.toLowerCase() ?? ""].join("|");
  return all.slice(0, at).some((_, n) => said(n) === said(at));
}

/** Payments that cannot be as they are written: of nothing, twice, or on a day that has not come. */
function ofPayments(project: ProjectRecord, today: string, currency: string): Diagnostic[] {
  return (project.fields.payments ?? []).flatMap(({ amount, on }, at): Diagnostic[] => {
    const sum = toMoney(amount, currency, project.place(["payments", at, "amount"]), []);
    const isNothing = compareMoney(sum, money(0, currency)) === 0;
    return [
      ...(isNothing
        ? [
            diagnostic(
              project.place(["payments", at, "amount"]),
              "payment-of-nothing",
              "This is a payment of nothing.",
              {
                severity: "warning",
                hint: "Write the sum that came in, or take the line out. What you gave back has a minus sign.",
              },
            ),
          ]
        : []),
      ...(isWrittenTwice(project, at)
        ? [
            diagnostic(
              project.place(["payments", at]),
              "payment-twice",
              `This payment of ${on} stands twice, with the same sum and the same words.`,
              {
                severity: "warning",
                hint: "Take one of the lines out; where two such sums came in on one day, say at each what it was for.",
              },
            ),
          ]
        : []),
      ...(isAhead(on, today)
        ? [
            diagnostic(
              project.place(["payments", at, "on"]),
              "payment-ahead",
              `This payment is dated ${on}, and today is ${today}: it is not counted before its day.`,
              {
                severity: "warning",
                actual: on,
                hint: "Write the day on which the money came in. What is still to come stands under instalments.",
              },
            ),
          ]
        : []),
    ];
  });
}

/** What is wrong with a project's account, as warnings at the lines of its file; documents are made all the same. */
export function checkAccount(
  project: ProjectRecord,
  studio: StudioRecord,
  account: Stands,
): Diagnostic[] {
  const { language } = studio.fields;
  return [
    ...againstApproval(project, account, language),
    ...ofPayments(project, account.asOf, account.total.currency),
  ];
}
