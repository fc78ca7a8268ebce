import type { Account } from "../../money/account/account.ts";
import { saysApproved } from "../../money/account/agreed.ts";
import { approvalWithTotal, nextApproval } from "../../money/account/pasteLines.ts";
import { addMoney, type Money } from "../../units/money.ts";
import type { ProjectData } from "../projectData.ts";
import { pens } from "./accountPens.ts";

/** A remark below a table. `paste` are the lines that mend what it says. */
export interface Remark {
  readonly words: string;
  /** True of what is at odds, and warned of. */
  readonly mark: boolean;
  readonly paste: readonly string[];
}

/** What was approved, today's total beside it, and what is to be written where something is not. */
export function agreedPart(data: ProjectData) {
  const { account: a, project } = data;
  const { bare, day, star } = pens(data);
  const { revision } = project.fields;
  return {
    rows: a.approvals.map((one) => ({
      what: `Revision ${one.revision}`,
      by: one.by,
      on: day(one.on),
      total: one.total ? bare(one.total) : "not written",
    })),
    today: {
      what: revision ? `Revision ${revision}, as it is now` : "As it is now",
      by: a.unapproved !== null || a.last === null ? "not approved" : "",
      on: day(a.asOf),
      total: a.pricesIn === "none" ? "price to come" : star(bare(a.total)),
    },
    // With it the rows add up to what has changed.
    unused:
      a.reserve.isFinal && a.reserve.left.minor > 0n && a.last?.total
        ? { what: "Not used of the reserve, not charged", sum: bare(a.reserve.left) }
        : null,
    change:
      a.change && a.change.minor !== 0n
        ? {
            what: a.change.minor < 0n ? "Less than approved" : "More than approved",
            sum: star(
              bare(a.change.minor < 0n ? { ...a.change, minor: -a.change.minor } : a.change),
            ),
          }
        : null,
    remarks: agreedRemarks(data),
  };
}

/** Today's total as it was approved: with what is not charged of the reserve now. */
function withReserve({ total, reserve: { left, isFinal } }: Account): Money {
  return isFinal ? addMoney(total, left) : total;
}

function sameWords({ account: a }: ProjectData): string {
  const isLess = a.last?.total ? a.total.minor < a.last.total.minor : false;
  return isLess
    ? "Today’s total is the one that was approved, less what was not used of the reserve."
    : "Today’s total is the one that was approved.";
}

/** What is to be said of the approvals: what is at odds first. */
function agreedRemarks(data: ProjectData): Remark[] {
  const { account: a, project } = data;
  const { last, change, unapproved, isProposing, priceToCome } = a;
  const line = nextApproval(project, a);
  const priced = priceToCome.length > 0 ? " and everything has its price" : "";
  if (last === null)
    return [
      {
        words: `Nothing is approved yet. Once the client has approved the proposal${priced}, write in project.md:`,
        mark: saysApproved(project),
        paste: ["approvals:", line],
      },
    ];
  const remarks: Remark[] = [];
  if (last.total === null)
    remarks.push({
      words: `The total that was approved is not written, so today’s cannot be held against it. Write it into the approval${unapproved === null ? "; if nothing has changed since, it is this" : ", with the total of the signed proposal for the dots"}:`,
      mark: false,
      paste: [approvalWithTotal(last, unapproved === null ? withReserve(a) : null)],
    });
  const hasChanged = change !== null && change.minor !== 0n;
  const { change: size } = pens(data);
  const comes = hasChanged ? ` It comes to ${size} than was approved.` : "";
  const once = `Once it is approved${priced}, write below the last approval:`;
  if (unapproved !== null)
    remarks.push({
      words: isProposing
        ? `Revision ${unapproved} lies with the client.${comes} ${once}`
        : `The project is ${project.fields.status}, but revision ${unapproved} is not approved.${comes} ${once}`,
      mark: !isProposing,
      paste: [line],
    });
  else if (hasChanged)
    remarks.push({
      words: `Since then the total has changed.${comes} ${once}`,
      mark: true,
      paste: [line],
    });
  else if (change) remarks.push({ words: sameWords(data), mark: false, paste: [] });
  return remarks;
}
