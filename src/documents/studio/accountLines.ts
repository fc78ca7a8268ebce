import {
  type AccountKind,
  accountKind,
  type TaxOfKind,
  taxSplit,
} from "../../money/account/byKind.ts";
import type { TaxedLine } from "../../money/lines.ts";
import { isToCome } from "../../money/pricesIn.ts";
import { isKept, isReserve, type Reserve } from "../../money/reserve.ts";
import { sameRevision } from "../../records/sameRevision.ts";
import { capital } from "../../units/capital.ts";
import { addMoney, type Money, timesMoney } from "../../units/money.ts";
import type { ProjectData } from "../projectData.ts";
import { itemRows, soFar } from "../proposal/itemRows.ts";
import { openNote } from "../proposal/openNote.ts";
import { starred, TO_COME } from "../words/stars.ts";
import { pens } from "./accountPens.ts";

/** A row of what the total is made of; sums of a kind that it has none of are empty. */
interface MadeRow {
  readonly what: string;
  readonly goods: string;
  readonly work: string;
  readonly tax: string;
  readonly sum: string;
}

const KIND_WORDS: Readonly<Record<AccountKind, string>> = {
  goods: "Goods",
  making: "Making",
  fees: "Fees and fitting",
  discounts: "Discounts",
  samples: "Samples",
  reserve: "Kept in reserve",
};

/** What the lines of the reserve are: used, left, or both. */
function reserveWords({ used, isFinal }: Reserve): string {
  if (isFinal) return "Used of the reserve";
  return used.minor === 0n ? KIND_WORDS.reserve : "The reserve, used and left";
}

/** What everything comes to as it is now: item by item in each room, then by kind, with the tax of each. */
export function madePart(data: ProjectData) {
  const { money: m, account: a, studio } = data;
  const { bare, print } = pens(data);
  const row = rowMaker(data);
  const isUnpriced = a.pricesIn === "none";
  const whole = m.lines.filter(
    (l) => l.room === null && (l.client.minor !== 0n || (l.what !== "sample" && !isReserve(l))),
  );
  const percent = (share: number): string =>
    new Intl.NumberFormat(studio.fields.language, {
      style: "percent",
      maximumFractionDigits: 3,
    }).format(share);
  const tax = studio.fields.tax?.name ?? "tax";
  return {
    rooms: data.rooms.flatMap((room) => {
      const own = m.lines.filter((l) => l.room === room.record.id);
      return own.length === 0
        ? []
        : [
            {
              ...row(capital(room.record.fields.room), own),
              rows: itemRows(data, own, bare).map((item) => row(item.row.what, item.lines)),
            },
          ];
    }),
    whole:
      whole.length > 0
        ? { ...row("The whole project", whole), rows: whole.map((l) => row(l.label, [l])) }
        : null,
    total: isUnpriced ? { ...row("Total", m.lines), sum: TO_COME } : row("Total", m.lines),
    kinds: (isUnpriced ? [] : a.kinds).map((k) => {
      const own = m.lines.filter((l) => accountKind(l.what) === k.kind);
      const isKnown = !own.every(isToCome);
      return {
        what: k.kind === "reserve" ? reserveWords(a.reserve) : KIND_WORDS[k.kind],
        net: isKnown ? bare(k.net) : "",
        tax: isKnown ? (k.tax.minor === 0n ? "none" : bare(k.tax)) : "",
        sum: sumWords(data, own, bare(k.sum)),
      };
    }),
    kindsTotal: {
      net: bare({ ...a.total, minor: a.kinds.reduce((sum, k) => sum + k.net.minor, 0n) }),
      tax: bare({ ...a.total, minor: a.kinds.reduce((sum, k) => sum + k.tax.minor, 0n) }),
      sum: sumWords(data, m.lines, bare(a.total)),
    },
    taxes: (isUnpriced ? [] : a.taxes).map(
      (t) =>
        `${capital(tax)} on ${t.kind}: ${percent(t.rate.valueOf())} of ${print(t.net)}, ${print(t.tax)}${roundedWords(t, m.taxIncluded, print)}.${m.taxIncluded ? " The prices on the proposal hold it." : ""}`,
    ),
    open: openNote(m.lines),
    changed: a.change !== null && a.change.minor !== 0n ? changedWords(data) : "",
  };
}

/** Why a pencil's product of the two sums beside it may be a cent more or less; empty where it is the tax. */
function roundedWords(t: TaxOfKind, included: boolean, print: (sum: Money) => string): string {
  if (timesMoney(t.net, t.rate).minor === t.tax.minor) return "";
  return included
    ? `, taken out of ${print(addMoney(t.net, t.tax))}`
    : ", with what was used of the reserve rounded by itself";
}

/** Where it is listed what has changed since the last approval. */
function changedWords({ account, changes, sent }: ProjectData): string {
  const revision = account.last?.revision ?? "";
  const is = (one: string) => sameRevision(one, revision);
  if (changes && is(changes.since.revision))
    return `What has changed since revision ${revision}, which was approved, is listed on the proposal.`;
  if (sent.some((each) => is(each.revision)))
    return `Revision ${revision}, which was approved, is kept line by line in the folder sent.`;
  return "Of what has changed since the approval the sum alone is known: the approved lines were not kept. Record each proposal that goes out with send.";
}

/** What lines come to, with its star: what is left of the reserve grows with every price that is still to come. */
function sumWords({ money }: ProjectData, lines: readonly TaxedLine[], sum: string): string {
  const grows = lines.some(isKept) && money.lines.some((l) => l.open);
  return grows ? starred(sum, true) : soFar(lines, sum);
}

/** Makes rows of lines: goods, work and reserve without their tax, the tax, and the sum with it. */
function rowMaker(data: ProjectData) {
  const { taxIncluded, currency } = data.money;
  const { bare } = pens(data);
  return (what: string, lines: readonly TaxedLine[]): MadeRow => {
    const net = (kinds: readonly AccountKind[], taxed: TaxedLine["taxKind"]): string => {
      // What was used of the reserve, and what comes off, stands as what it is taxed as.
      const own = lines.filter(
        (l) =>
          kinds.includes(accountKind(l.what)) ||
          ((isReserve(l) || l.what === "discount") && l.taxKind === taxed),
      );
      const split = taxSplit(own, taxIncluded, currency);
      return split.net.minor === 0n ? "" : bare(split.net);
    };
    const all = taxSplit(lines, taxIncluded, currency);
    return {
      what,
      goods: net(["goods", "samples"], "goods"),
      work: net(["making", "fees"], "services"),
      tax: all.tax.minor === 0n ? "" : bare(all.tax),
      sum: sumWords(data, lines, bare(all.sum)),
    };
  };
}
