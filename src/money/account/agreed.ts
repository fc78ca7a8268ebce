import type { ProjectRecord } from "../../records/records.ts";
import { sameRevision } from "../../records/sameRevision.ts";
import { addMoney, type Money, subtractMoney } from "../../units/money.ts";
import type { Reserve } from "../reserve.ts";
import { toMoney } from "../toMoney.ts";

/** What the client approved once. */
export interface Approval {
  readonly revision: string;
  readonly by: string;
  /** ISO date. */
  readonly on: string;
  /** The total with its tax; null where it was neither written nor recorded. */
  readonly total: Money | null;
  /** Its place in the file's list, from nought. */
  readonly at: number;
}

/** What was agreed, and how today's total stands to it. */
export interface Agreed {
  /** By date; those of one day as they are written. */
  readonly approvals: readonly Approval[];
  /** The last one: it binds both sides. */
  readonly last: Approval | null;
  /** Today's total less the last approved one, but for what is not charged of the reserve; null where that was not written. */
  readonly change: Money | null;
  /** The revision that is being written, where it is not the one last approved; else null, as without a `revision`. */
  readonly unapproved: string | null;
  /** True while a revision lies with the client that is not approved yet: then another total is no surprise. */
  readonly isProposing: boolean;
}

/** The states in which nothing of the present revision need be approved. */
const BEFORE_APPROVAL: readonly string[] = ["enquiry", "proposed"];

/** What revisions came to as they were sent, by their names in small letters. */
export type SentTotals = ReadonlyMap<string, Money>;

/**
 * Reads the approvals of a project and holds today's total, with its tax, against the last of them. An approval without a total has that of
 * the revision as it was sent, where that was recorded. Faults of sums are said elsewhere.
 */
export function agreedOf(
  project: ProjectRecord,
  total: Money,
  sent: SentTotals,
  reserve: Reserve,
): Agreed {
  const { fields } = project;
  const approvals = (fields.approvals ?? [])
    .map(
      (one, at): Approval => ({
        revision: one.revision,
        by: one.by,
        on: one.on,
        total: one.total
          ? toMoney(one.total, total.currency, project.place(["approvals", at, "total"]), [])
          : (sent.get(one.revision.toLowerCase()) ?? null),
        at,
      }),
    )
    .sort((a, b) => a.on.localeCompare(b.on) || a.at - b.at);
  const last = approvals.at(-1) ?? null;
  const written = fields.revision ?? null;
  const unapproved =
    written !== null && !(last && sameRevision(last.revision, written)) ? written : null;
  return {
    approvals,
    last,
    change: last?.total ? changeSince(total, last.total, reserve) : null,
    unapproved,
    isProposing: BEFORE_APPROVAL.includes(fields.status) && (last === null || unapproved !== null),
  };
}

/**
 * Today's total less an approved one. What is not charged of the reserve was agreed to be so, and is no change; where the last total was
 * approved anew without it, it is none either.
 */
function changeSince(total: Money, approved: Money, { left, isFinal }: Reserve): Money {
  const change = subtractMoney(total, approved);
  return isFinal && change.minor !== 0n ? addMoney(change, left) : change;
}

/** True where the project's status says that the present revision is approved. */
export function saysApproved(project: ProjectRecord): boolean {
  return !BEFORE_APPROVAL.includes(project.fields.status);
}
