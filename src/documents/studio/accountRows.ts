import type { Account } from "../../money/account/account.ts";
import { paymentLine } from "../../money/account/pasteLines.ts";
import { capital } from "../../units/capital.ts";
import type { ProjectData } from "../projectData.ts";
import { openNote } from "../proposal/openNote.ts";
import { pens } from "./accountPens.ts";

const WHEN: Readonly<Record<string, string>> = {
  approval: "on approval",
  order: "when the cloth is ordered",
  fitting: "at the fitting",
};

/** What is due when, how far each part is paid, and which total the parts stand by. */
export function duePart(data: ProjectData) {
  const { account: a } = data;
  const { bare, day, star } = pens(data);
  // Until a price is in, or a total was approved, a part is a share of nothing known.
  const isKnown = a.pricesIn !== "none" || a.parts.some((part) => part.sum.minor !== 0n);
  const sumOrNone = (sum: typeof a.total, isShare = true): string =>
    isKnown ? star(bare(sum), isShare) : "to come";
  return {
    words: a.parts.length > 0 ? standWords(data) : "",
    note: isKnown && a.pricesIn === "some" ? openNote(data.money.lines) : "",
    rows: a.parts.map((part) => {
      const when = WHEN[part.due.toLowerCase()] ?? (part.due === part.dueOn ? "" : part.due);
      return {
        name: capital(part.name),
        when: capital([when, part.dueOn ? day(part.dueOn) : ""].filter((w) => w !== "").join(", ")),
        sum: sumOrNone(part.sum, part.isShare),
        paid: bare(part.paid),
        open: sumOrNone(part.open, part.isShare),
        state: isKnown ? stateWords(part, a.asOf, day) : "",
      };
    }),
    total: {
      sum: sumOrNone(a.total),
      paid: bare(sumOf(a, "paid")),
      open: sumOrNone({ ...a.total, minor: sumOf(a, "open").minor }),
    },
    paste: [
      "instalments:",
      "  - { deposit: 50%, due: approval }",
      "  - { balance: rest, due: fitting }",
    ],
  };
}

function sumOf(a: Account, key: "paid" | "open"): Account["total"] {
  return { ...a.total, minor: a.parts.reduce((sum, part) => sum + part[key].minor, 0n) };
}

function stateWords(
  part: Account["parts"][number],
  asOf: string,
  day: (iso: string) => string,
): string {
  if (part.state === "paid") return part.paidOn ? `paid ${day(part.paidOn)}` : "nothing to pay";
  const isDue = part.dueOn !== null && part.dueOn <= asOf;
  return `${part.state === "part-paid" ? "part paid, " : ""}${isDue ? "due now" : "not due yet"}`;
}

/** Which total the parts stand by, and where the change since stands. */
function standWords(data: ProjectData): string {
  const { account: a } = data;
  const { print, change: size } = pens(data);
  const { last, change, parts } = a;
  if (!last?.total)
    return `The parts are reckoned by today’s total: ${last ? "the approved one is not written" : "nothing is approved yet"}.`;
  const stand = `The parts stand as they were approved with revision ${last.revision}, of ${print(last.total)}`;
  const { left, isFinal } = a.reserve;
  const off =
    isFinal && left.minor > 0n
      ? ` What was not used of the reserve, ${print(left)}, is off the balance.`
      : "";
  if (!change || change.minor === 0n) return `${stand}.${off}`;
  const moved = parts.filter((part) => part.sum.minor !== part.agreed.minor);
  const where =
    moved.length > 1
      ? "what the balance cannot bear is taken off the part before it"
      : `it is in the ${moved[0]?.name ?? "balance"}`;
  return `${stand}. Today’s total is ${size}: ${where}.${off}`;
}

/** Every payment, their sum, and what remains. */
export function paidPart(data: ProjectData) {
  const { account: a } = data;
  const { bare, day, star } = pens(data);
  const open = a.parts.find((part) => part.open.minor > 0n);
  const remaining = a.remaining.minor;
  const isUnpriced = a.pricesIn === "none";
  return {
    rows: a.payments.map((p) => ({
      on: day(p.on),
      what: capital(p.what ?? ""),
      note: paymentNote(data, p),
      // In brackets, so that the column adds up to what was paid.
      sum: p.counts ? bare(p.amount) : `(${bare(p.amount)})`,
    })),
    paid: bare(a.paid),
    total: isUnpriced ? "price to come" : star(bare(a.total)),
    rest: isUnpriced
      ? { what: "Remains to be paid", sum: "to come" }
      : {
          what: remaining < 0n ? "In credit" : "Remains to be paid",
          sum: star(bare(remaining < 0n ? { ...a.remaining, minor: -remaining } : a.remaining)),
        },
    paste: [
      "payments:",
      paymentLine(
        open?.open ?? (remaining > 0n ? a.remaining : null),
        a.asOf,
        open?.name ?? "payment",
      ),
    ],
  };
}

function paymentNote({ account }: ProjectData, p: Account["payments"][number]): string {
  const notes = [
    p.amount.minor < 0n ? "given back" : "",
    p.amount.minor === 0n ? "a payment of nothing" : "",
    p.counts ? "" : "dated ahead, not counted",
    p.beforeApproval && account.approvals.length > 0 ? "before anything was approved" : "",
  ];
  return notes.filter((words) => words !== "").join("; ");
}
